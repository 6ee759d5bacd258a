// Finding the printed markers. The only file that speaks to OpenCV's marker module, whose interface changed in 4.7.
#pragma once

#include <array>
#include <opencv2/core.hpp>
#include <vector>

namespace kempt::card {

struct Marker {
    int id = -1;
    std::array<cv::Point2d, 4> corners;  // outer corners of the black border, clockwise from the marker's own top left;
                                         // photo pixels, whole numbers at pixel centres
};

inline constexpr int last_marker_id = 11;  // card 0-3, white sheet 4-7, blue sheet 8-11

// The inner 4 x 4 cells of a marker of DICT_4X4_50, CV_8UC1, 1 is white. id 0..49.
[[nodiscard]] cv::Mat marker_bits(int id);

// Green channel of a photo (CV_8UC3 or CV_16UC3) averaged over blocks of factor x factor pixels: CV_8UC1.
[[nodiscard]] cv::Mat reduced_grey(const cv::Mat& pixels, int factor);

// Markers with ids 0..last_marker_id in a grey picture, corners to about a pixel, in that picture's pixels. False ones are possible.
// quick thresholds once, at one window: half the time, small and large markers alike but fewer in poor light.
[[nodiscard]] std::vector<Marker> detect(const cv::Mat& grey, bool quick = false);

// Markers of the whole photo from a picture reduced until its longer side is at most longest_side px, then sharpened by
// an unsharp mask of that width when sharpen_px > 0 (for photos out of focus).
[[nodiscard]] std::vector<Marker> detect_reduced(const cv::Mat& pixels, int longest_side, bool quick = false,
                                                 double sharpen_px = 0);

// Looks again for one marker near where it should be, at a scale that suits it. Empty when it is not there.
[[nodiscard]] std::vector<Marker> detect_near(const cv::Mat& pixels, const std::array<cv::Point2d, 4>& expected,
                                              int id);

}  // namespace kempt::card
