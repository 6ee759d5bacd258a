#include "desk/photo/canvas_painter.h"

#include <QLineF>
#include <QPainterPath>
#include <cmath>

#include "desk/look/colours.h"
#include "desk/photo/strokes.h"

namespace kempt::desk {
namespace {

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

// Corners of regions are square, so that they are not taken for points of a line.
void corner(QPainter& painter, QPointF p, double radius, const QColor& core, bool picked, bool hovered, bool keyboard) {
    if (picked) dot(painter, p, radius, core, true, false, keyboard);
    const double r = hovered || picked ? radius * 1.25 : radius;
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark_colours().casing);
    painter.drawRect(QRectF(p - QPointF(r + 2, r + 2), p + QPointF(r + 2, r + 2)));
    painter.setBrush(picked ? mark_colours().picked : core);
    painter.drawRect(QRectF(p - QPointF(r, r), p + QPointF(r, r)));
}

QPainterPath diamond(QPointF p, double r) {
    return path_of({p - QPointF(0, r), p + QPointF(r, 0), p + QPointF(0, r), p - QPointF(r, 0)}, true);
}

void anchor(QPainter& painter, QPointF p, double radius, const QColor& core, bool picked, bool hovered, bool keyboard) {
    if (picked) dot(painter, p, radius, core, true, false, keyboard);
    painter.setPen(QPen(mark_colours().casing, 3));
    painter.setBrush(picked ? mark_colours().picked : core);
    painter.drawPath(diamond(p, hovered || picked ? radius * 1.5 : radius * 1.25));
}

// Anchors are told apart by their numbers: their order must be the same at each visit.
void number(QPainter& painter, QPointF p, int number, double s) {
    QFont font = painter.font();
    font.setPixelSize(static_cast<int>(12.5 * s));
    font.setBold(true);
    QPainterPath words;
    words.addText(p + QPointF(9, -7) * s, font, QString::number(number));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(mark_colours().casing, 3.5 * s, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(words);
    painter.fillPath(words, mark_colours().anchor);
}

// A region: open until it has its four corners; then with the comb on its first side, which lies towards the roots and
// through which the hair comes in.
void region(QPainter& painter, const QPolygonF& corners, bool rooted, double s) {
    const QColor& core = mark_colours().region;
    if (corners.size() < 2) return;
    if (corners.size() == 4 && rooted) {
        const QPointF middle = (corners[0] + corners[1] + corners[2] + corners[3]) / 4;
        const QPolygonF side{corners[0], corners[1]};
        cased(painter, teeth(side, side_of(side, middle), 13 * s, 9 * s), core, 1.4 * s);
    }
    cased(painter, path_of(corners, corners.size() == 4), core, 1.8 * s);
}

// From the scalp (a ring) to the ends (a barb).
void strand_line(QPainter& painter, const QPolygonF& line, double s) {
    const QColor& core = mark_colours().strand;
    QPainterPath path = path_of(line);
    if (line.size() >= 2) {
        QLineF back(line.last(), line[line.size() - 2]);
        const double angle = back.angle();
        back.setLength(16 * s);
        for (const double turn : {25.0, -25.0}) {
            back.setAngle(angle + turn);
            path.moveTo(line.last());
            path.lineTo(back.p2());
        }
    }
    if (!line.isEmpty()) path.addEllipse(line.first(), 9 * s, 9 * s);
    cased(painter, path, core, 2 * s);
}

// Three strands in a disc.
void hair_sign(QPainter& painter, QPointF at, bool picked, bool hovered, double s) {
    const MarkColours& c = mark_colours();
    QPainterPath sign;
    for (int i = -1; i <= 1; ++i) {
        sign.moveTo(at + QPointF(i * 4.5, 7) * s);
        sign.cubicTo(at + QPointF(i * 4.5 - 3, 1) * s, at + QPointF(i * 4.5 + 4, -2) * s,
                     at + QPointF(i * 4.5, -8) * s);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.casing);
    painter.drawEllipse(at, 13 * s, 13 * s);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(picked ? c.picked : c.line, 1.8 * s, Qt::SolidLine, Qt::RoundCap));
    painter.drawPath(sign);
    if (picked || hovered) painter.drawEllipse(at, 15 * s, 15 * s);
}

// On a strand that was taken out by hand.
void taken_out(QPainter& painter, QPointF p, double radius, const QColor& core, bool picked, bool hovered,
               bool keyboard) {
    const double r = hovered || picked ? radius * 1.25 : radius;
    QPainterPath path;
    path.moveTo(p - QPointF(r, r));
    path.lineTo(p + QPointF(r, r));
    path.moveTo(p - QPointF(r, -r));
    path.lineTo(p + QPointF(r, -r));
    cased(painter, path, picked ? mark_colours().picked : core, 2.2);
    if (picked) dot(painter, p, radius * 0.4, core, true, false, keyboard);
}

// A tick: a strand that is a hair of its own.
void whole_hair(QPainter& painter, QPointF p, double radius, const QColor& core, bool picked, bool hovered,
                bool keyboard) {
    const double r = hovered || picked ? radius * 1.25 : radius;
    cased(painter, tick_at(p, r), picked ? mark_colours().picked : core, 2.2);
    if (picked) dot(painter, p, radius * 0.4, core, true, false, keyboard);
}

// Two strands that were joined by hand: a link between their marks.
void links(QPainter& painter, const QPolygonF& ends, double s) {
    for (qsizetype i = 0; i + 1 < ends.size(); i += 2)
        cased(painter, path_of({ends[i], ends[i + 1]}), mark_colours().warning, 1.6 * s, {2, 2});
}

}  // namespace

