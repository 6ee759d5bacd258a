#include "desk/photo/canvas_painter.h"

#include <QLineF>
#include <QPainterPath>
#include <cmath>

#include "desk/look/colours.h"

namespace kempt::desk {
namespace {

// A stroke twice: casing below, core above.
void cased(QPainter& painter, const QPainterPath& path, const QColor& core, double width) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(mark_colours().casing, width + 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(path);
    painter.setPen(QPen(core, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(path);
}

// +1 when the hair lies to the left of the line's own direction on the screen (y down), else -1.
double side_of(const QVector<QPointF>& line, QPointF hair) {
    double nearest = 1e30, side = 1;
    for (int i = 0; i + 1 < line.size(); ++i) {
        const QPointF d = line[i + 1] - line[i], to = hair - line[i];
        const double length2 = QPointF::dotProduct(d, d);
        if (length2 <= 0) continue;
        const double t = std::clamp(QPointF::dotProduct(to, d) / length2, 0.0, 1.0);
        const double distance = QLineF(hair, line[i] + t * d).length();
        if (distance < nearest) {
            nearest = distance;
            side = d.x() * to.y() - d.y() * to.x() >= 0 ? 1 : -1;
        }
    }
    return side;
}

// Teeth of a comb along the line, pointing to where the hair is.
QPainterPath teeth(const QPolygonF& line, double side, double spacing, double length) {
    QPainterPath path;
    double carried = spacing / 2;
    for (int i = 0; i + 1 < line.size(); ++i) {
        const QLineF stretch(line[i], line[i + 1]);
        if (stretch.length() <= 0) continue;
        const QPointF along = (stretch.p2() - stretch.p1()) / stretch.length();
        const QPointF across = QPointF(-along.y(), along.x()) * side;
        double at = carried;
        for (; at < stretch.length(); at += spacing) {
            const QPointF root = stretch.p1() + along * at;
            path.moveTo(root);
            path.lineTo(root + across * length);
        }
        carried = at - stretch.length();
    }
    return path;
}

void dot(QPainter& painter, QPointF p, double radius, const QColor& core, bool picked, bool hovered, bool keyboard) {
    const double r = hovered || picked ? radius * 1.25 : radius;
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark_colours().casing);
    painter.drawEllipse(p, r + 2, r + 2);
    painter.setBrush(picked ? mark_colours().picked : core);
    painter.drawEllipse(p, r, r);
    if (!picked) return;
    QPainterPath ring;
    ring.addEllipse(p, r + 6, r + 6);
    if (keyboard) {
        for (const QPointF d : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
            ring.moveTo(p + d * (r + 6));
            ring.lineTo(p + d * (r + 12));
        }
    }
    cased(painter, ring, mark_colours().picked, 1.6);
}

void cross(QPainter& painter, QPointF p, double radius, const QColor& core, bool picked, bool hovered, bool keyboard) {
    QPainterPath path;
    path.moveTo(p - QPointF(radius, 0));
    path.lineTo(p + QPointF(radius, 0));
    path.moveTo(p - QPointF(0, radius));
    path.lineTo(p + QPointF(0, radius));
    cased(painter, path, picked ? mark_colours().picked : core, hovered ? 3 : 2);
    if (picked) dot(painter, p, radius * 0.3, core, true, false, keyboard);
}

}  // namespace

void paint_marks(QPainter& painter, const ViewMap& map, const MarksScene& scene) {
    const Marks& marks = scene.editor->marks();
    const MarkColours& c = mark_colours();
    const double s = scene.scale;
    painter.setRenderHint(QPainter::Antialiasing);
    const auto on_window = [&map](const auto& points) {
        QPolygonF out;
        for (const QPointF& p : points) out << map.window_from_photo(p);
        return out;
    };
    const auto is = [](const std::optional<Handle>& h, MarkKind kind, int i) {
        return h && h->kind == kind && h->index == i;
    };

    if (scene.band.size() > 2) {
        QPainterPath path;
        path.addPolygon(on_window(scene.band));
        path.closeSubpath();
        cased(painter, path, QColor(255, 255, 255, 120), 1);
    }
    const QPolygonF line = on_window(marks.edge_line);
    if (line.size() >= 2) {
        if (const auto hair = scene.editor->shown_hair_side())
            cased(painter, teeth(line, side_of(marks.edge_line, *hair), 13 * s, 9 * s), c.line, 1.4 * s);
        QPainterPath path;
        path.addPolygon(line);
        cased(painter, path, c.line, 2.2 * s);
    }
    if (marks.hair_side) {
        const QPointF at = map.window_from_photo(*marks.hair_side);
        QPainterPath sign;  // three strands
        for (int i = -1; i <= 1; ++i) {
            sign.moveTo(at + QPointF(i * 4.5, 7) * s);
            sign.cubicTo(at + QPointF(i * 4.5 - 3, 1) * s, at + QPointF(i * 4.5 + 4, -2) * s,
                         at + QPointF(i * 4.5, -8) * s);
        }
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.casing);
        painter.drawEllipse(at, 13 * s, 13 * s);
        const bool picked = is(scene.picked, MarkKind::hair_side, 0);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(picked ? c.picked : c.line, 1.8 * s, Qt::SolidLine, Qt::RoundCap));
        painter.drawPath(sign);
        if (picked || is(scene.hovered, MarkKind::hair_side, 0)) painter.drawEllipse(at, 15 * s, 15 * s);
    }
    if (marks.scale_points.size() == 2) {
        QPainterPath path;
        path.addPolygon(on_window(marks.scale_points));
        cased(painter, path, c.ruler, 1.6 * s);
    }
    const auto each = [&](const QVector<QPointF>& points, MarkKind kind, auto draw, double size, const QColor& core) {
        for (int i = 0; i < points.size(); ++i)
            draw(painter, map.window_from_photo(points[i]), size * s, core, is(scene.picked, kind, i),
                 is(scene.hovered, kind, i), scene.keyboard);
    };
    each(marks.edge_line, MarkKind::edge_point, dot, 4.5, c.line);
    each(marks.hair_taps, MarkKind::hair_tap, dot, 6, c.hair);
    each(marks.scalp_taps, MarkKind::scalp_tap, dot, 6, c.scalp);
    each(marks.scale_points, MarkKind::scale_point, cross, 11, c.ruler);
}

