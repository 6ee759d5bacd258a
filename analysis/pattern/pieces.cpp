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
// Pieces beside the main one that may be lint or a mark on the paper.
constexpr double crumb_mm = 4;

// Times the usual scatter: hairs of one photo lie within a factor of two, creases beyond (bench_pattern's seeds).
constexpr double most_noise = 2.2;

double weighted_median(std::vector<std::pair<double, double>> of) {
    std::sort(of.begin(), of.end());
    double whole = 0, so_far = 0;
    for (const auto& [value, weight] : of) whole += weight;
    for (const auto& [value, weight] : of)
        if ((so_far += weight) >= whole / 2) return value;
    return 0;
}

double distance_mm(cv::Point2d end, const std::vector<cv::Point2d>& path) {
    double nearest = 1e9;
    for (const cv::Point2d& p : path) nearest = std::min(nearest, cv::norm(p - end));
    return nearest;
}

bool touch(const combings::TracedStrand& a, const combings::TracedStrand& b) {
    for (const auto& [one, other] : {std::pair{&a, &b}, std::pair{&b, &a}})
        for (const cv::Point2d& end : {one->path_mm.front(), one->path_mm.back()})
            if (distance_mm(end, other->path_mm) < touch_mm) return true;
    return false;
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

std::vector<Whole> wholes_of(const combings::Traced& traced) {
    const auto& lines = traced.strands;
    std::vector<std::size_t> root(lines.size());
    std::iota(root.begin(), root.end(), std::size_t{0});
    const auto find = [&](std::size_t i) {
        while (root[i] != i) i = root[i] = root[root[i]];
        return i;
    };
    for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
            if (find(i) != find(k) && touch(lines[i], lines[k]))
                root[std::max(find(i), find(k))] = std::min(find(i), find(k));
    std::vector<std::optional<Shape>> shapes(lines.size());
    cv::parallel_for_({0, static_cast<int>(lines.size())}, [&](const cv::Range& range) {
        for (int i = range.start; i < range.end; ++i) {
            const auto k = static_cast<std::size_t>(i);
            if (auto shape = shape_of(lines[k].path_mm, traced.point_sd_mm)) shapes[k] = shape.value();
        }
    });
    std::vector<Whole> out(lines.size());
    std::vector<std::vector<cv::Point2d>> ends(lines.size());
    std::vector<std::pair<double, double>> noise;     // and the length that shows it
    for (std::size_t i = 0; i < lines.size(); ++i) {  // longest first
        const std::size_t r = find(i);
        Whole& whole = out[r];
        const combings::TracedStrand& line = lines[i];
        const bool first = whole.length_mm == 0;
        whole.length_mm += line.length_mm;
        whole.guessed_mm += line.blank_mm + line.shared_mm;
        whole.cut_off = whole.cut_off || line.cut_off;
        for (const cv::Point2d& end : {line.path_mm.front(), line.path_mm.back()}) {
            for (const cv::Point2d& other : ends[r]) whole.chord_mm = std::max(whole.chord_mm, cv::norm(end - other));
            ends[r].push_back(end);
        }
        if (first) whole.clear = line.doubts == 0 && line.blank_mm < 1 && line.shared_mm == 0 && !line.cut_off;
        if (whole.length_mm - lines[r].length_mm > crumb_mm && !first) whole.clear = false;
        const std::optional<Shape>& shape = shapes[i];
        if (!shape) {
            whole.guessed_mm += line.length_mm;
            continue;
        }
        whole.pieces.push_back({i, *shape});
        noise.emplace_back(shape->noise_mm, line.length_mm);
    }
    const double most = most_noise * weighted_median(noise);
    for (Whole& whole : out)
        std::erase_if(whole.pieces, [&](const Piece& piece) { return piece.shape.noise_mm > most; });
    std::erase_if(out, [](const Whole& whole) { return whole.pieces.empty(); });
    std::sort(out.begin(), out.end(), [](const Whole& a, const Whole& b) { return a.length_mm > b.length_mm; });
    return out;
}

}  // namespace kempt::pattern
