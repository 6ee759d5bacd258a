// Traced points to a smooth path. The points' noise would lengthen it: 0.15 px across at every pixel is 2 %.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

namespace kempt::combings {

// A local quadratic (Savitzky and Golay 1964) over `half` points to both sides, which keeps bends; then a point every
// `step` of them, the ends included.
[[nodiscard]] std::vector<cv::Point2d> smoothed(const std::vector<cv::Point2f>& path, int half, double step);

// The path through those of its points that it needs to lie within `miss` of all of them (Douglas and Peucker 1973): a
// photo's strands have ten times as many, which whoever draws or keeps them has to carry.
[[nodiscard]] std::vector<cv::Point2d> thinned(const std::vector<cv::Point2d>& path, double miss);

[[nodiscard]] double length_of(const std::vector<cv::Point2d>& path);

// Length of a curve through points on it: chords and a third of what the chords of every other point miss
// (Richardson's rule; a chord is short by the square of its length).
[[nodiscard]] double arc_length(const std::vector<cv::Point2d>& path);

}  // namespace kempt::combings
