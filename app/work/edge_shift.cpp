#include "work/edge_shift.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace kempt::work {

namespace {

constexpr double step_mm = 1;  // a line drawn by hand says nothing finer

struct Nearest {
    cv::Point2d at;
    bool inside = false;  // not an end of the line
};

Nearest nearest_on(const std::vector<cv::Point2d>& line, const cv::Point2d& p) {
    Nearest nearest;
    double least = std::numeric_limits<double>::max();
    for (std::size_t i = 1; i < line.size(); ++i) {
        const cv::Point2d along = line[i] - line[i - 1];
        const double length2 = along.dot(along);
        if (length2 <= 0) continue;
        const double t = (p - line[i - 1]).dot(along) / length2, held = std::clamp(t, 0.0, 1.0);
        const cv::Point2d q = line[i - 1] + along * held, off = p - q;
        if (off.dot(off) >= least) continue;
        least = off.dot(off);
        const bool beyond = (i == 1 && t < 0) || (i + 1 == line.size() && t > 1);
        nearest = {q, !beyond};
    }
    return nearest;
}

}  // namespace

EdgeShift edge_shift(const MarkedLine& earlier, const MarkedLine& later, const Rigid& earlier_from_later) {
    EdgeShift shift;
    const std::vector<cv::Point2d> line = resampled(earlier.line_mm, step_mm);
    std::vector<cv::Point2d> laid;
    for (const cv::Point2d& p : later.line_mm) laid.push_back(earlier_from_later(p));
    for (std::size_t i = 0; i < line.size(); ++i) {
        const cv::Point2d along = line[std::min(i + 1, line.size() - 1)] - line[i > 0 ? i - 1 : 0];
        cv::Point2d outward(-along.y, along.x);
        const double length = std::hypot(outward.x, outward.y);
        const Nearest nearest = nearest_on(laid, line[i]);
        if (length <= 0 || !nearest.inside) continue;
        if (outward.dot(earlier.hair_mm - line[i]) > 0) outward = -outward;
        const cv::Point2d off = nearest.at - line[i];
        shift.at_mm.push_back(step_mm * static_cast<double>(i));
        shift.forward_mm.push_back(std::copysign(std::hypot(off.x, off.y), off.dot(outward)));
    }
    if (shift.at_mm.empty()) return shift;
    for (const double mm : shift.forward_mm) shift.mean_mm += mm / static_cast<double>(shift.forward_mm.size());
    const auto [low, high] = std::minmax_element(shift.forward_mm.begin(), shift.forward_mm.end());
    shift.least_mm = *low;
    shift.most_mm = *high;
    return shift;
}

}  // namespace kempt::work
