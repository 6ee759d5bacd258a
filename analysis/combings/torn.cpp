#include "combings/torn.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace kempt::combings {
namespace {

// Fitted by maximum likelihood to the 31,812 ends of 519 rendered photos of all hair, shapes and JPEG qualities (seeds
// 34000-35618 and 45000-45375), of which 1,732 lay farther than 1.5 mm from the end of any true strand. Twelve further
// properties (length, free path, the other end, the other strand's clearness ...) brought the logarithm of the
// likelihood of a left-out fifth 7 % nearer to nought, and the median of its strands no nearer to the truth.
constexpr double base = -3.67, by_dark = 8.20, by_touching = 0.72, by_rate = 1.09, by_blank = 1.58,
                 by_clearness = -2.48, by_sine = -3.80, by_facing = 6.54;
// ahead_dark where an end begins to look torn, and where it surely does.
constexpr double dark_from = 0.25, dark_to = 0.75;
constexpr double touching_mm = 0.3, beside_mm = 0.8, away_sine = 0.6, long_blank_mm = 0.5;
constexpr double tangent_mm = 2;
// An end of another strand that looks torn as well and lies ahead, each in the other's way (cosine), tells of a gap.
constexpr double facing_dark = 0.4, facing_reach_mm = 40, facing_fall_mm = 10, facing_cosine = 0.8;

struct End {
    cv::Point2d at, ahead;  // mm, outward
    double dark = 0;
};

End end_of(const TracedStrand& s, int which) {
    const auto& path = s.path_mm;
    const auto point = [&](size_t i) { return which == 0 ? path[i] : path[path.size() - 1 - i]; };
    size_t i = 0;
    for (double run = 0; run < tangent_mm && i + 1 < path.size(); ++i) run += cv::norm(point(i + 1) - point(i));
    const cv::Point2d d = point(0) - point(i);
    const double length = cv::norm(d);
    return {point(0), length > 0 ? d / length : cv::Point2d(1, 0), s.ahead_dark[which]};
}

// Sine of the angle under which the end runs into the strand beside it.
double sine_beside(const End& end, const std::vector<TracedStrand>& strands, size_t own) {
    double nearest = beside_mm, sine = away_sine;
    for (size_t s = 0; s < strands.size(); ++s) {
        if (s == own) continue;
        const auto& path = strands[s].path_mm;
        for (size_t i = 0; i + 1 < path.size(); ++i) {
            const double away = cv::norm(end.at - path[i]);
            if (away >= nearest) continue;
            const cv::Point2d d = path[i + 1] - path[i];
            nearest = away;
            sine = std::abs(end.ahead.cross(d)) / std::max(1e-9, cv::norm(d));
        }
    }
    return sine;
}

double facing_mm(const End& end, const std::vector<std::array<End, 2>>& ends, size_t own) {
    double nearest = std::numeric_limits<double>::infinity();
    for (size_t s = 0; s < ends.size(); ++s)
        for (const End& other : ends[s]) {
            const cv::Point2d gap = other.at - end.at;
            const double length = cv::norm(gap);
            if (s == own || other.dark < facing_dark || length <= 0 || length > facing_reach_mm) continue;
            if (end.ahead.dot(gap) < facing_cosine * length || -other.ahead.dot(gap) < facing_cosine * length) continue;
            nearest = std::min(nearest, length);
        }
    return nearest;
}

}  // namespace

std::vector<std::array<double, 2>> torn_chances(const std::vector<TracedStrand>& strands) {
    std::vector<std::array<End, 2>> ends;
    double looks_torn = 0;
    for (const TracedStrand& s : strands) {
        ends.push_back({end_of(s, 0), end_of(s, 1)});
        for (const End& end : ends.back()) looks_torn += end.dark > torn_dark;
    }
    const double rate = looks_torn / std::max(1.0, static_cast<double>(strands.size()));
    std::vector<std::array<double, 2>> out(strands.size());
    for (size_t s = 0; s < strands.size(); ++s)
        for (size_t e = 0; e < 2; ++e) {
            const End& end = ends[s][e];
            const double dark = std::clamp((end.dark - dark_from) / (dark_to - dark_from), 0.0, 1.0);
            if (dark == 0) continue;  // one in a hundred
            const double seen = by_dark + (strands[s].blank_mm > long_blank_mm ? by_blank : 0) +
                                by_clearness * strands[s].share_of_usual + by_sine * sine_beside(end, strands, s) +
                                by_facing * std::exp(-facing_mm(end, ends, s) / facing_fall_mm);
            const double logit = base + dark * seen + (strands[s].touch_mm[e] < touching_mm ? by_touching : 0) +
                                 by_rate * std::log(rate + 0.02);
            out[s][e] = 1 / (1 + std::exp(-logit));
        }
    return out;
}

}  // namespace kempt::combings
