#include "combings/lines.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "combings/cells.h"

namespace kempt::combings {
namespace {

// A step may turn by 35 degrees at most: the tightest curl of interest (curve diameter 3 mm) turns by 5 degrees a pixel
// at 8 px/mm; the rest is noise of a point's direction.
constexpr float most_turn = 0.82f;  // cosine
// Directions of points at a crossing mean nothing: the curvature along them is like that across.
constexpr float least_lean = 0.25f;

struct Walker {
    const Ridges& ridges;
    std::vector<char>& used;

    // Best continuation of a line from point i along (dx, dy), -1 none.
    [[nodiscard]] int next(int i, float dx, float dy) const {
        const RidgePoint& p = ridges.points[static_cast<size_t>(i)];
        const cv::Point at = ridges.pixel(static_cast<size_t>(i));
        int best = -1;
        float least = 1e9f;
        // Pixels behind are not looked at, nor rows in which all are; a little more freely than asked below.
        constexpr float ahead_px = 0.4f;
        for (int v = -2; v <= 2; ++v) {
            const float least_u = ahead_px - 0.01f - static_cast<float>(v) * dy;
            int from = -2, to = 2;
            while (from <= 2 && static_cast<float>(from) * dx < least_u) ++from;
            while (to >= from && static_cast<float>(to) * dx < least_u) --to;
            if (from > to) continue;
            ridges.in_row(at.y + v, at.x + from, at.x + to, [&](int k) {
                const int u = ridges.bounds.x + ridges.points[static_cast<size_t>(k)].column - at.x;
                if (static_cast<float>(u) * dx + static_cast<float>(v) * dy < ahead_px) return;
                if (used[static_cast<size_t>(k)]) return;
                const RidgePoint& q = ridges.points[static_cast<size_t>(k)];
                const float wx = q.x - p.x, wy = q.y - p.y, ahead = wx * dx + wy * dy,
                            aside = std::abs(wx * dy - wy * dx);
                if (ahead < 0.3f || ahead > 2.4f || aside > 0.9f * ahead + 0.15f) return;
                const float turn = std::abs(q.tx * dx + q.ty * dy);
                if (turn < most_turn || q.lean < least_lean || q.sign != p.sign) return;
                const float cost = ahead + 2 * aside + 3 * (1 - turn);
                if (cost < least) least = cost, best = k;
            });
        }
        return best;
    }
    // Marks a point and those beside it that belong to the same line.
    void take(int i) {
        const RidgePoint& p = ridges.points[static_cast<size_t>(i)];
        const cv::Point at = ridges.pixel(static_cast<size_t>(i));
        used[static_cast<size_t>(i)] = 1;
        for (int v = -1; v <= 1; ++v)
            ridges.in_row(at.y + v, at.x - 1, at.x + 1, [&](int k) {
                if (used[static_cast<size_t>(k)]) return;
                const RidgePoint& q = ridges.points[static_cast<size_t>(k)];
                const float wx = q.x - p.x, wy = q.y - p.y, aside = std::abs(wx * p.ty - wy * p.tx),
                            along = std::abs(wx * p.tx + wy * p.ty);
                if (aside < 0.8f && along < 0.5f && std::abs(q.tx * p.tx + q.ty * p.ty) > most_turn)
                    used[static_cast<size_t>(k)] = 1;
            });
    }
    void walk(int i, float dx, float dy, std::vector<int>& path) {
        for (;;) {
            const int k = next(i, dx, dy);
            if (k < 0) return;
            const RidgePoint& q = ridges.points[static_cast<size_t>(k)];
            ridges.expect_index(static_cast<int>(q.x + 8 * dx), static_cast<int>(q.y + 8 * dy));
            ridges.expect_points(static_cast<int>(q.x + 5 * dx), static_cast<int>(q.y + 5 * dy));
            const float sign = q.tx * dx + q.ty * dy < 0 ? -1.f : 1.f;
            // The direction of travel lags a little behind that of the points, which evens their noise out.
            dx = 0.5f * dx + 0.5f * sign * q.tx, dy = 0.5f * dy + 0.5f * sign * q.ty;
            const float n = std::sqrt(dx * dx + dy * dy);
            dx /= n, dy /= n;
            take(k);
            path.push_back(k);
            i = k;
        }
    }
};

constexpr float crowd_px = 3.2f;
constexpr int most_crowded = 24, least_clear = 10;

float median(std::vector<float> v) {
    if (v.empty()) return 0;
    const auto middle = v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2);
    std::nth_element(v.begin(), middle, v.end());
    return *middle;
}

Line part_of(const Line& line, size_t from, size_t to) {
    Line out;
    out.at.assign(line.at.begin() + static_cast<std::ptrdiff_t>(from),
                  line.at.begin() + static_cast<std::ptrdiff_t>(to));
    out.strength.assign(line.strength.begin() + static_cast<std::ptrdiff_t>(from),
                        line.strength.begin() + static_cast<std::ptrdiff_t>(to));
    out.mass = median(out.strength);
    out.sign = line.sign;
    out.shadow = line.shadow;
    out.noise = line.noise;
    return out;
}

double length_of(const Line& line) {
    return line.at.size() < 2 ? 0 : static_cast<double>(line.at.size() - 1) * 1.05;
}

// A walk that lost its strand may go on along noise or a faint neighbour: tails far fainter than the line are given
// back.
void trim_tails(const Ridges& ridges, std::vector<int>& path, std::vector<char>& used) {
    constexpr size_t window = 6;
    constexpr float faint = 0.4f;
    if (path.size() < 4 * window) return;
    std::vector<float> strength;
    for (const int k : path) strength.push_back(ridges.points[static_cast<size_t>(k)].strength);
    const float least_point = faint * median(strength), least = least_point * static_cast<float>(window);
    const auto cut = [&](auto from, auto to) {  // points off the end until a whole window is strong
        size_t off = 0;
        for (; to - from > static_cast<std::ptrdiff_t>(2 * window); ++from, ++off)
            if (std::accumulate(from, from + window, 0.f) >= least) break;
        if (off == 0) return off;
        while (*from < least_point) ++from, ++off;
        return off;
    };
    const size_t back = cut(strength.begin(), strength.end()), forth = cut(strength.rbegin(), strength.rend());
    if (back + forth + 2 >= path.size()) return;
    const auto release = [&](auto from, auto to) {
        for (; from != to; ++from) used[static_cast<size_t>(*from)] = 0;
    };
    release(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(back));
    release(path.end() - static_cast<std::ptrdiff_t>(forth), path.end());
    path.erase(path.end() - static_cast<std::ptrdiff_t>(forth), path.end());
    path.erase(path.begin(), path.begin() + static_cast<std::ptrdiff_t>(back));
}

}  // namespace

