// Lines about a pixel wide, dark or (where a strand mirrors the light) bright, found as ridges: points with a
// sub-pixel place, direction and strength. After C. Steger, An unbiased detector of curvilinear structures, IEEE PAMI
// 20 (1998): a line's middle is where the first derivative across it vanishes, taken from the second-order Taylor
// polynomial of the smoothed picture.
#pragma once

#include <algorithm>
#include <cstdint>
#include <opencv2/core.hpp>
#include <vector>

#include "combings/darkness.h"
#include "combings/field.h"
#include "combings/roomy.h"

namespace kempt::combings {

struct RidgePoint {
    float x, y;            // pixels
    float tx, ty;          // unit vector along the line, either way
    float strength;        // second derivative across it, in darkness per px^2
    float sign;            // 1 darker than paper, -1 brighter: a strand that mirrors the light
    float lean;            // 1 a line .. 0 a spot: share by which the curvature across exceeds that along
    uint16_t column, row;  // of its pixel, from the corner of Ridges::bounds: a sheet at 18 px/mm has some 6000
};

struct Ridges {
    Roomy<RidgePoint> points;  // by rows, then columns of their pixel
    Roomy<int> start;          // first point of each piece of `piece_px` pixels of a row of `bounds`
    cv::Rect bounds;
    float noise = 0;     // SD of the second derivative on bare paper
    float paper_sd = 0;  // SD of the smoothed darkness there
    // A twelfth of the photo's pixels at most have a point, so that an index of pieces is smaller than one of pixels by
    // far, and a look through a piece costs less than a miss of the cache.
    static constexpr int piece_px = 16;
    // act(k) for each point k of a row whose pixel lies in the columns x0 to x1, both included, from left to right.
    template <class Act>
    void in_row(int y, int x0, int x1, const Act& act) const {
        const int v = y - bounds.y, u0 = std::max(0, x0 - bounds.x), u1 = std::min(bounds.width - 1, x1 - bounds.x);
        if (v < 0 || v >= bounds.height || u0 > u1) return;
        const int* row = start.data() + static_cast<size_t>(v) * static_cast<size_t>(pieces());
        for (int k = row[u0 / piece_px]; k < row[u1 / piece_px + 1]; ++k)
            if (const int u = points[static_cast<size_t>(k)].column; u >= u0 && u <= u1) act(k);
    }
    [[nodiscard]] int pieces() const { return (bounds.width + piece_px - 1) / piece_px; }  // of a row
    [[nodiscard]] cv::Point pixel(size_t k) const { return {bounds.x + points[k].column, bounds.y + points[k].row}; }
    // Has what lies at a place read into the cache: its index, or (when that is there) its points.
    void expect_index(int x, int y) const {
        if (const int* at = index_at(x, y)) __builtin_prefetch(at);
    }
    void expect_points(int x, int y) const {
        if (const int* at = index_at(x, y)) __builtin_prefetch(points.data() + *at);
    }

  private:
    [[nodiscard]] const int* index_at(int x, int y) const {
        const int u = x - bounds.x, v = y - bounds.y;
        if (u < 0 || v < 0 || u >= bounds.width || v >= bounds.height) return nullptr;
        return start.data() + static_cast<size_t>(v) * static_cast<size_t>(pieces()) + u / piece_px;
    }
};
// Points of at least `least_snr` times the noise inside the field.
[[nodiscard]] Ridges find_ridges(const Darkness& darkness, const Field& field, double least_snr);

}  // namespace kempt::combings
