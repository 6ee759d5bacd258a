// Finds the points near a place among many that lie along lines, in square cells.
#pragma once

#include <cmath>
#include <cstdint>
#include <opencv2/core.hpp>
#include <unordered_map>
#include <vector>

namespace kempt::combings {

// With each point goes what it is.
template <class What>
class NearPoints {
  public:
    explicit NearPoints(double cell_px) : cell_px_(cell_px) {}
    void put(cv::Point2d p, const What& what) { cells_[key(p, 0, 0)].push_back({p, what}); }
    // act(point, what) for each nearer than `px`.
    template <class Act>
    void near(cv::Point2d p, double px, const Act& act) const {
        const int reach = static_cast<int>(std::ceil(px / cell_px_));
        for (int v = -reach; v <= reach; ++v)
            for (int u = -reach; u <= reach; ++u)
                if (const auto cell = cells_.find(key(p, u, v)); cell != cells_.end())
                    for (const auto& [at, what] : cell->second)
                        if (cv::norm(at - p) < px) act(at, what);
    }

  private:
    [[nodiscard]] int64_t key(cv::Point2d p, int u, int v) const {
        return (static_cast<int64_t>(std::floor(p.x / cell_px_)) + u) * 1'000'000 +
               static_cast<int64_t>(std::floor(p.y / cell_px_)) + v;
    }
    double cell_px_;
    std::unordered_map<int64_t, std::vector<std::pair<cv::Point2d, What>>> cells_;
};

struct OfChain {
    size_t chain = 0, index = 0;
};
using ChainPoints = NearPoints<OfChain>;

}  // namespace kempt::combings
