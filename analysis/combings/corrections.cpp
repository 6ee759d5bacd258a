#include "combings/corrections.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "combings/summary.h"

namespace kempt::combings {

namespace {

double distance_to_segment(cv::Point2d p, cv::Point2d a, cv::Point2d b) {
    const cv::Point2d d = b - a;
    const double length2 = d.dot(d);
    const double t = length2 > 0 ? std::clamp((p - a).dot(d) / length2, 0.0, 1.0) : 0.0;
    return cv::norm(p - (a + t * d));
}

double distance_to_path(cv::Point2d p, const std::vector<cv::Point2d>& path) {
    double nearest = path.size() == 1 ? cv::norm(p - path.front()) : std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i + 1 < path.size(); ++i)
        nearest = std::min(nearest, distance_to_segment(p, path[i], path[i + 1]));
    return nearest;
}

constexpr std::size_t nobody = std::numeric_limits<std::size_t>::max();

// On the sheet, where one was found; else in the card's plane.
cv::Point2d mm_of(cv::Point2d px, const card::Calibration& calibration) {
    if (!calibration.sheet) return card::mm_from_px(calibration, px);
    const cv::Vec3d p = calibration.sheet->mm_from_px * cv::Vec3d(px.x, px.y, 1);
    return {p[0] / p[2], p[1] / p[2]};
}

std::size_t strand_at(const std::vector<Strand>& strands, cv::Point2d p, const card::Calibration& calibration) {
    std::size_t best = nobody;
    double nearest =
        correction_reach_mm * (calibration.sheet ? calibration.sheet->px_per_mm : card::px_per_mm_at(calibration, p));
    for (std::size_t i = 0; i < strands.size(); ++i)
        if (const double d = distance_to_path(p, strands[i].path_px); d <= nearest) {
            nearest = d;
            best = i;
        }
    return best;
}

void turn(Strand& strand) {
    std::reverse(strand.path_px.begin(), strand.path_px.end());
    std::swap(strand.torn[0], strand.torn[1]);
}

// End to end, turned so that the ends that lie nearest to each other meet.
Strand join(Strand one, Strand other, const card::Calibration& calibration) {
    if (one.path_px.empty()) return other;
    if (other.path_px.empty()) return one;
    double nearest = std::numeric_limits<double>::infinity();
    bool turn_one = false, turn_other = false;
    for (const bool first : {false, true})
        for (const bool second : {false, true}) {
            const cv::Point2d end = first ? one.path_px.front() : one.path_px.back();
            const cv::Point2d begin = second ? other.path_px.back() : other.path_px.front();
            if (const double gap = cv::norm(begin - end); gap < nearest) {
                nearest = gap;
                turn_one = first;
                turn_other = second;
            }
        }
    if (turn_one) turn(one);
    if (turn_other) turn(other);
    const double gap_mm = cv::norm(mm_of(other.path_px.front(), calibration) - mm_of(one.path_px.back(), calibration));
    one.path_px.insert(one.path_px.end(), other.path_px.begin(), other.path_px.end());
    one.length_mm += gap_mm + other.length_mm;
    // One scale stands behind both, so that their errors add up rather than cancel.
    one.length_low += gap_mm + other.length_low;
    one.length_high += gap_mm + other.length_high;
    one.doubtful = one.doubtful || other.doubtful;
    one.torn_ends = std::max(0, one.torn_ends - 1) + std::max(0, other.torn_ends - 1);
    one.cut_off = one.cut_off || other.cut_off;
    one.torn[1] = other.torn[1];
    return one;
}

}  // namespace

std::vector<Strand> corrected(const std::vector<Strand>& strands, const Corrections& corrections,
                              const card::Calibration& calibration) {
    std::vector<Strand> now = strands;
    std::vector<std::size_t> part_of(strands.size());  // the strand that each has become part of
    std::iota(part_of.begin(), part_of.end(), std::size_t{0});
    std::vector<bool> hair(strands.size(), true);
    for (const cv::Point2d& p : corrections.not_hair_px)
        if (const std::size_t at = strand_at(strands, p, calibration); at != nobody) hair[at] = false;
    for (const auto& [a, b] : corrections.joined_px) {
        const std::size_t one = strand_at(strands, a, calibration), other = strand_at(strands, b, calibration);
        if (one == nobody || other == nobody || part_of[one] == part_of[other]) continue;
        const std::size_t into = part_of[one], from = part_of[other];
        now[into] = join(std::move(now[into]), std::move(now[from]), calibration);
        hair[into] = hair[into] && hair[from];
        std::replace(part_of.begin(), part_of.end(), from, into);
    }
    for (const cv::Point2d& p : corrections.whole_px) {
        const std::size_t part = strand_at(strands, p, calibration);
        // Of a joined strand the point may lie on the way between its parts.
        const std::size_t at = part != nobody ? part_of[part] : strand_at(now, p, calibration);
        if (at != nobody) now[at].whole = true;
    }
    std::vector<Strand> left;
    for (std::size_t i = 0; i < now.size(); ++i)
        if (part_of[i] == i && hair[i]) left.push_back(std::move(now[i]));
    std::stable_sort(left.begin(), left.end(),
                     [](const Strand& a, const Strand& b) { return a.length_mm > b.length_mm; });
    return left;
}

CombingsReadings corrected(const CombingsReadings& traced, const Corrections& corrections,
                           const card::Calibration& calibration, const CombingsOptions& options) {
    CombingsReadings out;
    out.strands = corrected(traced.strands, corrections, calibration);
    out.unresolved_px = traced.unresolved_px;
    out.dim_px = traced.dim_px;
    out.against = traced.against;
    out.near_noise = traced.near_noise;
    out.torn_parts = traced.torn_parts;
    summarise(out, options);
    return out;
}

}  // namespace kempt::combings
