// Strokes that are seen on every hair, every skin and on paper: a dark casing under a bright core.
#pragma once

#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>

#include "desk/photo/view_map.h"

namespace kempt::desk {

// dashes: in multiples of the width, as QPen takes them; the casing stays whole. casing: how much wider it is.
void cased(QPainter& painter, const QPainterPath& path, const QColor& core, double width,
           const QVector<double>& dashes = {}, double casing = 3);
[[nodiscard]] QPainterPath path_of(const QPolygonF& points, bool closed = false);
[[nodiscard]] QPainterPath tick_at(QPointF middle, double radius);
[[nodiscard]] QPolygonF on_window(const ViewMap& map, const QVector<QPointF>& photo_points);
// Black and bright by turns: something could not be made out.
void striped(QPainter& painter, const QPainterPath& path, double width);

}  // namespace kempt::desk
