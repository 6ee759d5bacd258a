#include "align/align.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "align/register_skin.h"
#include "align/side_ground.h"

namespace kempt::align {

namespace {

// Standard uncertainty of a point set by hand on a mole (from memory of tracing tests; no source), both photos
// together.
constexpr double anchor_sd_mm = 0.3;
// Anchors that fit worse than this are not the same places, or not in the same order.
constexpr double most_anchor_misfit_mm = 2.5;
// 95 % limit of the mean error along the line from the fit's standard uncertainty: calibrated on 143 rendered pairs of
// bench_align (seeds 1000-1059, 3000-3026, 4000-4021, 5000-5039), whose errors stayed below 1.65 times it in 95 %.
constexpr double limit_factor = 1.7;

std::vector<cv::Point2d> in_mm(const std::vector<cv::Point2d>& px, const card::Calibration& calibration) {
    std::vector<cv::Point2d> mm;
    for (const cv::Point2d& p : px) mm.push_back(card::mm_from_px(calibration, p));
    return mm;
}

double limit_along(const Fit& fit, const std::vector<cv::Point2d>& places_mm) {
    double sum = 0;
    for (const cv::Point2d& p : places_mm) sum += std::pow(uncertainty(fit, p), 2);
    return limit_factor * std::sqrt(sum / static_cast<double>(places_mm.size()));
}

Result<Alignment> finished(const Fit& fit, const std::vector<cv::Point2d>& places_mm, std::string by, double skin_share,
                           const AlignOptions& options) {
    Alignment out{fit.map, limit_along(fit, places_mm), std::move(by), skin_share};
    if (out.residual_mm <= (out.by == "anchors" ? options.most_anchor_residual_mm : options.most_residual_mm))
        return out;
    char text[120];
    std::snprintf(text, sizeof text, "The photos can only be laid over each other to about %.1f mm at the edge line.",
                  std::min(out.residual_mm, 99.0));
    return Error{ErrorKind::refused, "residual-too-large", text, "Nothing was carried over.",
                 "Draw the line anew, or mark two or more anchors (moles, scars) near it on both photos."};
}

Result<Alignment> by_anchors(const Side& earlier, const Side& later, const std::vector<cv::Point2d>& line_mm,
                             const AlignOptions& options) {
    const auto from = in_mm(earlier.anchors_px, *earlier.calibration), to = in_mm(later.anchors_px, *later.calibration);
    std::vector<Tie> ties;
    for (std::size_t i = 0; i < from.size(); ++i)
        ties.push_back({from[i], to[i], cv::Matx22d::eye() * (1 / (anchor_sd_mm * anchor_sd_mm)), 1, 1});
    const std::vector<cv::Point2d>& places = line_mm.empty() ? from : line_mm;
    cv::Point2d middle;
    for (const cv::Point2d& p : places) middle += p * (1.0 / static_cast<double>(places.size()));
    SkinMap start = rigid_through(ties, middle);
    for (const Tie& tie : ties) {
        const cv::Point2d off = tie.later_mm - start.rigid(tie.earlier_mm);
        if (std::hypot(off.x, off.y) > most_anchor_misfit_mm)
            return Error{ErrorKind::invalid, "anchors-disagree", "The anchors of the two photos do not fit each other.",
                         "Nothing was carried over.", "Mark the same places in the same order on both photos."};
    }
    double reach = 0;
    for (const auto& points : {from, places})
        for (const cv::Point2d& p : points) reach = std::max(reach, cv::norm(p - middle));
    start.low_mm = {-reach, -reach}, start.high_mm = {reach, reach};
    return finished(fit(ties, start, 1, true), places, "anchors", 0, options);
}

cv::Point2d card_middle(const card::Calibration& calibration) {
    cv::Point2d middle;
    for (const cv::Point2d& corner : calibration.card_corners_px)
        middle += card::mm_from_px(calibration, corner) * 0.25;
    return middle;
}

// The box of an area turned about the card's middle by quarters, with a rim about it.
cv::Rect2d turned(const cv::Rect2d& area, cv::Point2d about, int quarters, double rim) {
    const cv::Point2d centre(area.x + area.width / 2, area.y + area.height / 2), d = centre - about;
    const cv::Point2d at = quarters == 0   ? d
                           : quarters == 1 ? cv::Point2d(-d.y, d.x)
                           : quarters == 2 ? -d
                                           : cv::Point2d(d.y, -d.x);
    const cv::Size2d size = quarters % 2 == 0 ? area.size() : cv::Size2d(area.height, area.width);
    return {about.x + at.x - size.width / 2 - rim, about.y + at.y - size.height / 2 - rim, size.width + 2 * rim,
            size.height + 2 * rim};
}

Error no_skin() {
    return {ErrorKind::refused, "too-little-skin", "There is too little bare skin beside the line on the photos.",
            "Nothing was carried over.",
            "Draw the line anew, or mark two or more anchors (moles, scars) on both photos."};
}

Result<Alignment> by_skin(const Side& earlier, const Side& later, const std::vector<cv::Point2d>& line_mm,
                          const AlignOptions& options, const Progress& progress) {
    const LineSide line{line_mm, card::mm_from_px(*earlier.calibration, earlier.hair_side_px)};
    const cv::Rect2d area = bare_box_mm(line) & seen_mm(*earlier.photo, *earlier.calibration);
    if (area.width < 1 || area.height < 1) return no_skin();
    SkinColour colour;
    const Ground before = earlier_skin(*earlier.photo, *earlier.calibration, area, line, colour);
    const double rim =
        options.search_mm + 0.5 * std::hypot(area.width, area.height) * std::sin(options.search_deg * CV_PI / 180);
    const cv::Rect2d seen = seen_mm(*later.photo, *later.calibration);
    const cv::Point2d about = card_middle(*later.calibration);
    cv::Point2d middle;
    for (const cv::Point2d& p : line_mm) middle += p * (1.0 / static_cast<double>(line_mm.size()));
    // As before; then upside down, then across.
    Error last = no_skin();
    for (const int quarters : {0, 2, 1, 3}) {
        const cv::Rect2d wide = turned(area, about, quarters, rim) & seen;
        if (wide.width < 1 || wide.height < 1) continue;
        const double base = quarters * CV_PI / 2, c = std::cos(base), s = std::sin(base);
        const cv::Point2d d = middle - about;
        const Ground after = later_skin(*later.photo, *later.calibration, wide, colour);
        RegisterOptions how{options.search_mm, options.search_deg, base, {}};
        how.base_shift_mm = {c * d.x - s * d.y - d.x, s * d.x + c * d.y - d.y};
        const auto found = register_skin(before, after, line_mm, how, progress);
        if (found) return finished(found->fit, line_mm, "skin", found->skin_share, options);
        if (found.error().kind == ErrorKind::cancelled) return found.error();
        if (quarters == 0) last = found.error();
    }
    return last;
}

}  // namespace

Result<Alignment> align(const Side& earlier, const Side& later, const AlignOptions& options, const Progress& progress) {
    for (const Side* side : {&earlier, &later})
        if (!side->photo || !side->calibration || !side->calibration->card_found || side->photo->pixels.empty())
            return Error{ErrorKind::refused, "no-card", "Both photos have to show the gauge card.",
                         "Nothing was carried over.", "Draw the line on this photo by hand."};
    const auto line_mm = in_mm(earlier.edge_line_px, *earlier.calibration);
    if (earlier.anchors_px.size() >= 2 && earlier.anchors_px.size() == later.anchors_px.size())
        return by_anchors(earlier, later, line_mm, options);
    if (line_mm.size() < 2)
        return Error{ErrorKind::invalid, "no-line", "The earlier photo has neither an edge line nor two anchors.", "",
                     "Draw the edge line on it first."};
    try {
        return by_skin(earlier, later, line_mm, options, progress);
    } catch (const cv::Exception&) {
        return no_skin();  // a degenerate picture or line (a few pixels): nothing to compare
    }
}

std::vector<cv::Point2d> carry(const Alignment& alignment, const card::Calibration& earlier,
                               const card::Calibration& later, const std::vector<cv::Point2d>& points_px) {
    std::vector<cv::Point2d> out;
    for (const cv::Point2d& p : points_px)
        out.push_back(card::px_from_mm(later, alignment.later_mm_from_earlier_mm(card::mm_from_px(earlier, p))));
    return out;
}

}  // namespace kempt::align
