// Ridge points strung together to lines: smooth, without branches, cut wherever another line ends beside them.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "combings/ridges.h"
#include "combings/work.h"

namespace kempt::combings {

struct Line {
    std::vector<cv::Point2f> at;  // about a pixel apart, from end to end
    std::vector<float> strength;  // of the ridge at each
    float sign = 1;               // -1: brighter than paper
    bool shadow = false;          // looks like the shadow of another
    bool noise = false;           // no clearer than the noise of the photo makes lines
    [[nodiscard]] bool doubted() const { return shadow || noise; }
    float mass = 0;  // median strength: in a sharp photo proportional to width times darkness
};

// Of a line of so many points.
[[nodiscard]] inline double length_px(size_t points) {
    return points < 2 ? 0 : static_cast<double>(points - 1) * 1.05;
}

struct LineOptions {
    double start_snr = 4.5;  // a line starts at a point that clear
    double least_length_px = 4;
};
[[nodiscard]] std::vector<Line> string_lines(const Ridges& ridges, Work& work, const LineOptions& options = {});

// Cuts lines where another's end lies within reach_px of their inside, leaving trim_px free on both sides, so that all
// the ends around a crossing are ends of lines. Pieces shorter than least_px are dropped into `crumbs`.
[[nodiscard]] std::vector<Line> cut_at_crossings(const std::vector<Line>& lines, cv::Rect bounds, double reach_px,
                                                 double trim_px, double least_px, std::vector<Line>& crumbs,
                                                 Work& work);

}  // namespace kempt::combings
