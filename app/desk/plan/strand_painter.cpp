#include "desk/plan/strand_painter.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "desk/look/colours.h"

namespace kempt::desk {
namespace {

QColor colour_of(LaneSort sort, const Colours& c) {
    return sort == LaneSort::planned || sort == LaneSort::texture ? c.accent
           : sort == LaneSort::gentle                             ? c.outline
                                                                  : c.ink_soft;
}

// A brush stroke along the hair: thick where it surely went, dotted where it perhaps did. Lightened hair is hollow.
void stroke(QPainter& painter, const StrandPicture& p, const StrandLane& lane, const care::Span& span, bool surely,
            const Colours& c) {
    const double a = p.x_of(span.from_mm), b = p.x_of(span.to_mm), thick = lane.sort == LaneSort::gentle ? 4 : 8;
    const QColor colour = colour_of(lane.sort, c);
    if (!surely) {
        painter.setPen(QPen(colour, 2.6, Qt::DotLine, Qt::RoundCap));
        painter.drawLine(QPointF(a, lane.y), QPointF(b, lane.y));
        return;
    }
    painter.setPen(QPen(colour, 1.6));
    painter.setBrush(lane.sort == LaneSort::lightening ? QBrush(c.surface) : QBrush(colour));
    painter.drawRoundedRect(QRectF(QPointF(a, lane.y - thick / 2), QPointF(b, lane.y + thick / 2)), thick / 2,
                            thick / 2);
}

void paint_lane(QPainter& painter, const StrandPicture& p, const StrandLane& lane, const Colours& c,
                const QFont& font) {
    QFont strong = font;
    strong.setBold(lane.sort == LaneSort::planned);
    const QFontMetricsF metrics(strong);
    // Words stand on clear ground, whatever lines run there.
    const double width = metrics.horizontalAdvance(lane.name) + 14 + QFontMetricsF(font).horizontalAdvance(lane.when);
    painter.fillRect(QRectF(lane.label.topLeft(), QSizeF(width, lane.label.height())), c.surface);
    painter.setFont(strong);
    painter.setPen(lane.sort == LaneSort::planned ? c.accent : c.ink);
    painter.drawText(lane.label, Qt::AlignLeft | Qt::AlignVCenter, lane.name);
    painter.setFont(font);
    painter.setPen(c.ink_soft);
    painter.drawText(lane.label.adjusted(metrics.horizontalAdvance(lane.name) + 10, 0, 0, 0),
                     Qt::AlignLeft | Qt::AlignVCenter, lane.when);
    // The hair itself, from its root to its end.
    painter.setPen(QPen(c.line, 1.6, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(p.left - 4, lane.y), QPointF(p.right, lane.y));
    for (const care::Span& span : lane.perhaps) stroke(painter, p, lane, span, false, c);
    for (const care::Span& span : lane.surely) stroke(painter, p, lane, span, true, c);
    for (const care::Span& span : lane.keep_off) {
        const QRectF box(QPointF(p.x_of(span.from_mm), lane.y - 4), QPointF(p.x_of(span.to_mm), lane.y + 4));
        painter.setPen(QPen(c.worse, 1.2));
        painter.setBrush(QBrush(c.worse, Qt::FDiagPattern));
        painter.drawRoundedRect(box, 3, 3);
    }
}

}  // namespace

void paint_strand(QPainter& painter, const StrandPicture& p, const Colours& c, const QFont& font,
                  const care::Span& picked) {
    const QFontMetricsF metrics(font);
    const double top = p.top - 4, bottom = p.height - 2;
    // The centimetre that is asked about.
    const QRectF place(QPointF(p.x_of(picked.from_mm), top), QPointF(p.x_of(picked.to_mm), bottom));
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.accent_wash);
    painter.drawRect(place);
    painter.setFont(font);
    for (const auto& [x, words] : p.ticks) {
        painter.setPen(QPen(c.line, 1));
        painter.drawLine(QPointF(x, top - 4), QPointF(x, bottom));
        painter.setPen(c.ink_soft);
        const double width = metrics.horizontalAdvance(words) + 2;
        const double left = std::clamp(x - width / 2, 0.0, p.right + 20 - width);
        painter.drawText(QRectF(left, metrics.height() + 2, width, metrics.height()), Qt::AlignCenter, words);
    }
    painter.setPen(c.ink_soft);
    double free_from = 0;  // names that would run into each other are left out
    for (const auto& [x, words] : p.parts) {
        const double width = metrics.horizontalAdvance(words) + 4;
        const double left = std::clamp(x - width / 2, 0.0, p.right + 20 - width);
        if (left < free_from) continue;
        painter.drawText(QRectF(left, 0, width, metrics.height()), Qt::AlignCenter, words);
        free_from = left + width + 6;
    }
    painter.setPen(QPen(c.outline, 1, Qt::DashLine));
    for (const double x : p.part_ends) painter.drawLine(QPointF(x, top - 4), QPointF(x, bottom));
    for (const StrandLane& lane : p.lanes) paint_lane(painter, p, lane, c, font);
    // The scalp, curved, with the roots in it.
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.outline, 3, Qt::SolidLine, Qt::RoundCap));
    QPainterPath scalp(QPointF(p.left - 12, top));
    scalp.quadTo(p.left + 2, (top + bottom) / 2, p.left - 12, bottom);
    painter.drawPath(scalp);
    painter.setPen(QPen(c.accent, 1.6));
    painter.drawLine(place.topLeft(), place.bottomLeft());
    painter.drawLine(place.topRight(), place.bottomRight());
    if (!p.open_end) return;
    painter.setPen(QPen(c.outline, 2, Qt::DotLine, Qt::RoundCap));
    painter.drawLine(QPointF(p.right + 5, top), QPointF(p.right + 5, bottom));
}

}  // namespace kempt::desk
