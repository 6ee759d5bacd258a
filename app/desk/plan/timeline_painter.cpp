#include "desk/plan/timeline_painter.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

#include "desk/look/colours.h"
#include "desk/plan/plan_words.h"

namespace kempt::desk {
namespace {

// x of the line that leans as the wedge does: at the bottom of the band `low`, at its top `high`.
QPolygonF leaning(const QRectF& band, double low, double high) {
    return {{low, band.bottom()}, {high, band.top()}};
}

// The hair that carries the product: a wedge while it is put on, then the whole band until the rinse.
QPainterPath carried(const TimelineStrip& strip) {
    QPainterPath path(QPointF(strip.start, strip.band.bottom()));
    path.lineTo(std::min(strip.full, strip.band.right()), strip.band.top());
    path.lineTo(strip.band.topRight());
    path.lineTo(strip.band.bottomRight());
    path.closeSubpath();
    return path;
}

void paint_strip(QPainter& painter, const TimelineStrip& strip, const Colours& c, bool picked) {
    const QPainterPath body = carried(strip);
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.accent_wash);
    painter.drawPath(body);
    // What is over-processed: between the ready line and the rinse.
    QPainterPath after(QPointF(strip.first_ready, strip.band.bottom()));
    after.lineTo(strip.last_ready, strip.band.top());
    after.lineTo(strip.band.right() + 4000, strip.band.top());
    after.lineTo(strip.band.right() + 4000, strip.band.bottom());
    after.closeSubpath();
    const QColor over = strip.within ? c.caution : c.worse;
    painter.setBrush(QBrush(over, Qt::BDiagPattern));
    painter.drawPath(body.intersected(after));
    // The hand at work: strokes along the wedge, denser than the rest.
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.accent, 1.2));
    painter.drawPath(body);
    painter.setPen(QPen(c.accent, 3.2, Qt::SolidLine, Qt::RoundCap));
    painter.drawPolyline(leaning(strip.band, strip.start, std::min(strip.full, strip.band.right())));
    // Ready: as far as it lies before the rinse whole, beyond it dotted.
    const double beyond = std::max(strip.first_ready, strip.last_ready);
    painter.setPen(QPen(beyond > strip.band.right() + 0.5 ? over : c.better, 2.2,
                        beyond > strip.band.right() + 0.5 ? Qt::DotLine : Qt::SolidLine, Qt::RoundCap));
    painter.drawPolyline(leaning(strip.band, strip.first_ready, strip.last_ready));
    if (!picked) return;
    painter.setPen(QPen(c.focus, 2));
    painter.drawRoundedRect(strip.band.adjusted(-4, -3, 4, 3), 4, 4);
}

void paint_words(QPainter& painter, const TimelineStrip& strip, const Colours& c, const QFont& font) {
    QFont strong = font;
    strong.setBold(true);
    painter.setFont(font);
    painter.setPen(c.ink);
    QString words = QStringLiteral("%1  %2").arg(strip.order).arg(strip.name);
    if (!strip.hand.isEmpty()) words += QStringLiteral(" (%1)").arg(strip.hand);
    painter.drawText(strip.label, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, words);
    painter.setFont(strip.within ? font : strong);
    painter.setPen(strip.within ? c.ink_soft : c.worse);
    const bool above = strip.result_box.top() < strip.band.top() - 4;
    painter.drawText(strip.result_box, (above ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter | Qt::TextWordWrap,
                     strip.result);
}

// A line across all strips; beside each strip only where words stand between them.
void paint_across(QPainter& painter, const TimelinePicture& picture, double x, double above) {
    if (!picture.words_between) {
        painter.drawLine(QPointF(x, picture.chart.top() - above), QPointF(x, picture.chart.bottom()));
        return;
    }
    for (const TimelineStrip& strip : picture.strips)
        painter.drawLine(QPointF(x, strip.band.top() - 2), QPointF(x, strip.band.bottom() + 2));
}

// The rinse stands as a comb: its teeth point into the hair that runs up to it.
void paint_rinse(QPainter& painter, const TimelinePicture& picture, const Colours& c, const QFont& font) {
    const double bottom = picture.chart.bottom();
    painter.setPen(QPen(c.ink, 3, Qt::SolidLine, Qt::RoundCap));
    paint_across(painter, picture, picture.rinse, 4);
    painter.setPen(QPen(c.ink, 1.6, Qt::SolidLine, Qt::RoundCap));
    for (const TimelineStrip& strip : picture.strips)
        for (const double at : {0.2, 0.5, 0.8}) {
            const double y = strip.band.top() + at * strip.band.height();
            painter.drawLine(QPointF(picture.rinse, y), QPointF(picture.rinse - 7, y));
        }
    QFont strong = font;
    strong.setBold(true);
    painter.setFont(strong);
    const double minutes = (picture.rinse - picture.chart.left()) / picture.px_per_minute;
    const QString words = QObject::tr("rinse after %1").arg(clock_words(minutes));
    const QFontMetricsF metrics(strong);
    const double width = metrics.horizontalAdvance(words) + 4;
    const double left = std::min(picture.rinse - width / 2, picture.chart.right() + 40 - width);
    painter.setPen(c.ink);
    painter.drawText(QRectF(std::max(0.0, left), bottom + 2, width, metrics.height() + 4), Qt::AlignCenter, words);
}

}  // namespace

void paint_timeline(QPainter& painter, const TimelinePicture& picture, const Colours& c, const QFont& font,
                    int picked) {
    painter.setFont(font);
    const QFontMetricsF metrics(font);
    for (const auto& [x, minutes] : picture.ticks) {
        painter.setPen(QPen(c.line, 1));
        paint_across(painter, picture, x, 2);
        painter.setPen(c.ink_soft);
        const QString words = minutes == 0 ? QObject::tr("0 min") : QString::number(minutes);
        const double width = metrics.horizontalAdvance(words) + 2;
        painter.drawText(
            QRectF(std::max({x - width / 2, picture.chart.left() - 2, 0.0}), 0, width, picture.chart.top() - 4),
            Qt::AlignLeft | Qt::AlignBottom, words);
    }
    if (picture.earliest >= 0) {
        painter.setPen(QPen(c.worse, 1.6, Qt::DashLine));
        paint_across(painter, picture, picture.earliest, 0);
    }
    for (int i = 0; i < picture.strips.size(); ++i) {
        paint_strip(painter, picture.strips[i], c, i == picked);
        paint_words(painter, picture.strips[i], c, font);
    }
    paint_rinse(painter, picture, c, font);
}

}  // namespace kempt::desk
