#include "pattern/pieces.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <opencv2/core/utility.hpp>
#include <optional>

namespace kempt::pattern {

namespace {

// A torn end lies this near to the line that it belongs to: the tracer leaves off up to 2 mm before a faint or crowded
// place.
constexpr double touch_mm = 2.5;
// Lines beside the main one that may be lint or a mark on the paper, in sum.
constexpr double crumb_mm = 4;
constexpr double nearly_share = 0.1;   // of the main line, beside it
constexpr double most_guessed = 0.15;  // of a strand in pieces: more says too little of its length
// Times the usual scatter: hairs of one photo lie within a factor of two, creases beyond (bench_pattern's seeds).
constexpr double most_noise = 2.2;
// Of a curve diameter, as a share: hairs' own lie below 0.03, straight ones' too; more shows a line that wavers.
constexpr double most_unsure = 0.04;
// Of a strand's length, in pieces of a stretch or more: where it lies on itself it is curlier than where it can be
// followed.
constexpr double least_seen = 0.6;
constexpr std::size_t most_kinks = 3;  // more are its curl

// What is known of one line.
struct Known {
    std::optional<Shape> shape;
    std::vector<Shape> parts;  // the same, or of its parts between kinks, as far as their curvature can be told
    bool kinked = false, hair = true, wavers = true;
};

// Waves swing from left to right pi/2 times a curve diameter when they are round, twice or a little more when they are
// flat; a trace that hops between a strand and its shadow does so six times and more (bench_pattern's seeds). Straight
// hair may waver as it likes.
bool wavers(const Shape& shape, const Course& course) {
    return shape.curve_diameter_mm < 100 && course.swings_per_mm * shape.curve_diameter_mm > 3.5;
}

Known look_at(const combings::TracedStrand& line, double noise_mm) {
    Known out;
    Course course;
    const auto shape = shape_and_course(line.path_mm, noise_mm, &course);
    if (!shape) return out;
    out.shape = shape.value();
    // A line that bends much and yet runs straight ripples by (ratio - 1) x diameter: a tenth of a millimetre and less
    // is no wave of a hair but the noise along a crease.
    out.hair =
        !(shape->curve_diameter_mm < 100 && (shape->arc_mm / shape->chord_mm - 1) * shape->curve_diameter_mm < 0.1);
    if (course.kinks_mm.empty() || course.kinks_mm.size() > most_kinks) {
        out.wavers = wavers(*out.shape, course);
        if (!out.wavers) out.parts.push_back(*out.shape);
        return out;
    }
    out.kinked = true;
    std::vector<double> kinks = course.kinks_mm;
    kinks.push_back(1e9);
    std::vector<cv::Point2d> part;
    double along = 0;
    std::size_t next = 0;
    for (std::size_t i = 0; i < line.path_mm.size(); ++i) {
        if (i > 0) along += cv::norm(line.path_mm[i] - line.path_mm[i - 1]);
        const bool clear = std::abs(along - kinks[next]) > 2;
        if (clear) part.push_back(line.path_mm[i]);
        if (!clear || i + 1 == line.path_mm.size()) {
            if (auto one = shape_and_course(part, noise_mm, &course); one && !wavers(one.value(), course))
                out.parts.push_back(one.value());
            part.clear();
        }
        if (along > kinks[next] + 2) ++next;
    }
    out.wavers = out.parts.empty();
    return out;
}

double distance_mm(cv::Point2d from, const std::vector<cv::Point2d>& path) {
    double nearest = 1e9;
    for (const cv::Point2d& p : path) nearest = std::min(nearest, cv::norm(p - from));
    return nearest;
}

bool touch(const combings::TracedStrand& a, const combings::TracedStrand& b) {
    for (const auto& [one, other] : {std::pair{&a, &b}, std::pair{&b, &a}})
        for (const cv::Point2d& end : {one->path_mm.front(), one->path_mm.back()})
            if (distance_mm(end, other->path_mm) < touch_mm) return true;
    return false;
}

// Most of the line runs beside a longer one, nearer than its loops are to each other: its shadow.
bool is_beside(const combings::TracedStrand& line, const combings::TracedStrand& longer, const Shape& of_longer) {
    const double near_mm = std::min(2.0, of_longer.curve_diameter_mm / 6);
    std::size_t near = 0, all = 0;
    for (std::size_t i = 0; i < line.path_mm.size(); i += 2, ++all)
        near += distance_mm(line.path_mm[i], longer.path_mm) < near_mm;
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

// lines: longest first, those beside others taken out; beside: there were such.
void judge(Whole& whole, const combings::Traced& traced, const std::vector<Known>& known, bool beside) {
    const std::vector<std::size_t>& of = whole.lines;
    const combings::TracedStrand& main = traced.strands[of.front()];
    double sum = 0, guessed = 0;
    for (std::size_t i = 0; i < of.size(); ++i) {
        const combings::TracedStrand& line = traced.strands[of[i]];
        sum += line.length_mm;
        guessed += line.blank_mm + line.shared_mm + (known[of[i]].shape ? 0 : line.length_mm);
        whole.cut_off = whole.cut_off || line.cut_off;
    }
    const double rest = sum - main.length_mm;
    const bool good = main.doubts == 0 && !known[of.front()].wavers && main.blank_mm < 1 && main.shared_mm == 0 &&
                      !main.cut_off && known[of.front()].shape && !known[of.front()].kinked;
    if (good && rest < crumb_mm && !beside)
        whole.followed = Followed::whole;
    else if (good && (rest < crumb_mm || rest < nearly_share * main.length_mm))
        whole.followed = Followed::nearly;
    else if (!whole.cut_off && guessed < most_guessed * sum)
        whole.followed = Followed::in_pieces;
    const bool one = whole.followed == Followed::whole || whole.followed == Followed::nearly;
    whole.arc_mm = one ? known[of.front()].shape->arc_mm : sum;
}

}  // namespace

double Whole::curve_diameter_mm() const {
    double turned = 0, length = 0;
    for (const Piece& piece : pieces) {
        turned += piece.shape.arc_mm * 2 / piece.shape.curve_diameter_mm;
        length += piece.shape.arc_mm;
    }
    return turned > 0 ? 2 * length / turned : 0;
}

double Whole::curve_diameter_sd() const {
    double square = 0, length = 0;
    for (const Piece& piece : pieces) {
        square += std::pow(piece.shape.arc_mm * piece.shape.curve_diameter_sd, 2);
        length += piece.shape.arc_mm;
    }
    return length > 0 ? std::sqrt(square) / length : 0;
}

double Whole::wave_ratio() const {
    double squares = 0, places = 0, seen = 0;  // of a stretch of the strand, by the millimetre where it may begin
    for (const Piece& piece : pieces) {
        const double room = piece.shape.arc_mm - stretch_mm + 1;
        if (room < 1) continue;
        squares += room / (piece.shape.wave_ratio * piece.shape.wave_ratio);
        places += room;
        seen += piece.shape.arc_mm;
    }
    return seen > least_seen * arc_mm ? std::sqrt(places / squares) : 0;
}

std::vector<Whole> wholes_of(const combings::Traced& traced) {
    const auto& lines = traced.strands;  // longest first
    std::vector<Known> known(lines.size());
    cv::parallel_for_({0, static_cast<int>(lines.size())}, [&](const cv::Range& range) {
        for (auto i = static_cast<std::size_t>(range.start); i < static_cast<std::size_t>(range.end); ++i)
            known[i] = look_at(lines[i], traced.point_sd_mm);
    });
    std::vector<std::pair<double, double>> noise;  // and the length that shows it
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (known[i].hair && known[i].shape) noise.emplace_back(known[i].shape->noise_mm, lines[i].length_mm);
    const double most = most_noise * weighted_median(noise);

    std::vector<std::size_t> root(lines.size());
    std::iota(root.begin(), root.end(), std::size_t{0});
    const auto find = [&](std::size_t i) {
        while (root[i] != i) i = root[i] = root[root[i]];
        return i;
    };
    std::vector<bool> beside(lines.size(), false);
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = 0; k < i && known[i].hair; ++k) {
            if (!known[k].hair) continue;
            const bool shadow = known[k].shape && is_beside(lines[i], lines[k], *known[k].shape);
            beside[i] = beside[i] || shadow;
            if (shadow || touch(lines[i], lines[k])) root[std::max(find(i), find(k))] = std::min(find(i), find(k));
        }
    std::vector<Whole> all(lines.size()), out;
    std::vector<bool> has_beside(lines.size(), false), smooth(lines.size(), false);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!known[i].hair) continue;
        Whole& whole = all[find(i)];
        if (beside[i]) {
            has_beside[find(i)] = true;
            continue;
        }
        whole.lines.push_back(i);
        // A line too rough to be a hair makes no strand; one that wavers does, though it tells nothing of the curl.
        smooth[find(i)] = smooth[find(i)] || (known[i].shape && known[i].shape->noise_mm <= most);
        for (const Shape& shape : known[i].parts)
            if (shape.noise_mm <= most && shape.curve_diameter_sd <= most_unsure) whole.pieces.push_back({i, shape});
    }
    std::vector<std::pair<double, double>> lengths;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!smooth[i]) continue;
        judge(all[i], traced, known, has_beside[i]);
        if (!all[i].pieces.empty()) lengths.emplace_back(all[i].arc_mm, 1);
        out.push_back(std::move(all[i]));
    }
    // Short ones that only waver are marks on the paper or shadows.
    const double usual = weighted_median(lengths);
    std::erase_if(out, [&](const Whole& whole) { return whole.pieces.empty() && whole.arc_mm < usual / 2; });
    std::sort(out.begin(), out.end(), [](const Whole& a, const Whole& b) { return a.arc_mm > b.arc_mm; });
    return out;
}

}  // namespace kempt::pattern
