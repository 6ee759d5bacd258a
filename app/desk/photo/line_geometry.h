// Distances to drawn and traced lines, in whatever pixels they come in.
#pragma once

#include <QPointF>
#include <QVector>

namespace kempt::desk {

[[nodiscard]] double length_between(QPointF a, QPointF b);
// The stretch of the line (index of its first point) nearest to `p`, and how far it is; -1 and infinity for fewer than
// two points.
struct NearestStretch {
    int stretch = -1;
    double distance = 0;
};
[[nodiscard]] NearestStretch nearest_stretch(const QVector<QPointF>& line, QPointF p);

}  // namespace kempt::desk
