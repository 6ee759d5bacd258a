#include "tone/tone.h"

#include <algorithm>
#include <cmath>

#include "tone/lane_reading.h"

namespace kempt::tone {
namespace {

// Of a line, beyond what the fit says: how a strand's own course and locks shift it, and what the drift beside it does
// to its step; so that the intervals hold the truth in about 95 % (calibrated, seeds 1000 and up).
constexpr double place_sd_mm = 0.35, step_sd = 0.3, step_sd_share = 0.06, z95 = 1.96;
// A step that may be below one just noticeable difference is no line.
constexpr double least_certain_step = 1.0;

Error analysis_failed(const std::string& what) {
    return {ErrorKind::damaged, "analysis-failed", "The photo could not be measured (" + what + ").",
            "The photo and the marks are kept.", "Try another shot; if it happens again, report it with the photo."};
}

// Lane, path and lines for the overlay.
void draw(const card::Calibration& calibration, const Lane& lane, const Rows& rows, ToneReadings& out) {
    for (const double at : rows.at_mm) out.path_px.push_back(lane.px(calibration, at, 0));
    const double half = lane.width_mm / 2, step = std::max(1.0, lane.length_mm / 100);
    for (double s = 0; s < lane.length_mm; s += step) out.lane_px.push_back(lane.px(calibration, s, -half));
    out.lane_px.push_back(lane.px(calibration, lane.length_mm, -half));
    for (double s = lane.length_mm; s > 0; s -= step) out.lane_px.push_back(lane.px(calibration, s, half));
    out.lane_px.push_back(lane.px(calibration, 0, half));
}

colour::Lab as_lab(const cv::Vec3d& v) {
    return {v[0], v[1], v[2]};
}

std::vector<Demarcation> demarcations(const StrandFit& fit, const Lane& lane, const card::Calibration& calibration) {
    std::vector<Demarcation> lines;
    const double scale_sd = calibration.px_per_mm > 0 ? calibration.px_per_mm_sd / calibration.px_per_mm : 0;
    for (const FittedLine& line : fit.lines) {
        const double half = z95 * std::hypot(line.at_sd, place_sd_mm, scale_sd * line.at_mm),
                     step_half = z95 * std::hypot(line.step_sd, step_sd + step_sd_share * line.step);
        if (line.step - step_half < least_certain_step) continue;
        lines.push_back({line.step, line.step - step_half, line.step + step_half, line.at_mm,
                         std::max(0.0, line.at_mm - half), line.at_mm + half, line.width_mm,
                         lane.px(calibration, line.at_mm, 0)});
    }
    return lines;
}

void refuse_all(ToneReadings& out, const char* code, const char* text) {
    for (const char* name : {"tone_spread", "tone_level"}) out.refused.push_back({name, code, text});
}

}  // namespace

Result<ToneReadings> measure_tone(const Photo& photo, const card::Calibration& calibration,
                                  const std::vector<cv::Point2d>& strand_line_px, const ToneOptions& options,
                                  const Progress& progress) try {
    if (!calibration.card_found && !calibration.sheet_found && !calibration.two_points)
        return Error{ErrorKind::refused, "scale-missing",
                     "Without the gauge card nothing can be measured along the strand.",
                     "The photo is kept and can be compared by eye.", "Lay the card beside the hair."};
    if (!calibration.light)
        return Error{ErrorKind::refused, "light-missing",
                     "Without the gauge card's grey patches the colour of the light is not known.",
                     "The photo is kept and can be compared by eye.",
                     "Lay the card beside the hair, in the same light."};
    if (!(options.lane_mm > 0) || !(options.mixed_lane_mm >= options.lane_mm) || !(options.step_mm > 0) ||
        !(options.zone_share > 0 && options.zone_share <= 1.0 / 3))
        return Error{ErrorKind::invalid, "options-invalid", "The settings for tone make no sense.", "",
                     "Use a lane and a step above 0 mm and zones of at most a third of the strand."};
    bool stopped = false;
    const Progress ask = [&](double fraction, std::string_view step) {
        const Go answer = tell(progress, fraction, step);
        stopped = stopped || answer == Go::stop;
        return answer;
    };
    const auto strand = read_strand(photo, calibration, strand_line_px, options, ask);
    if (stopped) return Error{ErrorKind::cancelled, "cancelled", "Stopped.", "The photo and the marks are kept.", ""};
    if (!strand) return strand.error();
    const Lane& lane = strand->lane;
    const Zones& zones = strand->zones;

    ToneReadings out;
    out.step_mm = options.step_mm;
    out.length_mm = lane.length_mm;
    out.lane_mm = lane.width_mm;
    out.mixed = lane.width_mm > options.lane_mm;
    draw(calibration, lane, strand->seen.rows, out);
    if (const Refusal* lost = why_lost(strand->seen.lost)) {
        refuse_all(out, lost->code.c_str(), lost->text.c_str());
        return out;
    }
    if (strand->fit.parameters.empty()) {
        refuse_all(out, "too-little-seen", "Too little of the strand can be seen to tell its colours.");
        return out;
    }
    for (const cv::Vec3d& lab : strand->profile) out.profile.push_back(as_lab(lab));
    std::optional<colour::Lab>* const places[3] = {&out.root, &out.mid, &out.end};
    for (size_t z = 0; z < 3; ++z)
        if (zones.told[z]) *places[z] = as_lab(zones.lab[z]);
    constexpr const char* hidden = "highlight-hides-colour";
    constexpr const char* hidden_text =
        "A highlight hides the colour of the hair; use softer light, or turn the head a little.";
    if (const auto spread = spread_of(zones))
        out.readings.push_back(*spread);
    else
        out.refused.push_back({"tone_spread", hidden, hidden_text});
    if (zones.told[1])
        out.readings.push_back(level_of(zones));
    else
        out.refused.push_back({"tone_level", hidden, hidden_text});

    out.lines = demarcations(strand->fit, lane, calibration);
    (void)tell(progress, 1, "done");
    return out;
} catch (const cv::Exception& error) {
    return analysis_failed(error.err);
} catch (const std::exception& error) {
    return analysis_failed(error.what());
}

}  // namespace kempt::tone
