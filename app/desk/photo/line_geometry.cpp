#include "desk/photo/line_geometry.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace kempt::desk {
namespace {

double distance_to_stretch(QPointF p, QPointF a, QPointF b) {
    const QPointF d = b - a;
    const double length2 = QPointF::dotProduct(d, d);
    const double t = length2 > 0 ? std::clamp(QPointF::dotProduct(p - a, d) / length2, 0.0, 1.0) : 0.0;
    return length_between(p, a + t * d);
}

}  // namespace

double length_between(QPointF a, QPointF b) {
    return std::hypot(b.x() - a.x(), b.y() - a.y());
}

NearestStretch nearest_stretch(const QVector<QPointF>& line, QPointF p) {
    NearestStretch best{-1, std::numeric_limits<double>::infinity()};
    for (int i = 0; i + 1 < line.size(); ++i)
        if (const double d = distance_to_stretch(p, line[i], line[i + 1]); d <= best.distance) best = {i, d};
    return best;
}

}  // namespace kempt::desk
