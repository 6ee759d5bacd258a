#include "align/register_skin.h"

#include <algorithm>
#include <cmath>

#include "align/coarse_search.h"
#include "align/patches.h"
#include "align/texture.h"

namespace kempt::align {

namespace {

// Blotches and freckles of 1-4 mm for the search, pores and grain too for the fit.
constexpr Bands coarse_bands{{0.3, 2.0}, {0.6, 5.0}}, fine_bands{{0.15, 1.5}, {0.4, 3.0}};
constexpr double least_skin_mm2 = 60;  // six patches' worth, three of them to spare for a map of four numbers
constexpr std::size_t least_ties = 6;
constexpr double agreeing_mm = 0.5;

Error stopped() {
    return {ErrorKind::cancelled, "cancelled", "Laying the photos over each other was stopped.", "", ""};
}

Error too_little(const std::string& what) {
    return {ErrorKind::refused, "too-little-skin", what, "Nothing was carried over.",
            "Draw the line anew, or mark two or more anchors (moles, scars) on both photos."};
}

SkinMap start_map(const Guess& guess, const Texture& earlier, const std::vector<cv::Point2d>& line_mm,
                  cv::Point2d middle) {
    SkinMap map;
    map.turn_rad = guess.turn_rad;
    map.shift_mm = guess.shift_mm;
    map.middle_mm = middle;
    const cv::Point2d chord = line_mm.back() - line_mm.front();
    const double length = std::hypot(chord.x, chord.y);
    if (length > 0) map.along = {chord.x / length, chord.y / length};
    // The box: the skin used, the line, and 3 mm beyond the line.
    map.low_mm = {1e9, 1e9}, map.high_mm = {-1e9, -1e9};
    const auto take = [&](cv::Point2d p, double rim) {
        const cv::Point2d d = p - middle;
        const cv::Vec2d at(d.x * map.along[0] + d.y * map.along[1], -d.x * map.along[1] + d.y * map.along[0]);
        for (int k = 0; k < 2; ++k)
            map.low_mm[k] = std::min(map.low_mm[k], at[k] - rim), map.high_mm[k] = std::max(map.high_mm[k], at[k] + rim);
    };
    const Ground& g = earlier.ground;
    for (int j = 0; j < g.weight.rows; j += 4)
        for (int i = 0; i < g.weight.cols; i += 4)
            if (g.weight.at<float>(j, i) > 0.5f) take(g.mm(i, j), 0);
    for (const cv::Point2d& p : line_mm) take(p, 3);
    return map;
}

// How much skin speaks for a map: correlations of the ties within half a millimetre of it.
double support(const std::vector<Tie>& ties, const SkinMap& map) {
    double sum = 0;
    for (const Tie& tie : ties) {
        const cv::Point2d off = tie.later_mm - map(tie.earlier_mm);
        if (std::hypot(off.x, off.y) < agreeing_mm) sum += tie.correlation;
    }
    return sum;
}

}  // namespace

Result<Registered> register_skin(const Ground& earlier, const Ground& later, const std::vector<cv::Point2d>& line_mm,
                                 const RegisterOptions& options, const Progress& progress) {
    const double px2 = 1 / (earlier.px_per_mm * earlier.px_per_mm);
    const double skin = cv::sum(earlier.weight)[0] * px2;
    if (skin < least_skin_mm2)
        return too_little("There is too little bare skin beside the line on the earlier photo.");
    if (tell(progress, 0, "looking for the same skin") == Go::stop) return stopped();
    const Texture coarse_earlier = texture_of(halved(earlier), coarse_bands),
                  coarse_later = texture_of(halved(later), coarse_bands);
    // Places are counted from the middle of the line: there the answer is wanted.
    cv::Point2d middle;
    for (const cv::Point2d& p : line_mm) middle += p * (1.0 / static_cast<double>(line_mm.size()));
    SearchOptions how;
    how.shift_mm = options.search_mm;
    how.turn_deg = options.search_deg;
    const std::vector<Guess> guesses = search(coarse_earlier, coarse_later, middle, how);
    if (tell(progress, 0.4, "looking for the same skin") == Go::stop) return stopped();
    Registered best;
    double most = 0;
    PatchOptions coarse_patches{7, 3.5, 2.5, 9, 0.8};
    const double overlap = std::pow(coarse_patches.size_mm / coarse_patches.step_mm, 2);
    for (const Guess& guess : guesses) {
        const SkinMap start = start_map(guess, coarse_earlier, line_mm, middle);
        Patches patches = match(coarse_earlier, coarse_later, start, coarse_patches);
        if (patches.ties.size() < least_ties) continue;
        const Fit fitted = fit(patches.ties, start, overlap);
        const double speaks = support(patches.ties, fitted.map);
        if (speaks > most) {
            most = speaks;
            best.fit = fitted;
            best.ties = patches.ties;
            best.guess_strength = guess.strength;
        }
        if (tell(progress, 0.5, "looking for the same skin") == Go::stop) return stopped();
    }
    if (most <= 0) return too_little("The skin beside the line shows too little that could be found again.");
    const Texture fine_earlier = texture_of(earlier, fine_bands), fine_later = texture_of(later, fine_bands);
    for (const double reach : {1.2, 0.7}) {
        const PatchOptions fine{7, 3.5, reach, 9, 0.35};
        Patches patches = match(fine_earlier, fine_later, best.fit.map, fine);
        if (patches.ties.size() < least_ties)
            return too_little("The skin beside the line shows too little that could be found again.");
        best.fit = fit(patches.ties, best.fit.map, overlap);
        best.ties = patches.ties;
        best.skin_mm2 = patches.skin_mm2;
        double agreeing = 0, weighted = 0;
        for (const Tie& tie : best.ties) agreeing += tie.weight, weighted += tie.weight * tie.correlation;
        best.skin_share = agreeing / std::max(1, patches.looked_for);
        best.correlation = agreeing > 0 ? weighted / agreeing : 0;
        if (tell(progress, reach > 1 ? 0.8 : 1, "laying the skin over the skin") == Go::stop) return stopped();
    }
    return best;
}

}  // namespace kempt::align
