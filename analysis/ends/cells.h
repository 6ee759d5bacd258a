// Sums over the cells of the straightened grid, for the looks of hair before white and before blue.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "ends/grid.h"

namespace kempt::ends {

inline constexpr int cell_px = 2;                            // of the grid
inline constexpr double cell_mm = cell_px / grid_px_per_mm;  // 0.25 mm

// Mean of the grid in each cell, a square of so many pixels of it; any depth and number of channels.
[[nodiscard]] cv::Mat cells_of(const cv::Mat& grid, int px = cell_px);
// Mean of the cells over a square of that side about each.
[[nodiscard]] cv::Mat mean_over(const cv::Mat& cells, double mm);
// Brightest and darkest spot of 0.25 mm within 1.5 mm; CV_32FC1, a value a cell.
struct Spots {
    cv::Mat high, low;
};
// plane: CV_32FC1, the grid's size. room: any plane of that size, overwritten: those of a whole sheet are large, and
// half of the time is the system's clearing of new ones.
[[nodiscard]] Spots spots_of(const cv::Mat& plane, cv::Mat& room);
// values: CV_32FC1, one row for each cell where `wanted` (CV_8UC1) is set, in reading order. Back in their places as
// CV_32FC1; 0 elsewhere.
[[nodiscard]] cv::Mat placed(const cv::Mat& values, const cv::Mat& wanted);
// share: 0-1. No values: 0.
[[nodiscard]] float quantile(std::vector<float> values, double share);

}  // namespace kempt::ends
