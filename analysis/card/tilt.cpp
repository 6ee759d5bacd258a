#include "card/tilt.h"

#include <opencv2/calib3d.hpp>

#include "card/least_squares.h"

namespace kempt::card {
namespace {

// Focal length in units of the longer side. A phone's main camera (24-28 mm equivalent on 36 mm) has 0.67-0.78, its
// two- and threefold lenses or digital zoom 1.4-2.2, from memory. 1.1 with a factor of 1.6 as one standard deviation
// covers both.
constexpr double usual_focal = 1.1, usual_focal_log_sd = 0.47;
constexpr double known_focal_log_sd = 0.02;  // maker's figures are rounded, focusing breathes
// Printers feed paper a little longer or shorter than they are wide: that looks like foreshortening. 0.07 % is on the
// careful side of common practice (0.05-0.3 %, no source) and keeps 3-6 degree tilts from being read out of the feed.
constexpr double feed_sd = 0.0007;

struct Pose {
    cv::Vec3d turn, shift;
};

// Pose of the plane under a focal length: columns of K^-1 H scaled to unit length (Zhang 2000, IEEE PAMI 22:1330).
Pose pose_of(const cv::Matx33d& centred_h, double focal) {
    cv::Matx33d b = centred_h;
    for (int c = 0; c < 3; ++c) b(0, c) /= focal, b(1, c) /= focal;
    const cv::Vec3d h1(b(0, 0), b(1, 0), b(2, 0)), h2(b(0, 1), b(1, 1), b(2, 1)), h3(b(0, 2), b(1, 2), b(2, 2));
    double scale = 2 / (cv::norm(h1) + cv::norm(h2));
    if (h3[2] < 0) scale = -scale;
    const cv::Vec3d r1 = cv::normalize(h1), r2 = cv::normalize(h2 - r1 * r1.dot(h2));
    const double sign = scale > 0 ? 1 : -1;
    const cv::Vec3d a = r1 * sign, c = r2 * sign, n = a.cross(c);
    const cv::Matx33d rotation(a[0], c[0], n[0], a[1], c[1], n[1], a[2], c[2], n[2]);
    Pose pose;
    cv::Rodrigues(rotation, pose.turn);
    pose.shift = h3 * scale;
    return pose;
}

}  // namespace

double tilt_degrees(const Plane& plane, const Layout& layout, cv::Size photo, const TiltOptions& options) {
    const double longer = std::max(photo.width, photo.height);
    const bool known = options.focal_px > 0;
    const double focal = known ? options.focal_px : usual_focal * longer;
    const double log_sd = known ? known_focal_log_sd : usual_focal_log_sd;
    // The origin at the layout's middle keeps rotation and shift apart.
    cv::Point2d middle;
    for (const cv::Point2d& c : layout.centres_mm) middle += c / 4;
    const cv::Matx33d centred = cv::Matx33d(1, 0, -(photo.width - 1) / 2.0, 0, 1, -(photo.height - 1) / 2.0, 0, 0, 1) *
                                plane.px_from_mm * cv::Matx33d(1, 0, middle.x, 0, 1, middle.y, 0, 0, 1);
    std::vector<cv::Point2d> mm, px;
    for (size_t k = 0; k < 4; ++k)
        for (const cv::Point2d& corner : layout.corners_mm(k)) {
            mm.push_back(corner - middle);
            px.push_back(apply(centred, corner - middle));
        }
    const double corner_sd = std::max(options.corner_sd_px, 0.05);
    const auto residuals = [&](const std::vector<double>& p, std::vector<double>& r) {
        cv::Matx33d turn;
        cv::Rodrigues(cv::Vec3d(p[0], p[1], p[2]), turn);
        const double f = focal * std::exp(p[6]);
        r.assign(2 * mm.size() + 2, 0);
        for (size_t i = 0; i < mm.size(); ++i) {
            const cv::Vec3d q = turn * cv::Vec3d(mm[i].x * (1 + p[7]), mm[i].y, 0);
            // Depth is carried as focal length times p[5], so that scale and focal length do not pull on each other.
            const double z = std::max(q[2] + p[5] * f / focal, 1e-6);
            r[2 * i] = (f * (q[0] + p[3]) / z - px[i].x) / corner_sd;
            r[2 * i + 1] = (f * (q[1] + p[4]) / z - px[i].y) / corner_sd;
        }
        r[2 * mm.size()] = p[6] / log_sd;
        r.back() = p[7] / feed_sd;
    };
    Fit best;
    bool have = false;
    for (const double start : {0.0, -0.45, 0.45}) {
        if (known && start != 0) continue;
        const Pose pose = pose_of(centred, focal * std::exp(start));
        const std::vector<double> first{pose.turn[0],  pose.turn[1],
                                        pose.turn[2],  pose.shift[0],
                                        pose.shift[1], pose.shift[2] * std::exp(-start),
                                        start,         0};
        const Fit fit = least_squares(residuals, first, {1e-6, 1e-6, 1e-6, 1e-5, 1e-5, 1e-5, 1e-6, 1e-7});
        if (!have || fit.sum_of_squares < best.sum_of_squares) best = fit, have = true;
    }
    cv::Matx33d turn;
    cv::Rodrigues(cv::Vec3d(best.parameters[0], best.parameters[1], best.parameters[2]), turn);
    return std::acos(std::clamp(std::abs(turn(2, 2)), 0.0, 1.0)) * 180 / CV_PI;
}

}  // namespace kempt::card
