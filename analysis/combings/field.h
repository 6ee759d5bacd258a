// Where strands are looked for: the free part of the gauge sheet, without its markers, its printed strip, its rim and a
// card that lies on it.
#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

#include "card/calibration.h"

namespace kempt::combings {

class Field {
  public:
    // region_px: empty for the whole sheet. margin_mm: kept clear of print, rim and card.
    Field(const card::Calibration& calibration, const std::vector<cv::Point2d>& region_px, double margin_mm);
    // Distance in mm to the nearest place that is not looked at: above 0 inside the field, capped at `far_mm`.
    static constexpr double far_mm = 5;
    [[nodiscard]] double inside_mm(cv::Point2d px) const;
    [[nodiscard]] bool inside(cv::Point2d px) const;  // the same as above 0, faster
    enum class Cell : char { outside, mixed, inside };
    // What inside() says of all places in and within 1 px around each square of `side` pixels of `bounds`, from its
    // upper left; mixed: not the same, or not known. 8-bit.
    [[nodiscard]] cv::Mat1b squares(cv::Rect bounds, int side) const;
    // First and one past the last column of a row that may belong to the field; empty range when none.
    [[nodiscard]] cv::Range columns(int y, int width) const;
    [[nodiscard]] cv::Rect bounds(cv::Size photo) const;
    [[nodiscard]] double area_mm2() const { return area_mm2_; }
    [[nodiscard]] cv::Point2d mm_from_px(cv::Point2d px) const;
    [[nodiscard]] cv::Point2d px_from_mm(cv::Point2d mm) const;
    [[nodiscard]] const cv::Matx33d& mm_from_px() const { return mm_from_px_; }

  private:
    [[nodiscard]] Cell square(const cv::Rect2d& px) const;
    static constexpr double cell_mm = 4;
    [[nodiscard]] double distance_mm(cv::Point2d mm) const;
    cv::Matx33d mm_from_px_, px_from_mm_;
    std::vector<cv::Point2d> outline_mm_, outline_px_;  // convex, looked at
    std::vector<std::vector<cv::Point2d>> holes_mm_;    // convex, not looked at
    double area_mm2_ = 0;
    int columns_ = 0, rows_ = 0;
    std::vector<Cell> cells_;  // of the page
};

}  // namespace kempt::combings