void paint_glass(QPainter& painter, const ViewMap& map, const Picture& picture, QPointF photo_point, QSizeF window,
                 double scale) {
    const double radius = 70 * scale, inset = 16;
    const QPointF under = map.window_from_photo(photo_point);
    const bool right = under.x() < window.width() / 2;
    const QPointF centre(right ? window.width() - radius - inset : radius + inset, radius + inset);
    const double zoom = std::max(map.zoom() * 3, 1.0);
    const double reach = radius / zoom;
    const QImage& image = picture.levels.front();
    QPainterPath disc;
    disc.addEllipse(centre, radius, radius);
    painter.save();
    painter.setClipPath(disc);
    painter.fillPath(disc, mark_colours().casing);
    const QRectF source(photo_point.x() - reach, photo_point.y() - reach, reach * 2, reach * 2);
    painter.drawImage(QRectF(centre - QPointF(radius, radius), QSizeF(radius * 2, radius * 2)), image, source);
    painter.restore();
    cased(painter, disc, mark_colours().line, 1.5);
    QPainterPath hair;
    for (const QPointF d : {QPointF(1, 0), QPointF(-1, 0), QPointF(0, 1), QPointF(0, -1)}) {
        hair.moveTo(centre + d * 5);
        hair.lineTo(centre + d * 16);
    }
    cased(painter, hair, mark_colours().picked, 1.4);
}

}  // namespace kempt::desk
