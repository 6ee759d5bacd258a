// The plane of the card or sheet: which markers belong together, and the homography from their corners.
#pragma once

#include <optional>

#include "card/markers.h"

namespace kempt::card {

// Markers as printed: ids first_id .. first_id + 3, clockwise from the top left.
struct Layout {
    int first_id = 0;
    std::array<cv::Point2d, 4> centres_mm;
    double side_mm = 0;
    // Corners of marker k (0..3), clockwise from its top left, each moved outward by grow_mm.
    [[nodiscard]] std::array<cv::Point2d, 4> corners_mm(size_t k, double grow_mm = 0) const;
};

// Of all found markers those that agree on one place of the layout (at most one of each id, sorted by id).
[[nodiscard]] std::vector<Marker> agreeing(const std::vector<Marker>& found, const Layout& layout);

struct Plane {
    cv::Matx33d px_from_mm = cv::Matx33d::eye();
    double corner_rms_px = 0;  // of all corners, after the edges' shift was taken out
    double edge_shift_mm = 0;  // ink spread, or blur bent by a tone curve: all edges outward by this much
    double px_per_mm = 0;      // at `middle_mm`
    double px_per_mm_sd = 0;   // from the residuals, by the covariance of the homography
};

// Least squares over all corners (algebraic start, then reprojection error) with one common shift of the edges.
// Empty with fewer than two markers or when they do not fit a plane.
[[nodiscard]] std::optional<Plane> fit_plane(const std::vector<Marker>& markers, const Layout& layout,
                                             cv::Point2d middle_mm);

[[nodiscard]] cv::Point2d apply(const cv::Matx33d& h, cv::Point2d p);
// Square root of the area that a unit square around p takes under h.
[[nodiscard]] double local_scale(const cv::Matx33d& h, cv::Point2d p);

}  // namespace kempt::card
