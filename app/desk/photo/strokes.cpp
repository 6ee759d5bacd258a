#include "desk/photo/strokes.h"

#include "desk/look/colours.h"

namespace kempt::desk {

void cased(QPainter& painter, const QPainterPath& path, const QColor& core, double width, const QVector<double>& dashes,
           double casing) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(mark_colours().casing, width + casing, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(path);
    QPen pen(core, width, Qt::SolidLine, dashes.isEmpty() ? Qt::RoundCap : Qt::FlatCap, Qt::RoundJoin);
    if (!dashes.isEmpty()) pen.setDashPattern(dashes);
    painter.setPen(pen);
    painter.drawPath(path);
}

QPainterPath tick_at(QPointF middle, double radius) {
    return path_of({middle + QPointF(-radius, 0.1 * radius), middle + QPointF(-0.3 * radius, 0.8 * radius),
                    middle + QPointF(radius, -0.8 * radius)});
}

QPainterPath path_of(const QPolygonF& points, bool closed) {
    QPainterPath path;
    if (points.isEmpty()) return path;
    path.addPolygon(points);
    if (closed) path.closeSubpath();
    return path;
}

QPolygonF on_window(const ViewMap& map, const QVector<QPointF>& photo_points) {
    QPolygonF out;
    out.reserve(photo_points.size());
    for (const QPointF& p : photo_points) out << map.window_from_photo(p);
    return out;
}

void striped(QPainter& painter, const QPainterPath& path, double width) {
    painter.setBrush(Qt::NoBrush);
    QColor dark = mark_colours().casing;
    dark.setAlpha(255);
    painter.setPen(QPen(dark, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.drawPath(path);
    QPen pen(mark_colours().warning, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
    pen.setDashPattern({1.2, 1.2});
    painter.setPen(pen);
    painter.drawPath(path);
}

}  // namespace kempt::desk