std::vector<Line> string_lines(const Ridges& ridges, Work& work, const LineOptions& options) {
    std::vector<Line> lines;
    const size_t n = ridges.points.size();
    std::vector<char> used(n, 0);
    Walker walker{ridges, used};
    // Strongest first, in 64 steps of the logarithm.
    const float least = static_cast<float>(options.start_snr) * ridges.noise;
    const float start = std::max(1e-6f, least);
    const Cells<int> levels(64, [&, level_of = std::vector<signed char>()](const auto& put) mutable {
        const bool first = level_of.empty();
        if (first) level_of.assign(n, -1);
        for (size_t i = 0; i < n; ++i) {
            const RidgePoint& p = ridges.points[i];
            if (p.strength < least || p.lean < 0.5f) continue;
            if (first)
                level_of[i] = static_cast<signed char>(
                    std::clamp(static_cast<int>(12 * std::log2(std::max(1e-6f, p.strength) / start)), 0, 63));
            put(static_cast<size_t>(level_of[i]), static_cast<int>(i));
        }
    });
    std::vector<int> back, forth, path;
    for (size_t level = 64; level-- > 0;)
        for (const int* at = levels.begin(level); at != levels.end(level); ++at) {
            const int i = *at;
            if (used[static_cast<size_t>(i)]) continue;
            if (!work.go(25 * static_cast<int64_t>(back.size() + forth.size() + 1))) return lines;
            const RidgePoint& p = ridges.points[static_cast<size_t>(i)];
            walker.take(i);
            back.clear();
            forth.clear();
            walker.walk(i, p.tx, p.ty, forth);
            walker.walk(i, -p.tx, -p.ty, back);
            path.assign(back.rbegin(), back.rend());
            path.push_back(i);
            path.insert(path.end(), forth.begin(), forth.end());
            trim_tails(ridges, path, used);
            Line line;
            line.at.reserve(path.size());
            line.strength.reserve(path.size());
            for (const int k : path) {
                const RidgePoint& q = ridges.points[static_cast<size_t>(k)];
                line.at.emplace_back(q.x, q.y);
                line.strength.push_back(q.strength);
            }
            if (length_of(line) < options.least_length_px) continue;
            line.mass = median(line.strength);
            line.sign = p.sign;
            lines.push_back(std::move(line));
        }
    return lines;
}

