// The ground of a photo in its card's plane: log light and redness over a rectangle of millimetres, and where they may
// be trusted.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"

namespace kempt::align {

// Pixel (i, j) is the place origin_mm + (i, j) / px_per_mm.
struct Ground {
    cv::Point2d origin_mm;
    double px_per_mm = 0;
    cv::Mat layers;  // CV_32FC2: log light (weighted mean of the channels' logarithms) and redness (log of red over
                     // green), of device light without tone correction
    cv::Mat weight;  // CV_32FC1, 0..1: 0 outside the photo and on the card
    [[nodiscard]] cv::Point2d mm(double i, double j) const {
        return {origin_mm.x + i / px_per_mm, origin_mm.y + j / px_per_mm};
    }
    [[nodiscard]] cv::Point2d px(cv::Point2d mm) const {
        return {(mm.x - origin_mm.x) * px_per_mm, (mm.y - origin_mm.y) * px_per_mm};
    }
};

// Averages over whole pixels where the photo is finer. card_margin_mm about the card's face is left out too: its cut
// edge and its shadow.
[[nodiscard]] Ground ground_of(const Photo& photo, const card::Calibration& calibration, const cv::Rect2d& area_mm,
                               double px_per_mm, double card_margin_mm);

// The same pixels as device codes (the photo's own type), for colours.
[[nodiscard]] cv::Mat codes_of(const Photo& photo, const card::Calibration& calibration, const Ground& like);

// Averaged over times x times pixels.
[[nodiscard]] Ground coarser(const Ground& ground, int times);

}  // namespace kempt::align
