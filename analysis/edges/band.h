// The band: the strip of scalp from the edge line inward, straightened to (along, depth) in millimetres.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/result.h"

namespace kempt::edges {

// Where the edge line runs in the card's plane, evenly stepped, with the direction that leads into the hair.
struct EdgeLine {
    std::vector<cv::Point2d> at_mm;      // every step_mm along the line
    std::vector<cv::Point2d> inward_mm;  // unit normals
    double step_mm = 0;
    double length_mm = 0;
    double px_per_mm = 0;  // of the photo at the middle of the line
};

// Finest grid of the band. A 70 um hair is 1.5 of its pixels wide; the benchmark's errors are the same as at 24
// (coverage 1.98 against 1.88 points, strands 8.6 against 9.1 %) at three quarters of the time. Coarser photos keep
// their own scale.
inline constexpr double finest_band_px_per_mm = 21;
// Coarsest: photos below this are enlarged, so that the network sees depths and widths at a size it knows.
inline constexpr double coarsest_band_px_per_mm = 12;
// The line's normals follow its course over this many millimetres, so that single clicks do not fan the band out.
inline constexpr double normal_smoothing_mm = 3;

// Errors: invalid ("line-too-short" under 10 mm, "line-crosses", "line-outside", "hair-side-unclear").
[[nodiscard]] Result<EdgeLine> straighten(const Photo& photo, const card::Calibration& calibration,
                                          const std::vector<cv::Point2d>& line_px, cv::Point2d hair_side_px);

// A piece of the band as log light: rows run inward from from_mm (negative: outside the line), columns along the line.
struct BandPiece {
    cv::Mat log_light;  // CV_32FC3, natural logarithm of linear light + light_floor, less `skin`; 0 where not valid
    cv::Mat valid;      // CV_8UC1, 255 where the photo shows scalp or hair, 0 outside the photo and on the card
};
// columns: [first, first + count) of the line's steps, may reach outside the line (the ends are then repeated).
// Linear light is interpolated between 4 x 4 pixels by cubics through them (Keys 1981, a = -0.75) at places rounded to
// a 32nd of a pixel, as OpenCV's remap does.
[[nodiscard]] BandPiece cut(const Photo& photo, const card::LightMap& light, const card::Calibration& calibration,
                            const EdgeLine& line, int first, int count, double from_mm, int rows);
// The same into a piece that may hold an earlier one, whose memory is then used again; skin: log light to subtract.
void cut(const Photo& photo, const card::LightMap& light, const card::Calibration& calibration, const EdgeLine& line,
         int first, int count, double from_mm, int rows, const std::array<float, 3>& skin, BandPiece& piece);

// Pixel of a place in the band.
[[nodiscard]] cv::Point2d px_of(const card::Calibration& calibration, const EdgeLine& line, double along_mm,
                                double depth_mm);

}  // namespace kempt::edges
