#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "combings/lines.h"
#include "combings/point_tiles.h"
#include "core/rank.h"

namespace kempt::combings {
namespace {

// A step may turn by 35 degrees at most: the tightest curl of interest (curve diameter 3 mm) turns by 5 degrees a pixel
// at 8 px/mm; the rest is noise of a point's direction.
constexpr float most_turn = 0.82f;  // cosine
// Directions of points at a crossing mean nothing: the curvature along them is like that across.
constexpr float least_lean = 0.25f;

struct Walker {
    PointTiles& tiles;

    // A point of a walk, and what is free around it.
    struct Step {
        int k;
        PointTiles::Place place;
        PointTiles::Free free;
    };
    // Best continuation of a line along (dx, dy) among the free points around its last one; false: none.
    [[nodiscard]] KEMPT_WITHIN bool next(Step& at, bool dark, float dx, float dy) const {
        constexpr float ahead_px = 0.4f;  // pixels behind are not looked at
        const PointTiles::Way p = tiles.way(at.k);
        int best = -1;
        unsigned best_bit = 0;
        float least = 1e9f;
        for (uint32_t free = dark ? at.free.dark : at.free.all & ~at.free.dark; free != 0; free &= free - 1) {
            const unsigned bit = static_cast<unsigned>(std::countr_zero(free));
            const float u = static_cast<float>(static_cast<int>(bit % PointTiles::around) - PointTiles::reach),
                        v = static_cast<float>(static_cast<int>(bit / PointTiles::around) - PointTiles::reach);
            if (u * dx + v * dy < ahead_px) continue;
            const int k = tiles.point_at(PointTiles::place_at(at.place, bit));
            if (!dark && (tiles.lean(k) < least_lean || tiles.signed_strength(k) > 0)) continue;
            const PointTiles::Way& q = tiles.way(k);
            const float wx = q.x - p.x, wy = q.y - p.y, ahead = wx * dx + wy * dy, aside = std::abs(wx * dy - wy * dx),
                        turn = std::abs(q.tx * dx + q.ty * dy);
            const bool off = (ahead < 0.3f) | (ahead > 2.4f) | (aside > 0.9f * ahead + 0.15f) | (turn < most_turn);
            const float cost = ahead + 2 * aside + 3 * (1 - turn);
            if (!off && cost < least) least = cost, best = k, best_bit = bit;
        }
        at = {best, PointTiles::place_at(at.place, best_bit), {}};
        return best >= 0;
    }
    // Marks a point and those beside it that belong to the same line; sees what is left free around it.
    KEMPT_WITHIN void take(Step& at) {
        // The pixel itself and the eight around it.
        constexpr unsigned middle = PointTiles::reach * (PointTiles::around + 1), above = middle - PointTiles::around,
                           below = middle + PointTiles::around;
        constexpr uint32_t beside = 7U << (above - 1) | 7U << (middle - 1) | 7U << (below - 1);
        const PointTiles::Way& p = tiles.way(at.k);
        tiles.take(at.k, at.place);
        at.free = tiles.free_around(at.place);
        for (uint32_t free = at.free.all & beside; free != 0; free &= free - 1) {
            const unsigned bit = static_cast<unsigned>(std::countr_zero(free));
            const PointTiles::Place place = PointTiles::place_at(at.place, bit);
            const int k = tiles.point_at(place);
            const PointTiles::Way& q = tiles.way(k);
            const float wx = q.x - p.x, wy = q.y - p.y, aside = std::abs(wx * p.ty - wy * p.tx),
                        along = std::abs(wx * p.tx + wy * p.ty);
            if ((aside < 0.8f) & (along < 0.5f) & (std::abs(q.tx * p.tx + q.ty * p.ty) > most_turn)) {
                tiles.take(k, place);
                at.free.all &= ~(1U << bit), at.free.dark &= ~(1U << bit);
            }
        }
    }
    KEMPT_WITHIN void walk(Step at, bool dark, float dx, float dy, std::vector<int>& path) {
        while (next(at, dark, dx, dy)) {
            const PointTiles::Way q = tiles.way(at.k);
            tiles.expect_tile(at.place.column + static_cast<int>(20 * dx), at.place.row + static_cast<int>(20 * dy));
            tiles.expect_points(at.place.column + static_cast<int>(8 * dx), at.place.row + static_cast<int>(8 * dy));
            const float sign = q.tx * dx + q.ty * dy < 0 ? -1.f : 1.f;
            // The direction of travel lags a little behind that of the points, which evens their noise out.
            dx = 0.5f * dx + 0.5f * sign * q.tx, dy = 0.5f * dy + 0.5f * sign * q.ty;
            const float n = std::sqrt(dx * dx + dy * dy);
            dx /= n, dy /= n;
            take(at);
            path.push_back(at.k);
        }
    }
};

// The line through point i, which is taken as well: the points after it one way and the other.
KEMPT_TWICE void walk_both_ways(PointTiles& tiles, int i, std::vector<int>& forth, std::vector<int>& back) {
    Walker walker{tiles};
    Walker::Step at{i, tiles.place(i), {}};
    const PointTiles::Way p = tiles.way(i);
    const bool dark = tiles.signed_strength(i) > 0;
    back.clear();
    forth.clear();
    walker.take(at);
    walker.walk(at, dark, p.tx, p.ty, forth);
    at.free = tiles.free_around(at.place);
    walker.walk(at, dark, -p.tx, -p.ty, back);
}

// Points that a walk gives back at its ends.
struct Tails {
    size_t back = 0, forth = 0;
};

// A walk that lost its strand may go on along noise or a faint neighbour: tails far fainter than the line are given
// back. strength: of its points.
Tails faint_tails(const std::vector<float>& strength) {
    constexpr size_t window = 6;
    constexpr float faint = 0.4f;
    if (strength.size() < 4 * window) return {};
    // Both ends are as strong as more than half of the points, times `faint`: nothing is cut, whatever the median.
    const float weaker = std::min(std::accumulate(strength.begin(), strength.begin() + window, 0.f),
                                  std::accumulate(strength.rbegin(), strength.rbegin() + window, 0.f));
    size_t weak = 0;
    for (const float s : strength) weak += faint * s * static_cast<float>(window) <= weaker;
    if (weak > strength.size() / 2) return {};
    std::vector<float> sorted = strength;
    const float least_point = faint * at_rank(sorted, 0.5), least = least_point * static_cast<float>(window);
    const auto cut = [&](auto from, auto to) {  // points off the end until a whole window is strong
        size_t off = 0;
        for (; to - from > static_cast<std::ptrdiff_t>(2 * window); ++from, ++off)
            if (std::accumulate(from, from + window, 0.f) >= least) break;
        if (off == 0) return off;
        while (*from < least_point) ++from, ++off;
        return off;
    };
    const Tails tails{cut(strength.begin(), strength.end()), cut(strength.rbegin(), strength.rend())};
    return tails.back + tails.forth + 2 >= strength.size() ? Tails{} : tails;
}

// The points that a line may start at, strongest first, in 64 steps of the logarithm, then by rows.
std::vector<int> starts_of(const PointTiles& points, float least) {
    const size_t n = static_cast<size_t>(points.size());
    const float start = std::max(1e-6f, least);
    constexpr int steps = 64;
    std::vector<signed char> step_of(n, -1);
    cv::parallel_for_(cv::Range(0, points.size()), [&](const cv::Range& range) {
        for (int k = range.start; k < range.end; ++k) {
            const float strength = std::abs(points.signed_strength(k));
            if (strength < least || points.lean(k) < 0.5f) continue;
            const int above = static_cast<int>(12 * std::log2(std::max(1e-6f, strength) / start));
            step_of[static_cast<size_t>(k)] = static_cast<signed char>(steps - 1 - std::clamp(above, 0, steps - 1));
        }
    });
    std::array<size_t, steps + 1> at{};
    for (const signed char step : step_of)
        if (step >= 0) ++at[static_cast<size_t>(step) + 1];
    for (size_t s = 1; s < at.size(); ++s) at[s] += at[s - 1];
    std::vector<int> out(at.back());
    points.by_rows([&](int k) {
        if (const signed char step = step_of[static_cast<size_t>(k)]; step >= 0)
            out[at[static_cast<size_t>(step)]++] = k;
    });
    return out;
}

}  // namespace

std::vector<Line> string_lines(const Ridges& ridges, Work& work, const LineOptions& options) {
    PointTiles tiles(ridges, least_lean);
    // The points of all lines one after the other, and where each starts.
    std::vector<int> points;
    std::vector<size_t> starts;
    std::vector<int> back, forth;
    std::vector<float> strength;
    const auto release = [&](auto from, auto to) {
        for (; from != to; ++from) tiles.release(*from);
    };
    for (const int i : starts_of(tiles, static_cast<float>(options.start_snr) * ridges.noise)) {
        if (!tiles.is_free(i)) continue;
        if (!work.go(25 * static_cast<int64_t>(back.size() + forth.size() + 1))) return {};
        walk_both_ways(tiles, i, forth, back);
        const size_t first = points.size();
        points.insert(points.end(), back.rbegin(), back.rend());
        points.push_back(i);
        points.insert(points.end(), forth.begin(), forth.end());
        const auto own = points.begin() + static_cast<std::ptrdiff_t>(first);
        strength.clear();
        for (auto k = own; k != points.end(); ++k) strength.push_back(std::abs(tiles.signed_strength(*k)));
        const Tails tails = faint_tails(strength);
        const auto from = own + static_cast<std::ptrdiff_t>(tails.back),
                   to = points.end() - static_cast<std::ptrdiff_t>(tails.forth);
        release(own, from);
        release(to, points.end());
        points.erase(to, points.end());
        points.erase(own, from);
        if (length_px(points.size() - first) < options.least_length_px)
            points.resize(first);
        else
            starts.push_back(first);
    }
    std::vector<Line> lines(starts.size());
    starts.push_back(points.size());
    cv::parallel_for_(cv::Range(0, static_cast<int>(lines.size())), [&](const cv::Range& range) {
        std::vector<float> sorted;
        for (size_t l = static_cast<size_t>(range.start); l < static_cast<size_t>(range.end); ++l) {
            Line& line = lines[l];
            line.at.reserve(starts[l + 1] - starts[l]);
            line.strength.reserve(starts[l + 1] - starts[l]);
            for (size_t k = starts[l]; k < starts[l + 1]; ++k) {
                const PointTiles::Way& q = tiles.way(points[k]);
                line.at.emplace_back(q.x, q.y);
                line.strength.push_back(std::abs(tiles.signed_strength(points[k])));
            }
            sorted = line.strength;
            line.mass = at_rank(sorted, 0.5);
            line.sign = tiles.signed_strength(points[starts[l]]) > 0 ? 1.f : -1.f;  // all its points have the same
        }
    });
    return lines;
}

}  // namespace kempt::combings
