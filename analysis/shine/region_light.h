// The region laid flat in the fibres' own frame: rows along the fibres, columns across, linear light.
#pragma once

#include <opencv2/core.hpp>
#include <vector>

#include "card/calibration.h"
#include "core/photo.h"
#include "core/result.h"

namespace kempt::shine {

// A rectangle in the card's plane around the region.
struct Frame {
    cv::Point2d origin_mm;                  // middle of the first cell of the first row
    cv::Point2d along{0, 1}, across{1, 0};  // unit vectors; along from the region's first side to its last
    double step_mm = 0;
    int rows = 0, columns = 0;
    [[nodiscard]] cv::Point2d at_mm(double row, double column) const {
        return origin_mm + (row * along + column * across) * step_mm;
    }
};

struct RegionLight {
    Frame frame;
    cv::Mat light;   // CV_32FC3 linear sRGB, 1 = the card's white; unevenness of the light over the card taken out
    cv::Mat inside;  // CV_8UC1, 255 inside the region, the photo, and off the card
};

// Errors: invalid ("region-not-four-corners", "region-outside", "region-crosses").
[[nodiscard]] Status check_region(const Photo& photo, const std::vector<cv::Point2d>& region_px);

// The photo's part of the region once in linear light, cut into frames of any direction at little cost.
class RegionCutter {
  public:
    RegionCutter(const Photo& photo, const card::Calibration& calibration, const std::vector<cv::Point2d>& region_px,
                 double finest_px_per_mm);
    // Frame whose rows run along `along` (card mm; its sign is set by the order of the corners).
    [[nodiscard]] RegionLight cut(cv::Point2d along) const;
    [[nodiscard]] const std::vector<cv::Point2d>& corners_mm() const { return corners_mm_; }
    [[nodiscard]] double clipped_share() const { return clipped_share_; }  // burnt out in all channels
    [[nodiscard]] double black_share() const { return black_share_; }      // at the black level in all channels
    [[nodiscard]] double px_per_mm() const { return px_per_mm_; }          // of the photo in the region's middle

  private:
    const card::Calibration& calibration_;
    std::vector<cv::Point2d> corners_mm_;
    cv::Mat light_;       // of the region's box, shrunk by whole factors
    cv::Point2d box_px_;  // photo pixel of light_'s first pixel
    cv::Size photo_size_;
    double shrink_ = 1, px_per_mm_ = 0, step_mm_ = 0, clipped_share_ = 0, black_share_ = 0;
};

}  // namespace kempt::shine
