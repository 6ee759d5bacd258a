#include "align/skin_map.h"

#include <algorithm>
#include <cmath>

#include "core/rank.h"

namespace kempt::align {

namespace {

// Standard deviations of the bend a priori. A scalp of 85 mm radius (heads: 80-100) that lies h below the card's plane
// shows h tan(D) aside when the two cameras' tilts towards the card differ by D. D = 10 degrees and h = t2 / (2 * 85):
// 0.001 t2; the slope of it 10 mm from where the card touches: 0.02. Seen from 150 mm, the square grows by a 150th a
// millimetre: 7e-6.
constexpr double slope_sd = 0.015, square_sd = 0.0007, cube_sd = 5e-6;
// What is left of the head's shape after such a bend grows with the distance across the line: a cubic term a little
// larger than its prior, 1e-5 t3, gives 0.01 mm at 10 mm and 0.6 mm at 40 mm. Skin far from the line counts accordingly
// less.
constexpr double left_over = 1e-5;
constexpr int rounds = 12;
constexpr double most_spread = 1.3;  // what promises may be wrong by; the first rounds look further
// Tighter than the 4.7 that is 95 % efficient for normal errors (Huber and Ronchetti 2009): wrong places lie near the
// right ones here. 3 left the fewest errors over 0.5 mm on 40 rendered pairs (seeds 8000-8039) and still bears a third
// of wrong places.
constexpr double tukey = 3.0;
constexpr double floor_mm = 0.05;  // ties are not told apart finer than this: pixels of 1/6 mm, correlated to a third

using Normal = cv::Mat_<double>;

double mahalanobis(const cv::Vec2d& r, const cv::Matx22d& information) {
    return r.dot(information * r);
}

}  // namespace

cv::Point2d SkinMap::rigid(cv::Point2d p) const {
    const double c = std::cos(turn_rad), n = std::sin(turn_rad);
    const cv::Point2d d = p - middle_mm;
    return {c * d.x - n * d.y + middle_mm.x + shift_mm[0], n * d.x + c * d.y + middle_mm.y + shift_mm[1]};
}

double SkinMap::across(cv::Point2d p) const {
    return -(p.x - middle_mm.x) * along[1] + (p.y - middle_mm.y) * along[0];
}

std::array<double, SkinMap::terms> SkinMap::values(cv::Point2d p) const {
    const cv::Point2d d = p - middle_mm;
    const double s = std::clamp(d.x * along[0] + d.y * along[1], low_mm[0], high_mm[0]),
                 t = std::clamp(across(p), low_mm[1], high_mm[1]);
    return {1, s, t, s * s, s * t, t * t, s * s * s, s * s * t};
}

cv::Point2d SkinMap::operator()(cv::Point2d p) const {
    cv::Point2d out = rigid(p);
    const auto v = values(p);
    for (std::size_t k = 0; k < terms; ++k) out += cv::Point2d(bend[k] * v[k]);
    return out;
}

cv::Mat SkinMap::grid(cv::Point2d origin_mm, double px_per_mm, cv::Size size) const {
    cv::Mat out(size, CV_32FC2);
    cv::parallel_for_(cv::Range(0, size.height), [&](const cv::Range& part) {
        for (int j = part.start; j < part.end; ++j)
            for (int i = 0; i < size.width; ++i) {
                const cv::Point2d q = (*this)({origin_mm.x + i / px_per_mm, origin_mm.y + j / px_per_mm});
                out.at<cv::Vec2f>(j, i) = {static_cast<float>(q.x), static_cast<float>(q.y)};
            }
    });
    return out;
}

SkinMap rigid_through(const std::vector<Tie>& ties, cv::Point2d middle_mm) {
    const double share = 1 / static_cast<double>(ties.size());
    cv::Point2d from, to;
    for (const Tie& tie : ties) from += tie.earlier_mm * share, to += tie.later_mm * share;
    double along_sum = 0, across_sum = 0;
    for (const Tie& tie : ties) {
        const cv::Point2d a = tie.earlier_mm - from, b = tie.later_mm - to;
        along_sum += a.dot(b), across_sum += a.cross(b);
    }
    SkinMap map;
    map.middle_mm = middle_mm;
    map.turn_rad = std::atan2(across_sum, along_sum);
    const cv::Point2d shift = to - map.rigid(from);
    map.shift_mm = {shift.x, shift.y};
    return map;
}

Fit fit(std::vector<Tie>& ties, const SkinMap& start, double overlap, bool trusted) {
    constexpr int n = SkinMap::terms, all = 2 * n;
    Fit result;
    result.map = start;
    Normal prior(all, all, 0.0);
    const auto add_prior = [&](std::initializer_list<std::pair<int, double>> row, double sd) {
        for (const auto& [i, a] : row)
            for (const auto& [j, b] : row) prior(i, j) += a * b / (sd * sd);
    };
    // In the axes of the line the slope is [[a, b], [c, d]]; its turning part (c - b) / 2 is free.
    const double ax = start.along[0], ay = start.along[1];
    const auto row = [&](int term, double x, double y) {
        return std::array<std::pair<int, double>, 2>{std::pair{term, x}, std::pair{n + term, y}};
    };
    const auto slope = [&](double x1, double y1, double x2, double y2) {
        const auto first = row(1, x1, y1), second = row(2, x2, y2);
        add_prior({first[0], first[1], second[0], second[1]}, slope_sd);
    };
    slope(ax / 2, ay / 2, -ay / 2, ax / 2);  // (a + d) / 2
    slope(ax / 2, ay / 2, ay / 2, -ax / 2);  // (a - d) / 2
    slope(-ay / 2, ax / 2, ax / 2, ay / 2);  // (b + c) / 2
    for (int axis = 0; axis < 2; ++axis) {
        for (const int term : {3, 4, 5}) add_prior({{axis * n + term, 1.0}}, square_sd);
        for (const int term : {6, 7}) add_prior({{axis * n + term, 1.0}}, cube_sd);
    }
    std::vector<std::array<double, n>> values;
    std::vector<cv::Vec2d> wanted;
    std::vector<cv::Matx22d> information;
    for (const Tie& tie : ties) {
        values.push_back(start.values(tie.earlier_mm));
        const cv::Point2d d = tie.later_mm - start.rigid(tie.earlier_mm);
        wanted.emplace_back(d.x, d.y);
        const double across = std::pow(std::abs(start.across(tie.earlier_mm)), 3) * left_over;
        const cv::Matx22d covariance =
            tie.information.inv(cv::DECOMP_SVD) + cv::Matx22d::eye() * (floor_mm * floor_mm + across * across);
        information.push_back(covariance.inv());
    }
    Normal x(all, 1, 0.0);
    for (int k = 0; k < n; ++k)
        x(k) = start.bend[static_cast<std::size_t>(k)][0], x(n + k) = start.bend[static_cast<std::size_t>(k)][1];
    const auto residual = [&](std::size_t i) {
        cv::Vec2d r = wanted[i];
        for (int k = 0; k < n; ++k) {
            r[0] -= x(k) * values[i][static_cast<std::size_t>(k)];
            r[1] -= x(n + k) * values[i][static_cast<std::size_t>(k)];
        }
        return r;
    };
    Normal normal;
    double spread = 1;
    for (int round = 0; round < rounds; ++round) {
        std::vector<double> distance;
        for (std::size_t i = 0; i < ties.size(); ++i) distance.push_back(mahalanobis(residual(i), information[i]));
        std::vector<double> sorted = distance;
        // Of two normal axes the squared distance has the median 1.386. Never below what the information promised, so
        // that a few ties that agree by chance cannot throw the others out.
        spread = std::clamp(std::sqrt(at_rank(sorted, 0.5) / 1.386), 1.0, std::max(most_spread, 12.0 / (1 << round)));
        normal = prior.clone();
        Normal right(all, 1, 0.0);
        for (std::size_t i = 0; i < ties.size(); ++i) {
            const double u = std::sqrt(distance[i]) / (tukey * spread);
            ties[i].weight = trusted ? 1 : u < 1 ? (1 - u * u) * (1 - u * u) : 0;
            const double w = ties[i].weight / (spread * spread * overlap);
            if (w <= 0) continue;
            for (int a = 0; a < 2; ++a)
                for (int b = 0; b < 2; ++b) {
                    const double q = w * information[i](a, b);
                    for (int k = 0; k < n; ++k) {
                        const double vk = q * values[i][static_cast<std::size_t>(k)];
                        right(a * n + k) += vk * wanted[i][b];
                        for (int m = 0; m < n; ++m)
                            normal(a * n + k, b * n + m) += vk * values[i][static_cast<std::size_t>(m)];
                    }
                }
        }
        for (int k : {0, n}) normal(k, k) += 1e-9;
        if (!cv::solve(normal, right, x, cv::DECOMP_CHOLESKY)) cv::solve(normal, right, x, cv::DECOMP_SVD);
    }
    for (int k = 0; k < n; ++k) result.map.bend[static_cast<std::size_t>(k)] = {x(k), x(n + k)};
    result.covariance = normal.inv(cv::DECOMP_SVD);
    result.spread = spread;
    double agree = 0, possible = 0;
    for (const Tie& tie : ties) agree += tie.weight * tie.correlation, possible += tie.correlation;
    result.agreeing = possible > 0 ? agree / possible : 0;
    return result;
}

double uncertainty(const Fit& fit, cv::Point2d earlier_mm) {
    constexpr int n = SkinMap::terms;
    const auto v = fit.map.values(earlier_mm);
    double sum = 0;
    for (int axis = 0; axis < 2; ++axis)
        for (int k = 0; k < n; ++k)
            for (int m = 0; m < n; ++m)
                sum += v[static_cast<std::size_t>(k)] * v[static_cast<std::size_t>(m)] *
                       fit.covariance.at<double>(axis * n + k, axis * n + m);
    return std::sqrt(std::max(0.0, sum / 2));
}

}  // namespace kempt::align
