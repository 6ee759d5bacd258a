#include "align/register_skin.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "align/coarse_search.h"
#include "align/patches.h"
#include "align/texture.h"

namespace kempt::align {

namespace {

// Pixels of 1/2 mm and features of 1-4 mm (blotches, freckles) for the search, pores and grain too for the fit. Redness
// keeps coarser features only: phones store colour at half resolution and smooth it more.
constexpr int coarse_times = 3;
const std::vector<Band> coarse_bands{{0, 0.3, 2.0}, {0, 0.9, 4.0}, {1, 0.6, 5.0}},
    fine_bands{{0, 0.15, 1.0}, {0, 0.8, 4.0}, {1, 0.4, 3.0}};
// Patches overlap by half, so that each pixel speaks four times. Place areas: squares of the correlation lengths.
constexpr double patch_mm = 7, step_mm = 3.5, patch_skin_mm2 = 9, coarse_place_mm2 = 0.8, fine_place_mm2 = 0.35;
constexpr double overlap = (patch_mm / step_mm) * (patch_mm / step_mm);
// A guess is a turn and a shift; what tilt and the round head add comes to 2 mm at the ends of the line. The coarse fit
// then leaves half a millimetre.
constexpr double coarse_reach_mm = 2.5;
constexpr double fine_reach_mm[] = {1.2, 0.7};
// Where the coarse fit was further off, the fine one walks there: again while the line still moves.
constexpr int most_rounds = 4;
constexpr double settled_mm = 0.2;
// By standard uncertainties of the calmer fit. Of 143 rendered pairs those above were helped by it, those between 1 and
// this were not, on average.
constexpr double most_contradiction = 2.5;
constexpr double least_skin_mm2 = 60;  // six patches' worth
constexpr std::size_t least_ties = 6;  // twice what a turn, a shift and a size need
constexpr double agreeing_mm = 0.5;
// A guess for which most of the patches speak needs no rivals.
constexpr double clear_share = 0.7;
constexpr std::size_t clear_ties = 20;

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
            map.low_mm[k] = std::min(map.low_mm[k], at[k] - rim),
            map.high_mm[k] = std::max(map.high_mm[k], at[k] + rim);
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

Error not_again() {
    return too_little("The skin beside the line shows too little that could be found again.");
}

// Of several guesses the map for which most skin speaks. Nothing when none has enough.
Result<Registered> best_of(const std::vector<Guess>& guesses, const Texture& earlier, const Texture& later,
                           const std::vector<cv::Point2d>& line_mm, cv::Point2d middle, const Progress& progress) {
    std::optional<Registered> best;
    double most = 0;
    for (const Guess& guess : guesses) {
        const SkinMap start = start_map(guess, earlier, line_mm, middle);
        Patches patches =
            match(earlier, later, start, {patch_mm, step_mm, coarse_reach_mm, patch_skin_mm2, coarse_place_mm2});
        if (tell(progress, 0.5, "looking for the same skin") == Go::stop) return stopped();
        if (patches.ties.size() < least_ties) continue;
        const Fit fitted = fit(patches.ties, start, overlap);
        const double speaks = support(patches.ties, fitted.map);
        if (speaks > most) {
            most = speaks;
            best.emplace();
            best->fit = fitted;
            best->standing_out = guess.strength;
        }
        if (patches.ties.size() >= clear_ties && fitted.agreeing > clear_share) break;
    }
    if (!best) return not_again();
    return *best;
}

// One round of patches and fit from the map so far; false when too little was found.
bool fitted(const Texture& earlier, const Texture& later, double reach_mm, Registered& out) {
    Patches patches = match(earlier, later, out.fit.map, {patch_mm, step_mm, reach_mm, patch_skin_mm2, fine_place_mm2});
    if (patches.ties.size() < least_ties) return false;
    out.fit = fit(patches.ties, out.fit.map, overlap);
    out.looked_for = patches.looked_for;
    out.skin_mm2 = patches.skin_mm2;
    out.correlation = patches.correlation;
    out.strength = patches.strength;
    out.ties = std::move(patches.ties);
    return true;
}

// Mean distance of two maps at the line.
double moved_mm(const SkinMap& one, const SkinMap& other, const std::vector<cv::Point2d>& line_mm) {
    double sum = 0;
    for (const cv::Point2d& p : line_mm) {
        const cv::Point2d d = one(p) - other(p);
        sum += std::hypot(d.x, d.y);
    }
    return sum / static_cast<double>(line_mm.size());
}

// How far two maps lie apart at the line, in standard uncertainties of the first.
double contradiction(const Fit& one, const Fit& other, const std::vector<cv::Point2d>& line_mm) {
    double apart = 0, expected = 0;
    for (const cv::Point2d& p : line_mm) {
        const cv::Point2d d = one.map(p) - other.map(p);
        apart += d.dot(d) / 2;
        expected += std::pow(uncertainty(one, p), 2);
    }
    return std::sqrt(apart / std::max(expected, 1e-12));
}

}  // namespace

Result<Registered> register_skin(const Ground& earlier, const Ground& later, const std::vector<cv::Point2d>& line_mm,
                                 const RegisterOptions& options, const Progress& progress) {
    if (cv::sum(earlier.weight)[0] < least_skin_mm2 * earlier.px_per_mm * earlier.px_per_mm)
        return too_little("There is too little bare skin beside the line on the earlier photo.");
    if (tell(progress, 0, "looking for the same skin") == Go::stop) return stopped();
    // Places are counted from the middle of the line: there the answer is wanted.
    cv::Point2d middle;
    for (const cv::Point2d& p : line_mm) middle += p * (1.0 / static_cast<double>(line_mm.size()));
    SearchOptions how;
    how.shift_mm = options.search_mm;
    how.turn_deg = options.search_deg;
    how.base_turn_rad = options.base_turn_rad;
    how.base_shift_mm = options.base_shift_mm;
    const Texture coarse_earlier = texture_of(coarser(earlier, coarse_times), coarse_bands),
                  coarse_later = texture_of(coarser(later, coarse_times), coarse_bands);
    const std::vector<Guess> guesses = search(coarse_earlier, coarse_later, middle, how);
    if (tell(progress, 0.4, "looking for the same skin") == Go::stop) return stopped();
    auto coarse = best_of(guesses, coarse_earlier, coarse_later, line_mm, middle, progress);
    if (!coarse) return coarse.error();
    Registered out = std::move(coarse).value();
    const Texture fine_earlier = texture_of(earlier, fine_bands), fine_later = texture_of(later, fine_bands);
    const Texture calm_earlier = without_first(fine_earlier), calm_later = without_first(fine_later);
    if (tell(progress, 0.7, "laying the skin over the skin") == Go::stop) return stopped();
    // Fine texture is relief for a good part, and light from another side moves relief or turns it over. Without it the
    // fit is less sure, so it takes part unless the rest contradicts it.
    Registered calm = out;
    for (int round = 0; round < most_rounds; ++round) {
        const SkinMap before = out.fit.map;
        if (!fitted(fine_earlier, fine_later, fine_reach_mm[0], out)) return not_again();
        if (moved_mm(before, out.fit.map, line_mm) < settled_mm) break;
    }
    if (!fitted(fine_earlier, fine_later, fine_reach_mm[1], out)) return not_again();
    if (tell(progress, 0.85, "laying the skin over the skin") == Go::stop) return stopped();
    if (fitted(calm_earlier, calm_later, fine_reach_mm[0], calm)) {
        out.relief = contradiction(calm.fit, out.fit, line_mm);
        calm.relief = out.relief;
        if (out.relief > most_contradiction && fitted(calm_earlier, calm_later, fine_reach_mm[1], calm))
            out = calm;
        else
            out.fit.covariance *= std::pow(std::max(1.0, out.relief), 2);  // neither is sure then
    }
    if (tell(progress, 1, "laying the skin over the skin") == Go::stop) return stopped();
    double agreeing = 0;
    for (const Tie& tie : out.ties) agreeing += tie.weight;
    out.skin_share = agreeing / std::max(1, out.looked_for);
    if (out.evidence() < options.least_evidence)
        return too_little("The skin beside the line could not be found again on the new photo.");
    return out;
}

}  // namespace kempt::align
