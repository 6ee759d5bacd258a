#include "tone/lane_reading.h"

#include <algorithm>
#include <cmath>

#include "tone/placing.h"

namespace kempt::tone {
namespace {

// Of all rows: so many may be lost before the whole strand is.
constexpr double most_lost = 0.15;
// Without a fitted tone curve the colours are only balanced: errors about double (real chart photo, tests/app/work).
constexpr double rough_light_doubt = 2;

// What differs from the narrow lane by two and a half times what chance lets it differ by (SD) is other hair, or none;
// of four degrees of freedom, as the SD itself is told by five strips, chance exceeds that in one of 15 at each rim
// (Student 1908). So is what differs by 12 in Lab, however little the strips agree: some two levels of the table.
constexpr double most_off = 2.5, most_off_lab = 12;

// Narrow lanes beside each other differ by placing_sd; a strip of the wide lane and the narrow one by more, as their
// widths have it.
bool same_hair(const LaneReading& wide, const LaneReading& own, double zone_share) {
    const auto colours = [&](const LaneReading& of, size_t from, size_t to) {
        return seen_colours(of.seen.rows, of.seen.strips, zone_share, from, to);
    };
    const ZoneColours here = colours(own, 0, StripRow::strips);
    const auto off = [&](size_t rim) { return cv::norm(colours(wide, rim, rim + 1) - here) / std::sqrt(3.0); };
    const double by_width = std::sqrt(1 + own.lane.width_mm * StripRow::strips / wide.lane.width_mm);
    return std::max(off(0), off(StripRow::strips - 1)) <= std::min(most_off * by_width * own.placing_sd, most_off_lab);
}

}  // namespace

const Refusal* why_lost(const Lost& lost) {
    static const Refusal under_card{"", "lane-over-card", "The strand runs over the gauge card."},
        outside{"", "lane-outside", "Part of the strand lies outside the photo."},
        burnt{"", "burnt-out", "The strand is burnt out to white in places, so its colour is lost."},
        black{"", "too-dark", "The strand is so dark in this photo that its colour cannot be told."};
    const double limit = most_lost * lost.all;
    if (lost.under_card > limit) return &under_card;
    if (lost.outside > limit) return &outside;
    if (lost.burnt > limit) return &burnt;
    if (lost.black > limit) return &black;
    return nullptr;
}

Result<LaneReading> read_lane(const Photo& photo, const card::Calibration& calibration,
                              const std::vector<cv::Point2d>& line_px, double lane_mm, const ToneOptions& options,
                              const Progress& progress) {
    auto straight = straighten_lane(photo, calibration, line_px, lane_mm, options.least_length_mm);
    if (!straight) return straight.error();
    LaneReading out;
    out.lane = std::move(*straight);
    out.seen = rows_of(out.lane, options.step_mm);
    if (why_lost(out.seen.lost)) return out;
    const Rows& rows = out.seen.rows;
    StrandModel model(rows);
    out.fit = fit_strand(model, options.least_step, progress);
    if (out.fit.parameters.empty()) return out;
    const Body body(model, out.fit.parameters);
    for (size_t i = 0; i < rows.at_mm.size(); ++i)
        out.profile.push_back(rows.usable[i] ? body.lab(i, rows.light[i]) : body.expected_lab(i));
    const double doubt = calibration.light && calibration.light->curve_fitted ? 1 : rough_light_doubt;
    out.zones = zones_of(model, out.fit, out.profile, options.zone_share, doubt);
    const auto placing = covariance_of_placing(rows, out.seen.strips, body, options.zone_share);
    out.zones.covariance += placing;
    out.placing_sd = std::sqrt(cv::trace(placing) / 3);
    return out;
}

Result<LaneReading> read_strand(const Photo& photo, const card::Calibration& calibration,
                                const std::vector<cv::Point2d>& line_px, const ToneOptions& options,
                                const Progress& progress) {
    const auto part = [&](double from, double share) -> Progress {
        return [&progress, from, share](double fraction, std::string_view step) {
            return tell(progress, from + share * fraction, step);
        };
    };
    auto own = read_lane(photo, calibration, line_px, options.lane_mm, options, part(0, 0.9));
    if (!own || own->placing_sd <= options.mixed_sd) return own;
    auto wide = read_lane(photo, calibration, line_px, options.mixed_lane_mm, options, part(0.9, 0.1));
    // A highlight may hide a zone of the wide lane that the narrow one tells. Told all the same, from the narrow lane,
    // such zones made mixed hair err more and showed more lines that are not there (docs/methods-lengths.md).
    const bool read = wide && !why_lost(wide->seen.lost) && !wide->fit.parameters.empty();
    return read && same_hair(*wide, *own, options.zone_share) ? std::move(wide) : std::move(own);
}

}  // namespace kempt::tone