void paint_marks(QPainter& painter, const ViewMap& map, const MarksScene& scene) {
    const Marks& marks = scene.editor->marks();
    const MarkColours& c = mark_colours();
    const double s = scene.scale;
    painter.setRenderHint(QPainter::Antialiasing);
    const auto is = [](const std::optional<Handle>& h, MarkKind kind, int i) {
        return h && h->kind == kind && h->index == i;
    };
    if (scene.band.size() > 2) cased(painter, path_of(on_window(map, scene.band), true), QColor(255, 255, 255, 120), 1);
    region(painter, on_window(map, marks.region), marks.sheet == u"hem", s);
    region(painter, on_window(map, marks.shine_region), true, s);
    const QPolygonF line = on_window(map, marks.edge_line);
    if (line.size() >= 2) {
        if (const auto hair = scene.editor->shown_hair_side())
            cased(painter, teeth(line, side_of(marks.edge_line, *hair), 13 * s, 9 * s), c.line, 1.4 * s);
        cased(painter, path_of(line), c.line, 2.2 * s);
    }
    strand_line(painter, on_window(map, marks.strand_line), s);
    if (marks.hair_side)
        hair_sign(painter, map.window_from_photo(*marks.hair_side), is(scene.picked, MarkKind::hair_side, 0),
                  is(scene.hovered, MarkKind::hair_side, 0), s);
    if (marks.scale_points.size() == 2) cased(painter, path_of(on_window(map, marks.scale_points)), c.ruler, 1.6 * s);
    const auto each = [&](const QVector<QPointF>& points, MarkKind kind, auto draw, double size, const QColor& core) {
        for (int i = 0; i < points.size(); ++i)
            draw(painter, map.window_from_photo(points[i]), size * s, core, is(scene.picked, kind, i),
                 is(scene.hovered, kind, i), scene.keyboard);
    };
    links(painter, on_window(map, marks.joined), s);
    each(marks.joined, MarkKind::join_point, dot, 4, c.warning);
    each(marks.not_hair, MarkKind::not_hair, taken_out, 6, c.warning);
    each(marks.whole, MarkKind::whole, whole_hair, 6, c.warning);
    each(marks.region, MarkKind::region_corner, corner, 4.5, c.region);
    each(marks.shine_region, MarkKind::shine_corner, corner, 4.5, c.region);
    each(marks.edge_line, MarkKind::edge_point, dot, 4.5, c.line);
    each(marks.strand_line, MarkKind::strand_point, dot, 4.5, c.strand);
    each(marks.hair_taps, MarkKind::hair_tap, dot, 6, c.hair);
    each(marks.scalp_taps, MarkKind::scalp_tap, dot, 6, c.scalp);
    each(marks.anchors, MarkKind::anchor, anchor, 6, c.anchor);
    for (int i = 0; i < marks.anchors.size(); ++i) number(painter, map.window_from_photo(marks.anchors[i]), i + 1, s);
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
