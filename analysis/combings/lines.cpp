#include "combings/lines.h"

#include <algorithm>
#include <cmath>

#include "combings/cells.h"
#include "core/rank.h"

namespace kempt::combings {
namespace {

constexpr float crowd_px = 3.2f;
constexpr int most_crowded = 24, least_clear = 10;

Line part_of(const Line& line, size_t from, size_t to) {
    Line out;
    out.at.assign(line.at.begin() + static_cast<std::ptrdiff_t>(from),
                  line.at.begin() + static_cast<std::ptrdiff_t>(to));
    out.strength.assign(line.strength.begin() + static_cast<std::ptrdiff_t>(from),
                        line.strength.begin() + static_cast<std::ptrdiff_t>(to));
    std::vector<float> strengths = out.strength;
    out.mass = at_rank(strengths, 0.5);
    out.sign = line.sign;
    out.shadow = line.shadow;
    out.noise = line.noise;
    return out;
}

}  // namespace

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
    std::vector<std::vector<std::pair<int, int>>> cut_by(lines.size());  // line and point, for each line that ends
    const auto look_beside_ends = [&](size_t l) {
        for (const bool last : {false, true}) {
            if (lines[l].doubted()) continue;
            const cv::Point2f e = last ? lines[l].at.back() : lines[l].at.front();
            const cv::Point c = cell_of(e);
            // Nearest inner point of each other line (or of this one, far along it).
            std::vector<std::pair<int, std::pair<int, float>>> nearest;
            work.spend(50);
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
                if (where.first > 1 && where.first < size - 2) cut_by[l].emplace_back(m, where.first);
            }
        }
    };
    const auto each_line = [&](const auto& act) {
        cv::parallel_for_(cv::Range(0, static_cast<int>(lines.size())), [&](const cv::Range& range) {
            for (int l = range.start; l < range.end && work.ok(); ++l) act(static_cast<size_t>(l));
        });
        return work.go(0);
    };
    if (!each_line(look_beside_ends)) return {};
    for (const auto& some : cut_by)
        for (const auto& [line, point] : some) cuts[static_cast<size_t>(line)].push_back(point);
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
    std::vector<std::vector<Line>> pieces(lines.size());
    const auto cut_up = [&](size_t l) {
        auto& cut = cuts[l];
        std::sort(cut.begin(), cut.end());
        int from = 0;
        const int size = static_cast<int>(lines[l].at.size());
        for (size_t c = 0; c <= cut.size(); ++c) {
            work.spend(50);
            int first = from, to = c < cut.size() ? cut[c] - trim : size;
            for (int n = 0; n < most_crowded && to - first > least_clear && crowded(static_cast<int>(l), first); ++n)
                ++first;
            for (int n = 0; n < most_crowded && to - first > least_clear && crowded(static_cast<int>(l), to - 1); ++n)
                --to;
            if (to - first >= 2)
                pieces[l].push_back(part_of(lines[l], static_cast<size_t>(first), static_cast<size_t>(to)));
            if (c < cut.size()) from = std::max(from, cut[c] + trim + 1);
        }
    };
    if (!each_line(cut_up)) return {};
    std::vector<Line> out;
    for (auto& some : pieces)
        for (Line& piece : some) (length_px(piece.at.size()) >= least_px ? out : crumbs).push_back(std::move(piece));
    return out;
}

}  // namespace kempt::combings
