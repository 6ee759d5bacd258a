#include "desk/compare/pair_on_show.h"

#include <QObject>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"
#include "report/pair_picture.h"

namespace kempt::desk {
namespace {

const QColor paper(255, 250, 246);  // of words and bars on a dark casing

}  // namespace

QString PairOnShow::before_tag() const {
    return before_words.isEmpty() ? QObject::tr("before  %1").arg(date_words(before_date)) : before_words;
}

QString PairOnShow::after_tag() const {
    return after_words.isEmpty() ? QObject::tr("after  %1").arg(date_words(after_date)) : after_words;
}

QSizeF tag_size(const QPainter& painter, const QString& words, double room) {
    const QFontMetricsF metrics(painter.font());
    const double pad = measures().gap(2);
    if (metrics.horizontalAdvance(words) + 2 * pad <= room)
        return {metrics.horizontalAdvance(words) + 2 * pad, metrics.height() + pad};
    const QRectF laid = metrics.boundingRect(QRectF(0, 0, std::max(1.0, room - 2 * pad), 1e4),
                                             Qt::AlignHCenter | Qt::TextWordWrap, words);
    return {std::ceil(laid.width()) + 2 * pad, laid.height() + pad};
}

void paint_tag(QPainter& painter, QPointF corner, const QString& words, Qt::Alignment side, double room) {
    const QSizeF size = tag_size(painter, words, room);
    const QRectF box(side & Qt::AlignRight ? corner - QPointF(size.width(), 0) : corner, size);
    painter.setPen(Qt::NoPen);
    painter.setBrush(mark_colours().casing);
    painter.drawRoundedRect(box, measures().radius, measures().radius);
    painter.setPen(paper);
    const bool one_line = QFontMetricsF(painter.font()).horizontalAdvance(words) <= box.width();
    painter.drawText(box, one_line ? Qt::AlignCenter : Qt::AlignCenter | Qt::TextWordWrap, words);
}

void paint_mark(QPainter& painter, const QPolygonF& line, QSize size, const QRectF& frame, const QColor& colour) {
    if (line.size() < 2 || size.isEmpty()) return;
    QPolygonF at;
    for (const QPointF& p : line)
        at << frame.topLeft() + QPointF(p.x() / size.width() * frame.width(), p.y() / size.height() * frame.height());
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(mark_colours().casing, 4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(at);
    painter.setPen(QPen(colour, 1.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(at);
}

void paint_scale_bar(QPainter& painter, const QRectF& frame, double px_per_mm) {
    if (px_per_mm <= 0) return;
    const auto bar = report::scale_bar_within(frame.width() / 4 / px_per_mm, look().length());
    if (bar.length_mm <= 0) return;
    const double length = bar.length_mm * px_per_mm, inset = measures().gap(2);
    const QPointF left(frame.left() + inset * 2, frame.bottom() - inset * 2);
    paint_tag(painter, left - QPointF(inset, QFontMetricsF(painter.font()).height() + inset * 2.4), bar.label,
              Qt::AlignLeft);
    for (const auto& [colour, width] : {QPair<QColor, double>{mark_colours().casing, 6}, {paper, 3}}) {
        painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(left, left + QPointF(length, 0));
    }
}

void paint_focus(QPainter& painter, const QRectF& frame) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colours().focus, 2));
    painter.drawRect(frame.adjusted(1, 1, -1, -1));
}

QRectF fitted(QSize size, const QRectF& room) {
    if (size.isEmpty()) return room;
    const QSizeF whole = QSizeF(size).scaled(room.size(), Qt::KeepAspectRatio);
    return {room.topLeft() + QPointF((room.width() - whole.width()) / 2, (room.height() - whole.height()) / 2), whole};
}

}  // namespace kempt::desk
