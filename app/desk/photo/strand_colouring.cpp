#include <QHash>
#include <QSet>
#include <algorithm>
#include <cmath>

#include "desk/photo/line_geometry.h"
#include "desk/photo/overlay.h"

namespace kempt::desk {

QVector<int> colours_for(const QVector<QPolygonF>& paths, int colours, double near_px) {
    QVector<int> chosen(paths.size(), 0);
    if (colours < 1) return chosen;
    // Which strands pass through each cell of a coarse grid.
    const double cell = std::max(1.0, near_px);
    QHash<QPair<int, int>, QVector<int>> through;
    QVector<QSet<QPair<int, int>>> cells(paths.size());
    for (int i = 0; i < paths.size(); ++i) {
        const QPolygonF& path = paths[i];
        for (int k = 0; k < path.size(); ++k) {
            const QPointF a = path[k], b = path[std::min(k + 1, static_cast<int>(path.size()) - 1)];
            const int steps = 1 + static_cast<int>(std::hypot(b.x() - a.x(), b.y() - a.y()) / cell);
            for (int s = 0; s <= steps; ++s) {
                const QPointF p = a + (b - a) * s / steps;
                cells[i].insert(
                    {static_cast<int>(std::floor(p.x() / cell)), static_cast<int>(std::floor(p.y() / cell))});
            }
        }
        for (const auto& c : std::as_const(cells[i])) through[c].append(i);
    }
    QVector<int> used(colours, 0);
    for (int i = 0; i < paths.size(); ++i) {
        QVector<int> beside(colours, 0);
        QSet<int> seen;
        for (const auto& c : std::as_const(cells[i]))
            for (int dx = -1; dx <= 1; ++dx)
                for (int dy = -1; dy <= 1; ++dy)
                    for (const int other : through.value({c.first + dx, c.second + dy})) {
                        if (other >= i || seen.contains(other)) continue;
                        seen.insert(other);
                        ++beside[chosen[other]];
                    }
        int best = 0;
        for (int c = 1; c < colours; ++c)
            if (std::pair(beside[c], used[c]) < std::pair(beside[best], used[best])) best = c;
        chosen[i] = best;
        ++used[best];
    }
    return chosen;
}

QPointF own_point(const QVector<ShownStrand>& strands, int strand) {
    constexpr int samples = 60;  // along the strand; closer points would be alike
    const QPolygonF& path = strands[strand].path;
    double length = 0;
    for (qsizetype i = 1; i < path.size(); ++i) length += length_between(path[i - 1], path[i]);
    QPointF best = path.value(path.size() / 2);
    double farthest = -1, walked = 0;
    qsizetype stretch = 1;
    for (int k = 0; k < samples && length > 0; ++k) {
        const double share = (k + 0.5) / samples;
        while (stretch + 1 < path.size() &&
               walked + length_between(path[stretch - 1], path[stretch]) < share * length) {
            walked += length_between(path[stretch - 1], path[stretch]);
            ++stretch;
        }
        const QPointF from = path[stretch - 1], to = path[stretch];
        const double part = length_between(from, to);
        const QPointF p = part > 0 ? from + (to - from) * ((share * length - walked) / part) : from;
        double nearest = 100;  // px; farther off no strand is in the way
        for (int other = 0; other < strands.size(); ++other)
            if (other != strand) nearest = std::min(nearest, nearest_stretch(strands[other].path, p).distance);
        // Of points that lie alike free the one nearest to the middle.
        const double free = nearest + 1 - std::abs(2 * share - 1);
        if (free > farthest) {
            farthest = free;
            best = p;
        }
    }
    return best;
}

}  // namespace kempt::desk
