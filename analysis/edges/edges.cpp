#include "edges/edges.h"

#include <algorithm>
#include <cmath>

#include "edges/band.h"
#include "edges/band_maps.h"
#include "edges/interval.h"
#include "edges/profiles.h"
#include "edges/stereology.h"

namespace kempt::edges {

namespace {

// Below this CIEDE2000 between hair and scalp a person has trouble too, and rendered truth shows errors beyond 3 points
// (calibrated, docs/accuracy.md).
constexpr double least_contrast = 5.0;
// Fill depth needs something to fill towards: mean cover of the 15-20 mm zone.
constexpr double least_full_cover = 0.05;
// Share of the band that may be hidden by the card or lie outside the photo.
constexpr double least_valid = 0.8;

void draw_overlay(const Photo& photo, const card::Calibration& calibration, const EdgeLine& line, const BandMaps& maps,
                  double depth_mm, EdgeReadings& out) {
    out.overlay_px = cv::Mat(photo.pixels.size(), CV_8UC1, cv::Scalar(0));
    cv::Mat level;
    maps.cover.convertTo(level, CV_8U, 255);
    // Forward: every cell of the band paints its footprint in the photo.
    const double px = line.px_per_mm * maps.cell_mm, half = std::max(0.5, px / 2);
    const int r0 = maps.row_of(0), r1 = maps.row_of(depth_mm);
    for (int j = r0; j < r1; ++j)
        for (int i = 0; i < level.cols; ++i) {
            if (!maps.valid.at<uchar>(j, i)) continue;
            const cv::Point2d p =
                px_of(calibration, line, (2 * i + 1) * line.step_mm, maps.from_mm + (j + 0.5) * maps.cell_mm);
            const cv::Rect spot = cv::Rect(cv::Point(static_cast<int>(std::floor(p.x - half + 0.5)),
                                                     static_cast<int>(std::floor(p.y - half + 0.5))),
                                           cv::Point(static_cast<int>(std::floor(p.x + half + 0.5)) + 1,
                                                     static_cast<int>(std::floor(p.y + half + 0.5)) + 1)) &
                                  cv::Rect({}, photo.pixels.size());
            if (!spot.empty()) out.overlay_px(spot).setTo(std::max<uchar>(1, level.at<uchar>(j, i)));
        }
}

}  // namespace

Result<EdgeReadings> measure_edges(const Photo& photo, const card::Calibration& calibration, const EdgeMarks& marks,
                                   const EdgeOptions& options, bool with_overlay, const Progress& progress) try {
    if (!calibration.card_found && !calibration.sheet_found && !calibration.two_points)
        return Error{ErrorKind::refused, "scale-missing",
                     "Without the gauge card or two scale points nothing can be measured in millimetres.",
                     "The photo is kept and can be compared by eye.",
                     "Lay the card beside the hair, or mark two points a known distance apart."};
    auto straight = straighten(photo, calibration, marks.edge_line_px, marks.hair_side_px);
    if (!straight) return straight.error();
    const EdgeLine& line = *straight;
    auto looked = look_at_band(photo, calibration, line, marks, options.depth_mm, progress);
    if (!looked) return looked.error();
    const BandMaps& maps = *looked;

    EdgeReadings out;
    out.line_length_mm = line.length_mm;
    out.contrast = maps.contrast;
    auto refuse = [&](const char* name, const char* code, const char* text) {
        out.refused.push_back({name, code, text});
    };
    const double last_mm = 2 * line.step_mm * maps.cover.cols;
    for (double s = 0; s <= last_mm; s += 1) out.band_outline_px.push_back(px_of(calibration, line, s, 0));
    for (double s = last_mm; s >= 0; s -= 1)
        out.band_outline_px.push_back(px_of(calibration, line, s, options.depth_mm));
    if (with_overlay) draw_overlay(photo, calibration, line, maps, options.depth_mm, out);

    const double seen = valid_share(maps, 0, options.coverage_depth_mm),
                 seen_deep = valid_share(maps, options.full_zone_from_mm, options.full_zone_to_mm);
    const bool alike = maps.hair_share > 1e-3 && maps.contrast < least_contrast;
    if (seen < least_valid || alike) {
        for (const char* name : {"edge_coverage", "edge_strands", "fill_depth", "bare_length", "length_density"})
            alike ? refuse(name, "hair-like-scalp",
                           "Hair and scalp have nearly the same colour in this photo, so they cannot be told apart.")
                  : refuse(name, "band-hidden",
                           "More than a fifth of the band lies outside the photo or under the card.");
        return out;
    }

    out.coverage_by_depth = cover_by_depth(maps, options.depth_mm, 0.25);
    out.coverage_along = cover_along(maps, options.coverage_depth_mm, 0.5);
    const double cover = mean_of(maps.cover, maps, 0, options.coverage_depth_mm),
                 coverage = std::clamp(cover, 0.0, 1.0);
    Circumstances at;
    at.coverage = coverage;
    at.contrast = maps.contrast;
    at.px_per_mm = line.px_per_mm;
    at.scale_sd_share = calibration.px_per_mm > 0 ? calibration.px_per_mm_sd / calibration.px_per_mm : 0;
    at.light_known = calibration.light && calibration.light->curve_fitted;
    auto give = [&](const char* name, double value, const char* unit, double low, double high) {
        out.readings.push_back({name, value, unit, low, high});
    };
    // Every length moves with the scale.
    auto with_scale = [&](double half, double value) { return std::hypot(half, 1.96 * at.scale_sd_share * value); };

    const double cover_half = 1.96 * coverage_sd(coverage, at);
    give("edge_coverage", 100 * coverage, "%", 100 * std::max(0.0, coverage - cover_half),
         100 * std::min(1.0, coverage + cover_half));

    const double line_cover = mean_of(maps.cover, maps, options.strand_depth_mm - 0.5, options.strand_depth_mm + 0.5);
    const double strands = std::max(
        0.0, 10 * mean_of(maps.cross_edge, maps, options.strand_depth_mm - 0.5, options.strand_depth_mm + 0.5));
    const double density = std::max(0.0, length_per_area_of(maps, options.coverage_depth_mm));
    for (const char* name : {"edge_strands", "length_density"}) {
        if (line.px_per_mm < options.count_min_px_per_mm * 0.99)
            refuse(name, "too-coarse", "Single strands need a closer photo: 20 pixels per mm or more.");
        else if (line_cover > options.count_max_cover)
            refuse(name, "closed-mat",
                   "The strands lie in a closed mat here (over 40 % covered), so single ones cannot be counted.");
        else {
            const bool edge = name[0] == 'e';
            const double value = edge ? strands : density,
                         half = with_scale(1.96 * (edge ? strands_sd(strands, at) : density_sd(density, at)), value);
            give(name, value, edge ? "1/cm" : "mm/mm2", std::max(0.0, value - half), value + half);
        }
    }

    const double full = mean_of(maps.cover, maps, options.full_zone_from_mm, options.full_zone_to_mm);
    if (seen_deep < least_valid)
        refuse("fill_depth", "band-hidden",
               "The 15-20 mm zone that fill depth is measured against lies outside the photo.");
    else if (full < least_full_cover)
        refuse("fill_depth", "nothing-to-fill-to",
               "There is hardly any hair 15-20 mm in, so there is no full depth to measure against.");
    else if (const auto depth = fill_depth(out.coverage_by_depth, 0.25, full / 2)) {
        // An error of cover moves the depth by the profile's slope: the depths at which a little less or more is
        // reached.
        const double sway = depth_sway * coverage_sd(full / 2, at);
        const auto sooner = fill_depth(out.coverage_by_depth, 0.25, std::max(0.0, full / 2 - sway)),
                   later = fill_depth(out.coverage_by_depth, 0.25, full / 2 + sway);
        const double half = with_scale(depth_half_mm, *depth);
        give("fill_depth", *depth, "mm", std::max(0.0, sooner.value_or(0) - half),
             std::min(options.depth_mm, later.value_or(options.depth_mm) + half));
    } else
        refuse("fill_depth", "never-half", "Coverage never reaches half of the 15-20 mm zone.");

    // Likewise a column near the limit may fall on either side of it. Columns that cannot be seen may be bare. The
    // drawn ends of the line are themselves uncertain, so a wholly bare line may be a little longer than it was drawn.
    const double sway = bare_sway * coverage_sd(options.bare_share, at);
    const BareLength bare = bare_length(maps, options, options.bare_share),
                     least = bare_length(maps, options, std::max(0.0, options.bare_share - sway)),
                     most = bare_length(maps, options, options.bare_share + sway);
    const double half = with_scale(bare_half_mm, bare.mm);
    give("bare_length", std::min(line.length_mm, bare.mm), "mm", std::max(0.0, least.mm - half),
         std::min(line.length_mm, most.mm + most.unseen_mm) + half);
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

}  // namespace kempt::edges
