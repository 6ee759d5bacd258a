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
    const QPolygonF& path = strands[strand].path;
    const qsizetype step = std::max<qsizetype>(1, path.size() / 60);  // closer points would be alike
    QPointF best = path.value(path.size() / 2);
    double farthest = -1;
    for (qsizetype i = 0; i < path.size(); i += step) {
        double nearest = 1e9;
        for (int other = 0; other < strands.size(); ++other)
            if (other != strand) nearest = std::min(nearest, nearest_stretch(strands[other].path, path[i]).distance);
        // Of points that lie alike free the one nearest to the middle.
        const double middle = 1 - std::abs(2.0 * static_cast<double>(i) / static_cast<double>(path.size()) - 1);
        const double free = std::min(nearest, 100.0) + middle;
        if (free > farthest) {
            farthest = free;
            best = path[i];
        }
    }
    return best;
}

}  // namespace kempt::desk
