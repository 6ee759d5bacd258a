#include "pattern/pattern.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "combings/trace.h"
#include "pattern/pieces.h"

namespace kempt::pattern {

namespace {

// A shorter piece shows too little of a pattern.
constexpr double least_strand_mm = 20;

// What one strand's figures are unsure by, as SDs (calibrated on bench_pattern's seeds 50000-50562, 100000-100041 and
// 200000-200037).
constexpr double diameter_share = 0.025;   // the tracer's own smoothing and slips, beside the noise of the points
constexpr double diameter_common = 0.012;  // of all strands of a photo: noise bends straight ones
// Per mm of curve diameter, of one strand and of all of a photo: the straighter, the more of its bend is noise
// (straight strands of the same seeds erred by 1.5 % at 125 mm, 3 % at 200, 7 % at 325, 13 % at 600).
constexpr double straight_share = 2e-4, straight_common = 1e-4;
constexpr double unfollowed_common = 0.06;     // times the share of strands that were not followed from end to end
constexpr double piece_share = 0.05;           // of a strand known in pieces only: the rest may bend otherwise
constexpr double nearly_length_share = 0.013;  // of one that is followed nearly (pieces.h)
constexpr double ends_mm = 0.35;               // where both ends of a strand are seen
constexpr double arc_share = 0.004;            // hair that stands off the paper is nearer to the camera
// Of 1 - 1/ratio, the share by which the chord is shorter than the arc: one strand's and that of all of a photo; and of
// the ratio, what is left of a straight strand.
constexpr double ratio_share = 0.01, ratio_common = 0.006, ratio_least = 0.0005;
constexpr double guessed_ratio_share = 0.012;  // where it guesses at its own crossings
// Places in the order of ratios by which such a strand may move the median: one in ten is off by a tenth or more, in
// loops that were gone through the wrong way round.
constexpr double guessed_places = 0.1;

// Readings whose interval spans more than that share of them say too little (own choice). Of the 545 photos of seeds
// 50000-50562 whose strands can be followed by eye, 3.3 % of the lengths and 2.9 % of the ratios were refused.
constexpr double most_length_span = 0.3, most_ratio_span = 0.5;

struct Told {          // one figure of one strand
    double value, sd;  // sd as a share
    bool sure = true;
};

double at_place(const std::vector<Told>& sorted, double place) {  // between two strands in proportion
    const double inside = std::clamp(place, 0.0, static_cast<double>(sorted.size() - 1));
    const auto below = static_cast<std::size_t>(inside);
    const auto above = std::min(below + 1, sorted.size() - 1);
    const double share = inside - static_cast<double>(below);
    return (1 - share) * sorted[below].value + share * sorted[above].value;
}

double middle_of(const std::vector<Told>& all) {
    return (static_cast<double>(all.size()) - 1) / 2;
}

// Median of the strands, those that are unsure by their guess; one or more is sure. Its interval holds the errors of
// each sure one, what is common to all, and the median of all strands on the sheet wherever the unsure ones lie: each
// may lie above or below, so it may be up to half of their number of places further up or down.
// further: places beside those of the unsure ones; common: from the median to the SD, as a share, of what all strands
// have in common.
template <class Common>
Quantity median_reading(const char* name, const char* unit, std::vector<Told> told, double further, Common common) {
    std::sort(told.begin(), told.end(), [](const Told& a, const Told& b) { return a.value < b.value; });
    std::vector<Told> sure;
    std::copy_if(told.begin(), told.end(), std::back_inserter(sure), [](const Told& one) { return one.sure; });
    const double away = (static_cast<double>(told.size() - sure.size()) + further) / 2;
    double own = 0;
    for (const Told& one : sure) own += one.sd * one.sd / static_cast<double>(sure.size());
    // The SD of a median is sqrt(pi / 2) of a mean's.
    const double median = at_place(told, middle_of(told)), of_all = common(median),
                 half = 1.96 * std::sqrt(CV_PI / 2 * own / static_cast<double>(sure.size()) + of_all * of_all),
                 low = std::min(median, at_place(sure, middle_of(sure) - away)) * std::exp(-half),
                 high = std::max(median, at_place(sure, middle_of(sure) + away)) * std::exp(half);
    return {name, median, unit, low, high};
}

double spans(const Quantity& reading) {
    return (reading.high - reading.low) / reading.value;
}

combings::Strand shown(const combings::TracedStrand& line, bool doubtful, double scale_sd) {
    combings::Strand strand;
    for (std::size_t i = 0; i < line.path_px.size(); i += 2) strand.path_px.push_back(line.path_px[i]);
    const double sd = std::sqrt(std::pow(arc_share, 2) + std::pow(ends_mm / line.length_mm, 2) + scale_sd * scale_sd);
    strand.length_mm = line.length_mm;
    strand.length_low = line.length_mm * std::exp(-1.96 * sd);
    strand.length_high = line.length_mm * std::exp(1.96 * sd);
    strand.doubtful = doubtful;
    strand.cut_off = line.cut_off;
    return strand;
}

Told diameter_of(const Whole& whole) {
    const double mm = whole.curve_diameter_mm(), share = std::hypot(diameter_share, straight_share * mm),
                 unseen = whole.followed == Followed::unsure ? piece_share : 0;
    return {mm, std::hypot(whole.curve_diameter_sd(), share, unseen)};
}

Told ratio_of(const Whole& whole) {
    const double bent = ratio_share * (1 - 1 / whole.wave_ratio);
    return {whole.wave_ratio, std::hypot(bent, ratio_least, whole.guessed ? guessed_ratio_share : 0),
            whole.followed != Followed::unsure};
}

// Every line of the strand, what it was measured by or not, with what is known of it.
void show(const Whole& whole, const combings::Traced& traced, PatternReadings& out) {
    for (const std::size_t line : whole.lines) {
        out.strands.push_back(shown(traced.strands[line], whole.followed == Followed::unsure, traced.scale_sd));
        Shape shape;
        shape.arc_mm = traced.strands[line].length_mm;
        const bool first = line == whole.lines.front();
        shape.curve_diameter_mm = first ? whole.curve_diameter_mm() : 0;
        shape.wave_ratio = first ? whole.wave_ratio : 0;
        out.shapes.push_back(shape);
    }
}

}  // namespace

Result<PatternReadings> measure_pattern(const Photo& photo, const card::Calibration& calibration,
                                        const std::vector<cv::Point2d>& region_px, const Progress& progress) {
    auto traced = combings::trace_strands(photo, calibration, region_px, {.apart = true}, progress);
    if (!traced) return traced.error();
    PatternReadings out;
    std::vector<Told> diameters, ratios, lengths;
    // unbent: whose curvature cannot be told; followed: from end to end
    std::size_t strands = 0, followed = 0, unbent = 0, guessed = 0;
    for (const Whole& whole : wholes_of(traced.value())) {
        if (whole.arc_mm < least_strand_mm) continue;
        show(whole, traced.value(), out);
        ++strands;
        const bool one_line = whole.followed != Followed::unsure;
        followed += one_line;
        guessed += one_line && whole.guessed;
        if (whole.pieces.empty() || whole.cut_off)
            ++unbent;
        else
            diameters.push_back(diameter_of(whole));
        if (whole.wave_ratio > 0) ratios.push_back(ratio_of(whole));
        const double guess = whole.followed == Followed::whole ? 0 : nearly_length_share;
        lengths.push_back({whole.arc_mm, std::hypot(arc_share, ends_mm / whole.arc_mm, guess), one_line});
    }
    const auto refuse = [&](std::initializer_list<const char*> names, const char* code, const char* text) {
        for (const char* name : names) out.refused.push_back({name, code, text});
    };
    if (strands == 0) {
        refuse({"curve_diameter", "wave_ratio", "strand_length"}, "no-strand",
               "No strand of 20 mm or more lies on the sheet.");
        return out;
    }
    const std::size_t unfollowed = strands - followed;
    const double unsure = unfollowed_common * static_cast<double>(unfollowed) / static_cast<double>(strands);
    const auto diameter_sd = [&](double mm) {
        return std::hypot(traced->scale_sd, std::hypot(diameter_common, straight_common * mm), unsure);
    };
    const auto ratio_sd = [&](double ratio) { return (1 - 1 / ratio) * std::hypot(ratio_common, unsure); };
    const auto length_sd = [&](double) { return std::hypot(traced->scale_sd, 0.001); };
    if (diameters.size() > unbent)
        out.readings.push_back(
            median_reading("curve_diameter", "mm", diameters, static_cast<double>(unbent), diameter_sd));
    else
        refuse({"curve_diameter"}, "strands-doubtful",
               "The strands are too faint in this photo to tell how they bend. Take it in brighter, even light.");
    if (followed > unfollowed) {
        const double untold = static_cast<double>(strands - ratios.size());
        Quantity ratio =
            median_reading("wave_ratio", "-", ratios, untold + guessed_places * static_cast<double>(guessed), ratio_sd);
        ratio.low = std::max(1.0, ratio.low);
        if (spans(ratio) <= most_ratio_span) out.readings.push_back(ratio);
        const Quantity length = median_reading("strand_length", "mm", lengths, 0, length_sd);
        if (spans(length) <= most_length_span) out.readings.push_back(length);
    }
    for (const char* name : {"wave_ratio", "strand_length"})
        if (std::none_of(out.readings.begin(), out.readings.end(), [&](const Quantity& q) { return q.name == name; }))
            refuse(
                {name}, "strands-doubtful",
                "Too many of the strands could not be followed from end to end without a guess. Lay down a few longer "
                "ones that do not touch, away from the rim and the card, in brighter, even light.");
    return out;
}

}  // namespace kempt::pattern
