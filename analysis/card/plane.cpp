#include "card/plane.h"

#include <opencv2/calib3d.hpp>

namespace kempt::card {
namespace {

struct Pairs {
    std::vector<cv::Point2d> mm, px;
};

Pairs pairs_of(const std::vector<Marker>& markers, const Layout& layout, double grow_mm) {
    Pairs pairs;
    for (const Marker& marker : markers) {
        const auto mm = layout.corners_mm(static_cast<size_t>(marker.id - layout.first_id), grow_mm);
        for (size_t k = 0; k < 4; ++k) {
            pairs.mm.push_back(mm[k]);
            pairs.px.push_back(marker.corners[k]);
        }
    }
    return pairs;
}

std::optional<cv::Matx33d> homography(const Pairs& pairs) {
    const cv::Mat h = cv::findHomography(pairs.mm, pairs.px, 0);
    if (h.empty() || !cv::checkRange(h)) return std::nullopt;
    return cv::Matx33d(h.ptr<double>());
}

double squares(const cv::Matx33d& h, const Pairs& pairs) {
    double sum = 0;
    for (size_t i = 0; i < pairs.mm.size(); ++i) {
        const cv::Point2d off = apply(h, pairs.mm[i]) - pairs.px[i];
        sum += off.dot(off);
    }
    return sum;
}

// Standard uncertainty of the local scale: the covariance of the eight free entries carried through by derivatives.
double scale_sd(const cv::Matx33d& h, const Pairs& pairs, cv::Point2d middle_mm, double variance) {
    const int n = static_cast<int>(pairs.mm.size());
    cv::Mat1d jacobian(2 * n, 8), gradient(8, 1);
    for (int j = 0; j < 8; ++j) {
        cv::Matx33d moved = h;
        const double step = 1e-6 * std::max(std::abs(h.val[j]), j >= 6 ? 1e-3 : 1.0);
        moved.val[j] += step;
        for (int i = 0; i < n; ++i) {
            const cv::Point2d change =
                (apply(moved, pairs.mm[static_cast<size_t>(i)]) - apply(h, pairs.mm[static_cast<size_t>(i)])) / step;
            jacobian(2 * i, j) = change.x;
            jacobian(2 * i + 1, j) = change.y;
        }
        gradient(j) = (local_scale(moved, middle_mm) - local_scale(h, middle_mm)) / step;
    }
    cv::Mat1d x;
    if (!cv::solve(jacobian.t() * jacobian, gradient, x, cv::DECOMP_SVD)) return 0;
    return std::sqrt(std::max(0.0, variance * gradient.dot(x)));
}

}  // namespace

std::array<cv::Point2d, 4> Layout::corners_mm(size_t k, double grow_mm) const {
    const cv::Point2d c = centres_mm[k];
    const double h = side_mm / 2 + grow_mm;
    return {{{c.x - h, c.y - h}, {c.x + h, c.y - h}, {c.x + h, c.y + h}, {c.x - h, c.y + h}}};
}

cv::Point2d apply(const cv::Matx33d& h, cv::Point2d p) {
    const cv::Vec3d q = h * cv::Vec3d(p.x, p.y, 1);
    return {q[0] / q[2], q[1] / q[2]};
}

double local_scale(const cv::Matx33d& h, cv::Point2d p) {
    // The Jacobian's determinant of a homography is det(h) / w^3.
    const double w = h(2, 0) * p.x + h(2, 1) * p.y + h(2, 2);
    return std::sqrt(std::abs(cv::determinant(h) / (w * w * w)));
}

std::vector<Marker> agreeing(const std::vector<Marker>& found, const Layout& layout) {
    std::vector<Marker> best;
    double best_off = 0;
    for (const Marker& seed : found) {
        const int k = seed.id - layout.first_id;
        if (k < 0 || k > 3) continue;
        const auto guess = homography(pairs_of({seed}, layout, 0));
        if (!guess) continue;
        std::array<const Marker*, 4> chosen{};
        chosen[static_cast<size_t>(k)] = &seed;
        double total_off = 0;
        for (int other = 0; other < 4; ++other) {
            if (other == k) continue;
            const auto at = static_cast<size_t>(other);
            const cv::Point2d expected = apply(*guess, layout.centres_mm[at]);
            // One marker's own corners foretell the others' places to about a tenth of the distance (rough corners,
            // tilt).
            const double reach = 0.35 * cv::norm(expected - apply(*guess, layout.centres_mm[static_cast<size_t>(k)]));
            double nearest = reach;
            for (const Marker& marker : found) {
                if (marker.id != layout.first_id + other) continue;
                const cv::Point2d centre =
                    (marker.corners[0] + marker.corners[1] + marker.corners[2] + marker.corners[3]) / 4;
                const double size_ratio =
                    cv::norm(marker.corners[0] - marker.corners[2]) / cv::norm(seed.corners[0] - seed.corners[2]);
                const double off = cv::norm(centre - expected);
                if (size_ratio < 0.5 || size_ratio > 2 || off >= nearest) continue;
                nearest = off;
                chosen[at] = &marker;
            }
            if (chosen[at]) total_off += nearest / reach;
        }
        std::vector<Marker> group;
        for (const Marker* marker : chosen)
            if (marker) group.push_back(*marker);
        if (group.size() > best.size() || (group.size() == best.size() && total_off < best_off))
            best = group, best_off = total_off;
    }
    return best;
}

std::optional<Plane> fit_plane(const std::vector<Marker>& markers, const Layout& layout, cv::Point2d middle_mm) {
    if (markers.size() < 2) return std::nullopt;
    // The sum of squares is very nearly a parabola in the common shift of all edges: three fits give its lowest point.
    const double probe = layout.side_mm / 100;
    std::array<double, 3> sums{};
    for (size_t i = 0; i < 3; ++i) {
        const Pairs pairs = pairs_of(markers, layout, (double(i) - 1) * probe);
        const auto h = homography(pairs);
        if (!h) return std::nullopt;
        sums[i] = squares(*h, pairs);
    }
    const double bend = sums[0] + sums[2] - 2 * sums[1];
    Plane plane;
    // More than 0.2 mm on a 10 mm marker is neither ink nor blur that passes the gate.
    if (bend > 1e-9) plane.edge_shift_mm = std::clamp(probe * (sums[0] - sums[2]) / (2 * bend), -2 * probe, 2 * probe);
    const Pairs pairs = pairs_of(markers, layout, plane.edge_shift_mm);
    const auto h = homography(pairs);
    if (!h) return std::nullopt;
    plane.px_from_mm = *h;
    const double sum = squares(*h, pairs), n = double(pairs.mm.size());
    plane.corner_rms_px = std::sqrt(sum / n);
    plane.px_per_mm = local_scale(*h, middle_mm);
    // Never below 0.03 px: with two markers hardly any freedom is left and the residuals flatter.
    const double variance = std::max(sum / std::max(1.0, 2 * n - 9), 0.03 * 0.03);
    plane.px_per_mm_sd = scale_sd(*h, pairs, middle_mm, variance);
    return plane;
}

}  // namespace kempt::card