std::vector<Line> cut_at_crossings(const std::vector<Line>& lines, cv::Rect bounds, double reach_px, double trim_px,
                                   double least_px, std::vector<Line>& crumbs, Work& work) {
    // All points in a grid of coarse cells.
    constexpr int side = 8;
    const int nx = bounds.width / side + 2, ny = bounds.height / side + 2;
    auto cell_of = [&](cv::Point2f p) {
        const int i = std::clamp((static_cast<int>(p.x) - bounds.x) / side, 0, nx - 1),
                  j = std::clamp((static_cast<int>(p.y) - bounds.y) / side, 0, ny - 1);
        return cv::Point(i, j);
    };
    struct Place {
        int line, point;
        cv::Point2f at;
    };
    const Cells<Place> grid(static_cast<size_t>(nx) * static_cast<size_t>(ny), [&](const auto& put) {
        for (size_t l = 0; l < lines.size(); ++l)
            for (size_t k = 0; k < lines[l].at.size(); ++k) {
                const cv::Point c = cell_of(lines[l].at[k]);
                put(static_cast<size_t>(c.y) * static_cast<size_t>(nx) + static_cast<size_t>(c.x),
                    Place{static_cast<int>(l), static_cast<int>(k), lines[l].at[k]});
            }
    });
    // All points of the cells around one, row by row, while act(place) wants more; false: it wanted no more.
    const auto around = [&](cv::Point c, const auto& act) {
        const int i0 = std::max(0, c.x - 1), i1 = std::min(nx - 1, c.x + 1);
        for (int j = std::max(0, c.y - 1); j <= std::min(ny - 1, c.y + 1); ++j) {
            const size_t row = static_cast<size_t>(j) * static_cast<size_t>(nx);
            const Place* last = grid.end(row + static_cast<size_t>(i1));
            for (const Place* p = grid.begin(row + static_cast<size_t>(i0)); p != last; ++p)
                if (!act(*p)) return false;
        }
        return true;
    };
    const int trim = static_cast<int>(std::lround(trim_px));
    std::vector<std::vector<int>> cuts(lines.size());
    for (size_t l = 0; l < lines.size(); ++l)
        for (const bool last : {false, true}) {
            if (lines[l].doubted()) continue;
            const cv::Point2f e = last ? lines[l].at.back() : lines[l].at.front();
            const cv::Point c = cell_of(e);
            // Nearest inner point of each other line (or of this one, far along it).
            std::vector<std::pair<int, std::pair<int, float>>> nearest;
            if (!work.go(50)) return {};
            around(c, [&](const Place& p) {
                const cv::Point2f d = p.at - e;
                const float away = d.x * d.x + d.y * d.y;
                if (away > reach_px * reach_px) return true;
                const int m = p.line, k = p.point;
                if (m == static_cast<int>(l)) {
                    const int own = last ? static_cast<int>(lines[l].at.size()) - 1 - k : k;
                    if (own < 4 * reach_px) return true;
                }
                auto at = std::find_if(nearest.begin(), nearest.end(), [&](const auto& q) { return q.first == m; });
                if (at == nearest.end())
                    nearest.push_back({m, {k, away}});
                else if (away < at->second.second)
                    at->second = {k, away};
                return true;
            });
            for (const auto& [m, where] : nearest) {
                const int size = static_cast<int>(lines[static_cast<size_t>(m)].at.size());
                if (where.first > 1 && where.first < size - 2) cuts[static_cast<size_t>(m)].push_back(where.first);
            }
        }
    // Where another line lies beside a point, the ridge is drawn towards it and its direction is not the strand's.
    auto crowded = [&](int l, int k) {
        const cv::Point2f p = lines[static_cast<size_t>(l)].at[static_cast<size_t>(k)];
        const bool clear = !lines[static_cast<size_t>(l)].doubted();
        return !around(cell_of(p), [&](const Place& q) {
            const cv::Point2f d = q.at - p;
            if (!(d.dot(d) < crowd_px * crowd_px) || (q.line == l && std::abs(q.point - k) < 12)) return true;
            return clear && lines[static_cast<size_t>(q.line)].doubted();
        });
    };
    std::vector<Line> out;
    for (size_t l = 0; l < lines.size(); ++l) {
        auto& cut = cuts[l];
        std::sort(cut.begin(), cut.end());
        int from = 0;
        const int size = static_cast<int>(lines[l].at.size());
        for (size_t c = 0; c <= cut.size(); ++c) {
            if (!work.go(50)) return {};
            int first = from, to = c < cut.size() ? cut[c] - trim : size;
            for (int n = 0; n < most_crowded && to - first > least_clear && crowded(static_cast<int>(l), first); ++n)
                ++first;
            for (int n = 0; n < most_crowded && to - first > least_clear && crowded(static_cast<int>(l), to - 1); ++n)
                --to;
            if (to - first >= 2) {
                Line piece = part_of(lines[l], static_cast<size_t>(first), static_cast<size_t>(to));
                (length_of(piece) >= least_px ? out : crumbs).push_back(std::move(piece));
            }
            if (c < cut.size()) from = std::max(from, cut[c] + trim + 1);
        }
    }
    return out;
}

}  // namespace kempt::combings
