// Laying the later photo over the earlier one in millimetres: turn and shift, never a change of size.
#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <vector>

namespace kempt::work {

// to = turn * from + shift, millimetres.
struct Rigid {
    cv::Matx22d turn = cv::Matx22d::eye();
    cv::Vec2d shift{0, 0};
    [[nodiscard]] cv::Point2d operator()(const cv::Point2d& p) const;
    [[nodiscard]] Rigid inverse() const;
    [[nodiscard]] cv::Matx33d matrix() const;
};

// Least squares over point pairs (Kabsch 1976 in two dimensions, no mirror); two pairs or more, same order.
[[nodiscard]] Rigid rigid_from_pairs(const std::vector<cv::Point2d>& from, const std::vector<cv::Point2d>& to);

struct LineUp {
    Rigid earlier_from_later;
    double rms_mm = 0;  // between the lines after laying over, the worst fifth left out
};
struct MarkedLine {
    std::vector<cv::Point2d> line_mm;  // two points or more
    cv::Point2d hair_mm;               // on the hair's side
};
// Lays the later line over the earlier one: first chord on chord, hair to hair, middle on middle; then closest points
// in turn (Besl and McKay 1992), of which the farthest fifth is left out, because one line is often drawn further out
// than the other and because the edge itself may have moved there. Along a nearly straight line the middles decide.
[[nodiscard]] LineUp line_up(const MarkedLine& earlier, const MarkedLine& later);

// How far two lines lie apart as they are laid: RMS of the later one's samples from the earlier one, the worst fifth
// left out. Laid by the skin, it tells how far the edge itself has moved.
[[nodiscard]] double lines_apart_mm(const MarkedLine& earlier, const MarkedLine& later,
                                    const Rigid& earlier_from_later);

// The line at even steps of `step_mm`.
[[nodiscard]] std::vector<cv::Point2d> resampled(const std::vector<cv::Point2d>& line_mm, double step_mm);

}  // namespace kempt::work
