// Finds what lies near the free ends of chains.
#pragma once

#include <algorithm>
#include <opencv2/core.hpp>
#include <utility>
#include <vector>

#include "combings/cells.h"
#include "combings/chains.h"

namespace kempt::combings {

struct FreeEnd {
    int chain, side;  // side 1: the last point
};

// Points of chains near free ends, and the free ends.
class ChainMap {
  public:
    ChainMap(const std::vector<Chain>& chains, cv::Size photo)
        : nx_(photo.width / side + 1),
          ny_(photo.height / side + 1),
          ends_(cells(),
                [&](const auto& put) {
                    for (size_t c = 0; c < chains.size(); ++c)
                        for (int s = 0; s < 2; ++s) put(cell(chains[c].end[s].at), FreeEnd{static_cast<int>(c), s});
                }),
          points_(cells(), [&, wanted = near_ends(chains)](const auto& put) {
              for (size_t c = 0; c < chains.size(); ++c)
                  for (size_t i = 0; i < chains[c].at.size(); ++i)
                      if (const size_t k = cell(chains[c].at[i]); wanted[k])
                          put(k, std::pair{static_cast<int>(c), static_cast<int>(i)});
          }) {}
    template <class Act>
    void points_near(cv::Point2f p, const Act& act) const {
        around(p, [&](size_t k) {
            for (auto q = points_.begin(k); q != points_.end(k); ++q) act(q->first, q->second);
        });
    }
    template <class Act>
    void ends_near(cv::Point2f p, const Act& act) const {
        around(p, [&](size_t k) {
            for (auto q = ends_.begin(k); q != ends_.end(k); ++q) act(*q);
        });
    }

  private:
    static constexpr int side = 16;
    [[nodiscard]] size_t cells() const { return static_cast<size_t>(nx_) * static_cast<size_t>(ny_); }
    [[nodiscard]] std::vector<char> near_ends(const std::vector<Chain>& chains) const {
        std::vector<char> near(cells(), 0);
        for (const Chain& c : chains)
            for (const LineEnd& end : c.end) around(end.at, [&](size_t k) { near[k] = 1; });
        return near;
    }
    [[nodiscard]] size_t cell(cv::Point2f p) const {
        const int i = std::clamp(static_cast<int>(p.x) / side, 0, nx_ - 1),
                  j = std::clamp(static_cast<int>(p.y) / side, 0, ny_ - 1);
        return static_cast<size_t>(j) * static_cast<size_t>(nx_) + static_cast<size_t>(i);
    }
    template <class Act>
    void around(cv::Point2f p, const Act& act) const {
        const int i = std::clamp(static_cast<int>(p.x) / side, 0, nx_ - 1),
                  j = std::clamp(static_cast<int>(p.y) / side, 0, ny_ - 1);
        for (int v = std::max(0, j - 1); v <= std::min(ny_ - 1, j + 1); ++v)
            for (int u = std::max(0, i - 1); u <= std::min(nx_ - 1, i + 1); ++u)
                act(static_cast<size_t>(v) * static_cast<size_t>(nx_) + static_cast<size_t>(u));
    }
    int nx_, ny_;
    Cells<FreeEnd> ends_;
    Cells<std::pair<int, int>> points_;
};

}  // namespace kempt::combings
