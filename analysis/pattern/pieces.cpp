#include "pattern/pieces.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <opencv2/core/utility.hpp>

#include "combings/torn.h"
#include "pattern/line_look.h"

namespace kempt::pattern {

namespace {

// A torn end lies this near to the line that it belongs to: the tracer leaves off up to 2 mm before a faint or crowded
// place.
constexpr double touch_mm = 2.5;
// Lines beside the main one that may be lint or a mark on the paper, in sum.
constexpr double crumb_mm = 4;
constexpr double nearly_share = 0.1;  // of the main line, beside it
constexpr double most_blank_mm = 1.5;
// Of 1897 strands followed as one line (seeds 50000-50335) 8 were less than 92 % of what was drawn: the end of 7 of
// them was torn off with this chance (combings/torn.h) or more, and of the others that of 6.
constexpr double torn_chance = 0.4;
// Times the usual scatter: hairs of one photo lie within a factor of two, creases beyond (bench_pattern's seeds).
constexpr double most_noise = 2.2;
// Of a curve diameter, as a share: hairs' own lie below 0.03, straight ones' too; more shows a line that wavers.
constexpr double most_unsure = 0.04;
// Turns of tighter coils lie in each other: what runs beside a line is more of the same strand, not its shadow.
constexpr double entwined_mm = 6;

// Where a line of wider curls lies along another, that one is its shadow or a strand that goes its own way: of 10 such
// strands (seeds 50000-50562) nine were as long as drawn within 1 % and one within 3 %. In tighter coils it is the
// strand itself, gone through twice.
constexpr double apart_mm = 12;

// In the unit of both.
double distance(cv::Point2d from, const std::vector<cv::Point2d>& path) {
    double nearest = 1e9;
    for (const cv::Point2d& p : path) nearest = std::min(nearest, cv::norm(p - from));
    return nearest;
}

bool touch(const combings::TracedStrand& a, const combings::TracedStrand& b) {
    for (const auto& [one, other] : {std::pair{&a, &b}, std::pair{&b, &a}})
        for (const cv::Point2d& end : {one->path_mm.front(), one->path_mm.back()})
            if (distance(end, other->path_mm) < touch_mm) return true;
    return false;
}

// Most of the line runs beside a longer one, nearer than its loops are to each other: its shadow.
bool is_beside(const combings::TracedStrand& line, const combings::TracedStrand& longer, const Shape& of_longer) {
    if (of_longer.curve_diameter_mm < entwined_mm) return false;
    const double near_mm = std::min(2.0, of_longer.curve_diameter_mm / 6);
    std::size_t near = 0, all = 0;
    for (std::size_t i = 0; i < line.path_mm.size(); i += 2, ++all)
        near += distance(line.path_mm[i], longer.path_mm) < near_mm;
    return 10 * near > 6 * all;
}

double weighted_median(std::vector<std::pair<double, double>> of) {
    std::sort(of.begin(), of.end());
    double whole = 0, so_far = 0;
    for (const auto& [value, weight] : of) whole += weight;
    for (const auto& [value, weight] : of)
        if ((so_far += weight) >= whole / 2) return value;
    return 0;
}

// Whether another line passes where this one has a doubt: the two may have changed over there, were it only its shadow.
// Where none but the strand itself does, another way would run through the same hair in another order, and it would be
// as long.
bool may_change_over(std::size_t line, const Whole& whole, const combings::Traced& traced) {
    const double near_px = touch_mm * traced.px_per_mm;
    for (const cv::Point2d& doubt : traced.strands[line].doubts_px)
        for (std::size_t i = 0; i < traced.strands.size(); ++i)
            if (std::find(whole.lines.begin(), whole.lines.end(), i) == whole.lines.end() &&
                distance(doubt, traced.strands[i].path_px) < near_px)
                return true;
    return false;
}

// lines: longest first, those beside others taken out; beside: there were such. torn: the chances of its ends.
void judge(Whole& whole, const combings::Traced& traced, const LineLook& look, const std::array<double, 2>& torn,
           bool beside) {
    const std::size_t first = whole.lines.front();
    const combings::TracedStrand& main = traced.strands[first];
    double sum = 0;
    for (const std::size_t line : whole.lines) {
        sum += traced.strands[line].length_mm;
        whole.cut_off = whole.cut_off || traced.strands[line].cut_off;
    }
    whole.arc_mm = sum;
    if (look.shape) whole.wave_ratio = look.shape->wave_ratio;
    const double rest = sum - main.length_mm;
    const bool mixed = main.shared_mm > 0 && (!look.shape || look.shape->curve_diameter_mm < apart_mm);
    if (!look.shape || main.cut_off || mixed || main.blank_mm > most_blank_mm ||
        std::max(torn[0], torn[1]) > torn_chance || rest > std::max(crumb_mm, nearly_share * main.length_mm) ||
        may_change_over(first, whole, traced))
        return;
    const bool clear = main.doubts == 0 && main.blank_mm < 1 && main.shared_mm == 0 && !look.wavers && !look.kinked;
    whole.followed = clear && rest < crumb_mm && !beside ? Followed::whole : Followed::nearly;
    whole.guessed = main.doubts > 0;
    whole.arc_mm = look.shape->arc_mm;
}

}  // namespace

double Whole::curve_diameter_mm() const {
    double turned = 0, length = 0;
    for (const Shape& piece : pieces) {
        turned += piece.arc_mm * 2 / piece.curve_diameter_mm;
        length += piece.arc_mm;
    }
    return turned > 0 ? 2 * length / turned : 0;
}

double Whole::curve_diameter_sd() const {
    double square = 0, length = 0;
    for (const Shape& piece : pieces) {
        square += std::pow(piece.arc_mm * piece.curve_diameter_sd, 2);
        length += piece.arc_mm;
    }
    return length > 0 ? std::sqrt(square) / length : 0;
}

std::vector<Whole> wholes_of(const combings::Traced& traced) {
    const auto& lines = traced.strands;  // longest first
    std::vector<LineLook> looks(lines.size());
    cv::parallel_for_({0, static_cast<int>(lines.size())}, [&](const cv::Range& range) {
        for (auto i = static_cast<std::size_t>(range.start); i < static_cast<std::size_t>(range.end); ++i)
            looks[i] = look_at(lines[i], traced.point_sd_mm);
    });
    std::vector<std::pair<double, double>> noise;  // and the length that shows it
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (looks[i].hair && looks[i].shape) noise.emplace_back(looks[i].shape->noise_mm, lines[i].length_mm);
    const double most = most_noise * weighted_median(noise);

    std::vector<std::size_t> root(lines.size());
    std::iota(root.begin(), root.end(), std::size_t{0});
    const auto find = [&](std::size_t i) {
        while (root[i] != i) i = root[i] = root[root[i]];
        return i;
    };
    std::vector<bool> beside(lines.size(), false);
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = 0; k < i && looks[i].hair; ++k) {
            if (!looks[k].hair) continue;
            const bool shadow = looks[k].shape && is_beside(lines[i], lines[k], *looks[k].shape);
            beside[i] = beside[i] || shadow;
            if (shadow || touch(lines[i], lines[k])) root[std::max(find(i), find(k))] = std::min(find(i), find(k));
        }
    std::vector<Whole> all(lines.size()), out;
    std::vector<bool> has_beside(lines.size(), false), smooth(lines.size(), false);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!looks[i].hair) continue;
        Whole& whole = all[find(i)];
        if (beside[i]) {
            has_beside[find(i)] = true;
            continue;
        }
        whole.lines.push_back(i);
        // A line too rough to be a hair makes no strand; one that wavers does, though it tells nothing of the curl.
        smooth[find(i)] = smooth[find(i)] || (looks[i].shape && looks[i].shape->noise_mm <= most);
        for (const Shape& shape : looks[i].parts)
            if (shape.noise_mm <= most && shape.curve_diameter_sd <= most_unsure) whole.pieces.push_back(shape);
    }
    const auto torn = combings::torn_chances(lines);
    std::vector<std::pair<double, double>> lengths;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!smooth[i]) continue;
        const std::size_t first = all[i].lines.front();
        judge(all[i], traced, looks[first], torn[first], has_beside[i]);
        if (!all[i].pieces.empty()) lengths.emplace_back(all[i].arc_mm, 1);
        out.push_back(std::move(all[i]));
    }
    // Short ones that only waver are marks on the paper or shadows.
    const double usual = weighted_median(lengths);
    std::erase_if(out, [&](const Whole& whole) { return whole.pieces.empty() && whole.arc_mm < usual / 2; });
    // One as long as the others may be a strand that is too faint to follow, or else a crease.
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool left_out = !looks[i].hair || (find(i) == i && !smooth[i]);
        if (!left_out || lines[i].cut_off || lines[i].length_mm < usual / 2 || lines[i].length_mm > 1.5 * usual)
            continue;
        out.emplace_back();
        out.back().lines = {i};
        out.back().arc_mm = lines[i].length_mm;
    }
    std::sort(out.begin(), out.end(), [](const Whole& a, const Whole& b) { return a.arc_mm > b.arc_mm; });
    return out;
}

}  // namespace kempt::pattern
