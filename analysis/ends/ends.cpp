#include "ends/ends.h"

#include <algorithm>
#include <cmath>
#include <string>

#include <opencv2/imgproc.hpp>

#include "card/plane.h"
#include "core/rank.h"
#include "ends/blue.h"
#include "ends/cover.h"
#include "ends/grid.h"
#include "ends/interval.h"
#include "ends/look.h"
#include "ends/paper.h"
#include "ends/shape.h"

namespace kempt::ends {

namespace {

// Below this the hair's fullest places and the paper differ too little to part them, in light and colour together.
constexpr double least_contrast = 0.35;
constexpr double least_hair_mm2 = 50;  // less than this is no lock
constexpr double entering_mm = 3, least_entering = 0.3;
constexpr double beyond_mm = 3, most_beyond = 0.15;
constexpr double most_left_out = 0.2;  // of the hem's columns
constexpr double least_deep = 0.9, least_rim = 0.7;
// Paper in the deepest shadow that is taken (darkest_share of paper.cpp) is still a quarter of the photo's whites.
constexpr double least_white = 0.25;
// Blue of the sheet less its red, relative to white paper: prints that were rendered have 0.28 and more.
constexpr double least_blue = 0.15;
// How light hair stands for on the blue sheet where intervals are concerned (interval.h), whatever its own lightness.
constexpr double blue_doubt = 0.2;
// On the blue sheet places half as full as the fullest are told a little too bare (their cover by 1 to 2 points, that
// of the fullest as much too full), which drew the hem of ends that fade out slowly up by half a millimetre. Calibrated
// on 87 rendered photos of grey and salt-and-pepper hair (seeds 340500-340659).
constexpr double half_on_blue = 0.46;
constexpr double spread95 = 1.96;

const char* const names[] = {"hem_unevenness", "see_through", "flyaway"};

EndsReadings refused(EndsReadings out, const char* code, const std::string& text) {
    for (const char* name : names) out.refused.push_back({name, code, text});
    return out;
}

Error cancelled() {
    return {ErrorKind::cancelled, "cancelled", "Measuring was stopped.", "The photo and the marks are kept.", ""};
}

// Light of the photo's whites: 95 % of it is darker.
double whites(const Photo& photo, const card::Calibration& calibration) {
    cv::Mat few, grey;
    cv::resize(photo.pixels, few, {160, 120}, 0, 0, cv::INTER_NEAREST);
    cv::transform(card::LightMap(photo, calibration).linear(few), grey, cv::Matx13f(1 / 3.f, 1 / 3.f, 1 / 3.f));
    std::vector<float> values(grey.begin<float>(), grey.end<float>());
    return at_rank(values, 0.95);
}

void draw(const Frame& frame, const HemShape& shape, const cv::Mat& cover, EndsReadings& out) {
    const auto px = [&](double u, double v) { return card::apply(frame.px_from_uv, {u, v}); };
    for (size_t i = 0; i < shape.u.size(); ++i) out.hem_px.push_back(px(shape.u[i], shape.hem[i]));
    const double left = shape.left.at(0), right = shape.right.at(0);
    for (double u = left; u <= right; u += 1) out.smooth_hem_px.push_back(px(u, shape.smooth.at(u)));
    for (double d = inside_mm; d > 0; d -= 1) {
        const double u = shape.left.at(d), v = shape.smooth.at(u) - d;
        if (v >= 0) out.silhouette_px.push_back(px(u, v));
    }
    out.silhouette_px.insert(out.silhouette_px.end(), out.smooth_hem_px.begin(), out.smooth_hem_px.end());
    for (double d = 1; d <= inside_mm; d += 1) {
        const double u = shape.right.at(d), v = shape.smooth.at(u) - d;
        if (v >= 0) out.silhouette_px.push_back(px(u, v));
    }
    cover.convertTo(out.cover, CV_8UC1, 255);
    out.px_from_cover = frame.px_from_uv * cv::Matx33d(cell_mm, 0, cell_mm / 2, 0, cell_mm, cell_mm / 2, 0, 0, 1);
}

void give(const CoverSums& cover, const HemShape& shape, const EndsOptions& options, const Trust& trust,
          EndsReadings& out) {
    const auto add = [&](const char* name, double value, const char* unit, double down_sd, double up_sd, double most) {
        out.readings.push_back(
            {name, value, unit, std::max(0.0, value - spread95 * down_sd), std::min(most, value + spread95 * up_sd)});
    };
    // A level that is taken too low or too high for half moves the hem where it fades out slowly.
    const double uneven = unevenness(shape), at_low = unevenness_at(cover, shape, options, 0.8 * shape.half),
                 at_high = unevenness_at(cover, shape, options, 1.2 * shape.half);
    const double down = uneven - std::min(at_low, at_high), up = std::max(at_low, at_high) - uneven;
    add("hem_unevenness", uneven, "mm", unevenness_sd(uneven, std::max(0.0, down), trust),
        unevenness_sd(uneven, std::max(0.0, up), trust), 1e9);
    const double bare = bare_share(cover, shape, options.last_mm);
    const double bare_sd = 100 * cover_sd(1 - bare, trust);
    add("see_through", 100 * bare, "%", bare_sd, bare_sd, 100);
    const Flyaway fly = flyaway(cover, shape);
    if (fly.seen < least_rim)
        out.refused.push_back({"flyaway", "rim-outside",
                               "Less than 20 mm of paper around the hair lies in the region, so hairs that stand off "
                               "would be missed."});
    else if (const double hair = fly.inside + fly.outside; hair > 0) {
        const double share = fly.outside / hair, sd = 100 * flyaway_sd(share, fly.rim_mm2 / hair, trust);
        add("flyaway", 100 * share, "%", sd, sd, 100);
    }
}

struct Seen {
    cv::Mat cover, valid;  // a value a cell
    double hair_light = 0, hair_colour = 0;
    double half = 0.5;         // of find_shape()
    std::string refused, why;  // code and sentence; empty: nothing speaks against it
};

Seen refuse(const char* code, const char* why) {
    Seen out;
    out.refused = code, out.why = why;
    return out;
}

const char* const no_hair = "No hair was seen in the region.";

Seen seen_on_white(const Photo& photo, const card::Calibration& calibration, const Grid& grid,
                   const Circumstances& at) {
    const auto paper = paper_light(grid);
    if (!paper || paper->rim < least_white * whites(photo, calibration))
        return refuse("no-paper",
                      "No bare paper was seen around the ends: the region must reach the sheet's white beyond them.");
    const Looks looks = looks_of(grid, *paper);
    const HairLook hair = hair_look(looks);
    const double valid = std::max(1, cv::countNonZero(looks.valid));
    const char* const like_paper =
        "The hair is about as light as the sheet in this photo, so the two cannot be told "
        "apart: lay it on the blue gauge sheet.";
    if (hair.cells * cell_mm * cell_mm < least_hair_mm2) {
        // Neither bare nor dark: something lies there that looks like the paper.
        const bool something = paper->bare_share < 0.75 && hair.cells / valid < 0.02;
        return something ? refuse("hair-like-paper", like_paper) : refuse("no-hair", no_hair);
    }
    if (std::hypot(1 - hair.even, hair.chroma) < least_contrast) return refuse("hair-like-paper", like_paper);
    return {cover_of(looks, hair, at), looks.valid, hair.even, hair.chroma, 0.5, "", ""};
}

Seen seen_on_blue(const Photo& photo, const card::Calibration& calibration, const Grid& grid, const Circumstances& at) {
    const auto paper = paper_light(grid, card::Ground::blue);
    const BlueLooks looks = paper ? blue_looks(grid, *paper, white_light(photo, calibration)) : BlueLooks{};
    if (!paper || looks.bare[2] - looks.bare[0] < least_blue)
        return refuse("no-paper",
                      "No bare sheet was seen around the ends: the region must reach the sheet's blue beyond them.");
    const BlueHair hair = blue_hair(looks);
    if (hair.cells * cell_mm * cell_mm < least_hair_mm2) return refuse("no-hair", no_hair);
    if (hair.lack < least_contrast)
        return refuse(
            "hair-like-paper",
            "The hair is about as blue as the sheet in this photo, so the two cannot be told apart: lay it on "
            "the white gauge sheet.");
    return {blue_cover_of(looks, hair, at), looks.valid, blue_doubt, 0, half_on_blue, "", ""};
}

EndsReadings measure(const Photo& photo, const card::Calibration& calibration,
                     const std::vector<cv::Point2d>& region_px, const Frame& frame, const EndsOptions& options,
                     const Progress& progress, bool& stopped) {
    EndsReadings out;
    const Grid grid = cut_grid(photo, calibration, region_px, frame);
    if ((stopped = tell(progress, 0.4, "looking at the paper") == Go::stop)) return out;
    const card::Ground ground = calibration.sheet ? calibration.sheet->ground : ground_of_rim(grid);
    const bool light_known = calibration.light && calibration.light->curve_fitted;
    const Circumstances circumstances{light_known, frame.px_per_mm};
    const Seen seen = ground == card::Ground::blue ? seen_on_blue(photo, calibration, grid, circumstances)
                                                   : seen_on_white(photo, calibration, grid, circumstances);
    if ((stopped = tell(progress, 0.6, "telling hair from paper") == Go::stop)) return out;
    if (!seen.refused.empty()) return refused(out, seen.refused.c_str(), seen.why);
    const cv::Mat& cover = seen.cover;
    const CoverSums sums(cover, seen.valid, cell_mm);
    const HemShape shape = find_shape(sums, options, seen.half);
    if ((stopped = tell(progress, 0.9, "following the hem") == Go::stop)) return out;
    if (shape.full_cover < least_entering ||
        sums.over(shape.left.u, 0, shape.right.u, entering_mm).mean() < least_entering)
        return refused(out, "no-hair-entering",
                       "No hair comes in through the region's first side: that side must lie across the hair.");
    if (shape.u.empty() || shape.right.u - shape.left.u < options.least_width_mm)
        return refused(out, "too-narrow",
                       "The hair is narrower than " + std::to_string(cvRound(options.least_width_mm)) +
                           " mm at its ends: too little to tell an even hem from an uneven one.");
    CoverSums::Sum last;
    double latest = 0;
    for (const double u : shape.u) {
        latest = std::max(latest, shape.smooth.at(u));
        const auto sum = sums.over(u - 0.25, sums.length_mm() - beyond_mm, u + 0.25, sums.length_mm());
        last.cover += sum.cover, last.seen += sum.seen;
    }
    if (last.mean() > most_beyond || latest > sums.length_mm() - beyond_mm)
        return refused(out, "ends-outside",
                       "The hair runs out of the region: it must reach bare paper beyond the ends.");
    if (shape.deep_enough < least_deep)
        return refused(out, "region-too-short",
                       "The region holds less than " + std::to_string(cvRound(options.last_mm + 10)) +
                           " mm of the hair above its ends, so there is nothing full to compare them with.");
    draw(frame, shape, cover, out);
    if (shape.left_out > most_left_out)
        return refused(out, "ends-in-locks",
                       "The ends lie in separate locks with wide gaps between them: comb them together or lay fewer.");
    const Trust trust{seen.hair_light, seen.hair_colour, light_known,
                      calibration.px_per_mm > 0 ? calibration.px_per_mm_sd / calibration.px_per_mm : 0};
    give(sums, shape, options, trust, out);
    return out;
}

}  // namespace

Result<EndsReadings> measure_ends(const Photo& photo, const card::Calibration& calibration,
                                  const std::vector<cv::Point2d>& region_px, const EndsOptions& options,
                                  const Progress& progress) try {
    if (!calibration.card_found && !calibration.sheet_found)
        return Error{ErrorKind::refused, "scale-missing",
                     "Neither the gauge sheet nor the gauge card was found, so nothing can be measured in millimetres.",
                     "The photo is kept and can be compared by eye.",
                     "Lay the ends on the sheet with all its corners in view, or with the card beside them."};
    if (tell(progress, 0, "cutting out the ends") == Go::stop) return cancelled();
    const auto frame = frame_of(photo, calibration, region_px);
    if (!frame) return frame.error();
    if (frame->px_per_mm < options.least_px_per_mm)
        return refused({}, "too-coarse",
                       "The photo has fewer than " + std::to_string(cvRound(options.least_px_per_mm)) +
                           " pixels per mm at the ends: come closer.");
    if (frame->width_mm < options.least_width_mm)
        return refused({}, "too-narrow",
                       "The region is narrower than " + std::to_string(cvRound(options.least_width_mm)) +
                           " mm: too little to tell an even hem from an uneven one.");
    bool stopped = false;
    EndsReadings out = measure(photo, calibration, region_px, *frame, options, progress, stopped);
    if (stopped) return cancelled();
    (void)tell(progress, 1, "done");
    return out;
} catch (const cv::Exception& error) {
    return Error{
        ErrorKind::damaged, "analysis-failed", "The photo could not be measured (" + std::string(error.err) + ").",
        "The photo and the marks are kept.", "Try another shot; if it happens again, report it with the photo."};
} catch (const std::exception& error) {
    return Error{
        ErrorKind::damaged, "analysis-failed", "The photo could not be measured (" + std::string(error.what()) + ").",
        "The photo and the marks are kept.", "Try another shot; if it happens again, report it with the photo."};
}

}  // namespace kempt::ends
