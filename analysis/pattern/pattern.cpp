#include "pattern/pattern.h"

#include <algorithm>
#include <cmath>

#include "combings/trace.h"
#include "pattern/pieces.h"

namespace kempt::pattern {

namespace {

// A shorter piece shows too little of a pattern.
constexpr double least_strand_mm = 20;

// What one strand's figures are unsure by, as SDs (calibrated on bench_pattern's seeds 100000-100041 and
// 200000-200037).
constexpr double diameter_share = 0.025;      // the tracer's own smoothing and slips, beside the noise of the points
constexpr double diameter_common = 0.012;     // of all strands of a photo: noise bends straight ones
constexpr double unfollowed_common = 0.06;    // times the share of strands that were not followed from end to end
constexpr double piece_share = 0.05;          // of a strand known in pieces only: the rest may bend otherwise
constexpr double piece_ratio_share = 0.03;    // likewise
constexpr double nearly_length_share = 0.01;  // of one with crumbs or a shadow beside it
constexpr double pieces_length_share = 0.05;  // of one in pieces
constexpr double ends_mm = 0.35;              // where both ends of a strand are seen
constexpr double arc_share = 0.004;           // hair that stands off the paper is nearer to the camera
constexpr double ratio_share = 0.004;

struct Known {         // one figure of one strand
    double value, sd;  // sd as a share
};

// Median of the strands that are known. Its interval holds the errors of each, what is common to all, and the median of
// all strands on the sheet wherever the unknown ones lie: each may lie above or below, so it may be up to half of their
// number of places further up or down.
Quantity median_reading(const char* name, const char* unit, std::vector<Known> known, std::size_t unknown,
                        double common) {
    std::sort(known.begin(), known.end(), [](const Known& a, const Known& b) { return a.value < b.value; });
    const auto at = [&](double place) {  // between two strands in proportion
        const double inside = std::clamp(place, 0.0, static_cast<double>(known.size() - 1));
        const auto below = static_cast<std::size_t>(inside);
        const auto above = std::min(below + 1, known.size() - 1);
        const double share = inside - static_cast<double>(below);
        return (1 - share) * known[below].value + share * known[above].value;
    };
    const double n = static_cast<double>(known.size()), middle = (n - 1) / 2, away = static_cast<double>(unknown) / 2;
    double own = 0;
    for (const Known& one : known) own += one.sd * one.sd / n;
    // The SD of a median is sqrt(pi / 2) of a mean's.
    const double half = 1.96 * std::sqrt(CV_PI / 2 * own / n + common * common);
    return {name, at(middle), unit, at(middle - away) * std::exp(-half), at(middle + away) * std::exp(half)};
}

combings::Strand shown(const combings::TracedStrand& line, const Shape& shape, bool doubtful, double scale_sd) {
    combings::Strand strand;
    for (std::size_t i = 0; i < line.path_px.size(); i += 2) strand.path_px.push_back(line.path_px[i]);
    const double sd = std::sqrt(std::pow(arc_share, 2) + std::pow(ends_mm / shape.arc_mm, 2) + scale_sd * scale_sd);
    strand.length_mm = shape.arc_mm;
    strand.length_low = shape.arc_mm * std::exp(-1.96 * sd);
    strand.length_high = shape.arc_mm * std::exp(1.96 * sd);
    strand.doubtful = doubtful;
    strand.cut_off = line.cut_off;
    return strand;
}

}  // namespace

Result<PatternReadings> measure_pattern(const Photo& photo, const card::Calibration& calibration,
                                        const std::vector<cv::Point2d>& region_px, const Progress& progress) {
    auto traced = combings::trace_strands(photo, calibration, region_px, {}, progress);
    if (!traced) return traced.error();
    PatternReadings out;
    std::vector<Known> diameters, ratios, lengths;
    // unbent: whose curvature cannot be told; unwaved: whose ratio, unknown: whose length
    std::size_t strands = 0, followed = 0, unbent = 0, unwaved = 0, unknown = 0;
    for (const Whole& whole : wholes_of(traced.value())) {
        if (whole.arc_mm < least_strand_mm) continue;
        const bool one_line = whole.followed == Followed::whole || whole.followed == Followed::nearly;
        for (const Piece& piece : whole.pieces) {
            out.strands.push_back(shown(traced->strands[piece.line], piece.shape, !one_line, traced->scale_sd));
            out.shapes.push_back(piece.shape);
        }
        ++strands;
        if (whole.pieces.empty() || whole.cut_off)
            ++unbent;
        else
            diameters.push_back({whole.curve_diameter_mm(),
                                 std::hypot(whole.curve_diameter_sd(), diameter_share, one_line ? 0 : piece_share)});
        if (const double ratio = whole.wave_ratio(); ratio == 0 || whole.cut_off)
            ++unwaved;
        else
            ratios.push_back({ratio, std::hypot(ratio_share, one_line ? 0 : piece_ratio_share)});
        if (whole.followed == Followed::unsure) {
            ++unknown;
            continue;
        }
        followed += one_line;
        const double length_guess =
            one_line ? whole.followed == Followed::whole ? 0 : nearly_length_share : pieces_length_share;
        lengths.push_back({whole.arc_mm, std::hypot(arc_share, ends_mm / whole.arc_mm, length_guess)});
    }
    const auto refuse = [&](std::initializer_list<const char*> names, const char* code, const char* text) {
        for (const char* name : names) out.refused.push_back({name, code, text});
    };
    if (strands == 0) {
        refuse({"curve_diameter", "wave_ratio", "strand_length"}, "no-strand",
               "No strand of 20 mm or more lies on the sheet.");
        return out;
    }
    const double unfollowed =
        unfollowed_common * static_cast<double>(strands - followed) / static_cast<double>(strands);
    if (diameters.size() > unbent)
        out.readings.push_back(median_reading("curve_diameter", "mm", diameters, unbent,
                                              std::hypot(traced->scale_sd, diameter_common, unfollowed)));
    else
        refuse({"curve_diameter"}, "strands-doubtful",
               "The strands are too faint in this photo to tell how they bend. Take it in brighter, even light.");
    // Where fewer than half could be followed from end to end, pieces err by up to a third (rendered pairs, seeds 30021
    // and up); with more of them by 6 % at most.
    if (ratios.size() > unwaved && 2 * followed >= strands) {
        Quantity ratio = median_reading("wave_ratio", "-", ratios, unwaved, unfollowed);
        ratio.low = std::max(1.0, ratio.low);
        out.readings.push_back(ratio);
    } else {
        refuse(
            {"wave_ratio"}, "strands-doubtful",
            "Too few strands could be followed over 30 mm. Lay down a few longer strands that do not touch, and take "
            "the photo in brighter, even light.");
    }
    if (3 * followed < 2 * strands || lengths.size() <= unknown) {
        refuse({"strand_length"}, "strands-doubtful",
               "More than a third of the strands could not be followed from end to end without a guess. Lay down a few "
               "strands that do not touch, away from the rim and the card.");
        return out;
    }
    out.readings.push_back(
        median_reading("strand_length", "mm", lengths, unknown, std::hypot(traced->scale_sd, 0.001)));
    return out;
}

}  // namespace kempt::pattern
