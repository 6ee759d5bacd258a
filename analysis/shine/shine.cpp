#include "shine/shine.h"

#include <algorithm>
#include <cmath>

#include "shine/fibres.h"
#include "shine/interval.h"
#include "shine/profile.h"
#include "shine/profile_luster.h"
#include "shine/region_light.h"
#include "shine/split.h"

namespace kempt::shine {

namespace {

// Narrower than this the mean over fibres is a handful of them.
constexpr double least_width_mm = 6;
// A highlight below this share of the hair's own light is no more than the head's rounding makes by itself (its light
// falls off by 3-13 % over a region); nor is one that is not beyond its own doubt.
constexpr double least_rise = 0.04;
constexpr double least_certainty = 2;  // peak over its standard uncertainty
// Surface light at an end of the region against the crest: above, a foot of the highlight lies outside.
constexpr double most_foot = 0.35;
// A width less certain than this (standard uncertainty over width) says nothing.
constexpr double most_width_doubt = 0.12;
constexpr double rad = 3.14159265358979 / 180;

Error stopped() {
    return {ErrorKind::cancelled, "cancelled", "Measuring the shine was stopped.", "Nothing was changed.", ""};
}

double side(cv::Point2d a, cv::Point2d b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

// The region in the frame of its fibres: the frame turns until they run along it.
RegionLight along_fibres(const RegionCutter& cutter, FibreCourse& course) {
    const auto& c = cutter.corners_mm();
    const cv::Point2d one = c[2] + c[3] - c[0] - c[1], two = c[1] + c[2] - c[3] - c[0];
    RegionLight region = cutter.cut(std::hypot(one.x, one.y) >= std::hypot(two.x, two.y) ? one : two);
    course = fibre_course(region);
    for (int round = 0; round < 3 && std::abs(course.angle_deg) > 0.5; ++round) {
        const double a = course.angle_deg * rad;
        region = cutter.cut(region.frame.along * std::cos(a) + region.frame.across * std::sin(a));
        course = fibre_course(region);
    }
    return region;
}

// Readings that follow from the split: contrast, width, luster of the curve that the highlight draws over the straight
// line between the body's light at the region's ends.
CurveLuster figures_of(const Split& split) {
    std::vector<double> curve = split.surface;
    const double first = split.body.front(), rise = split.body.back() - split.body.front();
    for (size_t i = 0; i < curve.size(); ++i)
        curve[i] += first + rise * static_cast<double>(i) / static_cast<double>(curve.size() - 1);
    return luster_of(curve, split.step_mm);
}

struct Overlay {
    const card::Calibration& calibration;
    const RegionLight& region;
    const Profile& profile;

    // Photo pixel of a place along the profile and a column.
    [[nodiscard]] cv::Point2d at(double along_mm, double column) const {
        const double middle = 0.5 * (region.frame.columns - 1), turn = std::tan(profile.turn_deg * rad);
        const double row = profile.first_row + along_mm / region.frame.step_mm - 0.5 + turn * (column - middle);
        return card::px_from_mm(calibration, region.frame.at_mm(row, column));
    }
    [[nodiscard]] std::vector<cv::Point2d> line(double along_mm) const {
        std::vector<cv::Point2d> points;
        for (int k = 0; k <= 8; ++k) points.push_back(at(along_mm, (region.frame.columns - 1) * k / 8.0));
        return points;
    }
};

void draw(ShineReadings& out, const Overlay& overlay, const Split& split, double width_mm) {
    out.crest_px = overlay.line(split.crest_mm);
    const double left = split.crest_mm - width_mm * split.left_mm / (split.left_mm + split.right_mm),
                 right = left + width_mm;
    out.half_zone_px = overlay.line(left);
    const auto back = overlay.line(right);
    out.half_zone_px.insert(out.half_zone_px.end(), back.rbegin(), back.rend());
}

}  // namespace

Result<ShineReadings> measure_shine(const Photo& photo, const card::Calibration& calibration,
                                    const std::vector<cv::Point2d>& region_px, const ShineOptions& options,
                                    const Progress& progress) try {
    if (!calibration.card_found && !calibration.sheet_found && !calibration.two_points)
        return Error{ErrorKind::refused, "scale-missing",
                     "Without the gauge card or two scale points nothing can be measured in millimetres.",
                     "The photo is kept and can be compared by eye.", "Lay the card beside the hair."};
    if (!calibration.light)
        return Error{ErrorKind::refused, "light-missing",
                     "Shine is a matter of light, and without the card's grey patches the light is not known.",
                     "The photo is kept and can be compared by eye.",
                     "Lay the card beside the hair, in the same light."};
    if (const Status sound = check_region(photo, region_px); !sound) return sound.error();
    if (tell(progress, 0, "laying the hair flat") == Go::stop) return stopped();

    ShineReadings out;
    out.outline_px = region_px;
    const auto refuse_all = [&](const std::vector<std::string>& names, const char* code, const char* text) {
        for (const auto& name : names) out.refused.push_back({name, code, text});
    };
    const std::vector<std::string> all{"shine_contrast", "shine_width", "luster", "alignment"},
        light{"shine_contrast", "shine_width", "luster"};

    const RegionCutter cutter(photo, calibration, region_px, options.grid_px_per_mm);
    const auto& c = cutter.corners_mm();
    const double by = 0.5 * (side(c[0], c[1]) + side(c[2], c[3])), down = 0.5 * (side(c[1], c[2]) + side(c[3], c[0]));
    if (std::max(by, down) < options.least_length_mm || std::min(by, down) < least_width_mm ||
        std::max(by, down) > 500) {
        refuse_all(all, "region-too-small",
                   std::max(by, down) > 500 ? "The region is longer than 50 cm, so the scale cannot be right."
                                            : "The region is too small to hold a highlight and its feet.");
        return out;
    }
    FibreCourse course;
    const RegionLight region = along_fibres(cutter, course);
    if (tell(progress, 0.5, "reading the light along the fibres") == Go::stop) return stopped();
    const Profile profile = profile_of(region);
    out.step_mm = profile.step_mm;
    if (static_cast<double>(profile.size()) * profile.step_mm < options.least_length_mm) {
        refuse_all(all, "region-too-small",
                   "The region is too short along the fibres to hold a highlight and its feet.");
        return out;
    }
    const Overlay overlay{calibration, region, profile};
    const double length_mm = static_cast<double>(profile.size()) * profile.step_mm;
    for (const double s : {0.0, length_mm})
        out.fibre_axis_px.push_back(overlay.at(s, 0.5 * (region.frame.columns - 1)));
    const double aligned_half = 1.96 * alignment_sd(course.coherence);
    out.readings.push_back({"alignment", course.coherence, "-", std::max(0.0, course.coherence - aligned_half),
                            std::min(1.0, course.coherence + aligned_half)});
    if (course.coherence < options.least_alignment) {
        refuse_all(light, "fibres-not-aligned",
                   "The hair runs in too many directions here for one highlight across it.");
        return out;
    }
    if (cutter.clipped_share() > options.clipped_share) {
        refuse_all(light, "highlight-clipped",
                   "Part of the region is burnt out to white, so the highlight has no top.");
        return out;
    }
    if (cutter.black_share() > options.black_share) {
        refuse_all(light, "black-level",
                   "Part of the region is as black as the photo can be, so the hair's own light is not known.");
        return out;
    }
    const Split parts = split(profile);
    if (tell(progress, 0.9, "reading the highlight") == Go::stop) return stopped();
    if (!parts.fitted) {
        refuse_all(light, "no-highlight", "No highlight stands out from the hair's own light in this region.");
        return out;
    }
    out.step_mm = parts.step_mm;
    out.total = parts.total;
    out.surface = parts.surface;
    const CurveLuster figures = figures_of(parts);
    // Logs of width and luster, the contrast as it is.
    const auto sd = parts.uncertainty([](const Split& s) {
        const CurveLuster f = figures_of(s);
        return std::vector<double>{f.stamm, std::log(std::max(f.width, 1e-3)), std::log(std::max(f.luster, 1e-6))};
    });
    Circumstances at;
    at.contrast = figures.stamm;
    at.body_light = 0.5 * (parts.body.front() + parts.body.back());
    at.scale_sd_share = calibration.px_per_mm > 0 ? calibration.px_per_mm_sd / calibration.px_per_mm : 0;
    at.curve_fitted = calibration.light->curve_fitted;
    const double contrast_half = 1.96 * contrast_sd(sd[0], at), width_half = 1.96 * width_sd_share(sd[1], at),
                 luster_half = 1.96 * luster_sd_share(sd[2], at);
    const double foot = std::max(parts.surface.front(), parts.surface.back());
    const bool rises = parts.peak > least_rise * at.body_light && parts.peak > least_certainty * parts.peak_sd,
               cut = parts.crest_mm < 0.05 * length_mm || parts.crest_mm > 0.95 * length_mm ||
                     foot > most_foot * parts.peak;
    if (rises && cut) {
        refuse_all(light, "highlight-cut",
                   "The highlight reaches over an end of the region, so it cannot be read whole.");
        return out;
    }
    if (!rises || figures.stamm < contrast_half) {
        refuse_all(light, "no-highlight", "No highlight stands out from the hair's own light in this region.");
        return out;
    }
    out.readings.push_back({"shine_contrast", figures.stamm, "-", std::max(0.0, figures.stamm - contrast_half),
                            std::min(1.0, figures.stamm + contrast_half)});
    if (width_sd_share(sd[1], at) > most_width_doubt) {
        refuse_all({"shine_width", "luster"}, "highlight-faint",
                   "The highlight is too faint for its width to be told.");
    } else {
        out.readings.push_back({"shine_width", figures.width, "mm", figures.width * std::exp(-width_half),
                                figures.width * std::exp(width_half)});
        out.readings.push_back({"luster", figures.luster, "1/mm", figures.luster * std::exp(-luster_half),
                                figures.luster * std::exp(luster_half)});
    }
    LightSignature signature;
    const cv::Point2d slope = cv::Point2d(calibration.light->gradient_direction) * calibration.light->gradient_per_cm;
    signature.gradient_along_per_cm = slope.dot(region.frame.along);
    signature.gradient_across_per_cm = slope.dot(region.frame.across);
    signature.highlight_at = parts.crest_mm / length_mm;
    signature.highlight_turn_deg = profile.turn_deg;
    out.light = signature;
    draw(out, overlay, parts, figures.width);
    (void)tell(progress, 1, "done");
    return out;
} catch (const cv::Exception& e) {
    return Error{ErrorKind::invalid, "shine-failed", std::string("The region could not be read: ") + e.what(), "",
                 "Draw the region again."};
}

}  // namespace kempt::shine
