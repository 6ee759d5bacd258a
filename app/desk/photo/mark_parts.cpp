#include "desk/photo/mark_parts.h"

#include <QCoreApplication>
#include <QStringList>

#include "domain/readings.h"

namespace kempt::desk {
namespace {

double turn(QPointF a, QPointF b, QPointF c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

bool sides_cross(QPointF a, QPointF b, QPointF c, QPointF d) {
    return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

bool whole_region(const QVector<QPointF>& corners) {
    return corners.size() == 4 && !crosses_itself(corners);
}

}  // namespace

bool crosses_itself(const QVector<QPointF>& p) {
    return p.size() == 4 && (sides_cross(p[0], p[1], p[2], p[3]) || sides_cross(p[1], p[2], p[3], p[0]));
}

Marks finished_part(const Marks& marks) {
    Marks whole = marks;
    if (whole.edge_line.size() < 2 || !whole.hair_side) {
        whole.edge_line.clear();
        whole.hair_side.reset();
    }
    if (whole.strand_line.size() < 2) whole.strand_line.clear();
    if (!whole_region(whole.shine_region)) whole.shine_region.clear();
    if (!whole_region(whole.region)) {
        // The whole sheet is looked at only when no region was begun.
        if (whole.sheet == u"hem" || !whole.region.isEmpty()) whole.sheet.clear();
        whole.region.clear();
    }
    if (whole.sheet != u"combings") {
        whole.not_hair.clear();
        whole.joined.clear();
        whole.whole.clear();
    }
    if (whole.scale_points.size() != 2 || !(whole.scale_mm > 0)) {
        whole.scale_points.clear();
        whole.scale_mm = 0;
    }
    return whole;
}

bool all_finished(const Marks& marks) {
    const Marks whole = finished_part(marks);
    return whole.edge_line == marks.edge_line && whole.strand_line == marks.strand_line &&
           whole.shine_region == marks.shine_region && whole.region == marks.region && whole.sheet == marks.sheet &&
           whole.scale_points == marks.scale_points;
}

QString half_drawn_words(const Marks& marks) {
    const Marks whole = finished_part(marks);
    const auto words = [](const char* text) { return QCoreApplication::translate("kempt::desk::Marks", text); };
    QStringList left;
    if (marks.edge_line.size() == 1) left.append(words("the edge line has one point only"));
    if (marks.edge_line.size() > 1 && whole.edge_line.isEmpty()) left.append(words("the edge line has no hair side"));
    if (marks.strand_line.size() == 1) left.append(words("the line for the tone has one point only"));
    if (marks.shine_region != whole.shine_region) left.append(words("the region for the shine is not whole"));
    if (marks.region != whole.region || marks.sheet != whole.sheet)
        left.append(words("the region on the sheet is not whole"));
    if (marks.scale_points != whole.scale_points) left.append(words("the ruler has no length"));
    return left.isEmpty() ? QString() : left.join(QStringLiteral(", ")) + QLatin1Char('.');
}

bool nothing_drawn(const Marks& m) {
    return m.edge_line.isEmpty() && m.hair_taps.isEmpty() && m.scalp_taps.isEmpty() && m.shine_region.isEmpty() &&
           m.strand_line.isEmpty() && m.region.isEmpty() && m.anchors.isEmpty() && m.sheet.isEmpty() &&
           m.scale_points.isEmpty();
}

bool ready_to_measure(const Marks& marks) {
    return !groups_asked_by(finished_part(marks)).isEmpty();
}

}  // namespace kempt::desk
