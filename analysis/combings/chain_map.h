// Finds what lies near the free ends of chains.
#pragma once

#include <algorithm>
#include <opencv2/core.hpp>
#include <utility>
#include <vector>

#include "combings/chains.h"

namespace kempt::combings {

struct FreeEnd {
    int chain, side;  // side 1: the last point
};

// Points of chains near free ends, and the free ends.
class ChainMap {
  public:
    ChainMap(const std::vector<Chain>& chains, cv::Size photo)
        : nx_(photo.width / side + 1), ny_(photo.height / side + 1) {
        points_.resize(static_cast<size_t>(nx_) * static_cast<size_t>(ny_));
        ends_.resize(points_.size());
        wanted_.assign(points_.size(), 0);
        for (size_t c = 0; c < chains.size(); ++c)
            for (int s = 0; s < 2; ++s) {
                const cv::Point2f p = chains[c].end[s].at;
                ends_[cell(p)].push_back({static_cast<int>(c), s});
                around(p, [&](size_t k) { wanted_[k] = 1; });
            }
        for (size_t c = 0; c < chains.size(); ++c)
            for (size_t i = 0; i < chains[c].at.size(); ++i)
                if (const size_t k = cell(chains[c].at[i]); wanted_[k])
                    points_[k].push_back({static_cast<int>(c), static_cast<int>(i)});
    }
    template <class Act>
    void points_near(cv::Point2f p, const Act& act) const {
        around(p, [&](size_t k) {
            for (const auto& q : points_[k]) act(q.first, q.second);
        });
    }
    template <class Act>
    void ends_near(cv::Point2f p, const Act& act) const {
        around(p, [&](size_t k) {
            for (const FreeEnd& q : ends_[k]) act(q);
        });
    }

  private:
    static constexpr int side = 16;
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
    std::vector<std::vector<std::pair<int, int>>> points_;
    std::vector<std::vector<FreeEnd>> ends_;
    std::vector<char> wanted_;
};

}  // namespace kempt::combings
