#include "desk/compare/before_after.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

BeforeAfter::BeforeAfter(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::SplitHCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Before and after, one over the other"));
}

void BeforeAfter::set_pair(const PairOnShow& pair) {
    pair_ = pair;
    before_ = after_ = {};
    setAccessibleDescription(tr("Before: %1. After: %2. Left and right move the parting between them.")
                                 .arg(date_words(pair.before_date), date_words(pair.after_date)));
    update();
}

void BeforeAfter::set_lines_shown(bool shown) {
    lines_shown_ = shown;
    update();
}

void BeforeAfter::set_parting(double share) {
    const double kept = std::clamp(share, 0.0, 1.0);
    if (kept == parting_) return;
    parting_ = kept;
    update();
    emit parting_moved(kept);
}

QRectF BeforeAfter::frame() const {
    return fitted(pair_.before.size(), rect());
}

void BeforeAfter::resizeEvent(QResizeEvent*) {
    before_ = after_ = {};
}

void BeforeAfter::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const QRectF f = frame();
    if (pair_.before.isNull()) return;
    if (before_.isNull()) {
        const QSize px = (f.size() * devicePixelRatioF()).toSize().expandedTo({1, 1});
        const auto scaled = [&px, this](const QImage& image) {
            QPixmap map = QPixmap::fromImage(image.scaled(px, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
            map.setDevicePixelRatio(devicePixelRatioF());
            return map;
        };
        before_ = scaled(pair_.before);
        after_ = scaled(pair_.after);
    }
    const double x = f.left() + f.width() * parting_;
    const auto half = [&](const QPixmap& map, const QPolygonF& line, const QRectF& clip) {
        painter.save();
        painter.setClipRect(clip);
        painter.drawPixmap(f.topLeft(), map);
        if (lines_shown_) paint_mark(painter, line, pair_.before.size(), f, mark_colours().line);
        painter.restore();
    };
    half(before_, pair_.before_line, QRectF(f.topLeft(), QPointF(x, f.bottom())));
    half(after_, pair_.after_line, QRectF(QPointF(x, f.top()), f.bottomRight()));

    // The parting, with a grip that a thumb finds; the words lie above it.
    painter.setPen(QPen(mark_colours().casing, 5));
    painter.drawLine(QPointF(x, f.top()), QPointF(x, f.bottom()));
    painter.setPen(QPen(QColor(255, 250, 246), 2));
    painter.drawLine(QPointF(x, f.top()), QPointF(x, f.bottom()));
    const double r = measures().px(15);
    const QPointF grip(x, f.center().y());
    painter.setPen(QPen(hasFocus() ? c.focus : mark_colours().casing, hasFocus() ? 4 : 2));
    painter.setBrush(QColor(255, 250, 246));
    painter.drawEllipse(grip, r, r);
    painter.setPen(QPen(QColor(42, 34, 32), 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (const double side : {-1.0, 1.0})
        painter.drawPolyline(QPolygonF({grip + QPointF(side * r * 0.3, -r * 0.35), grip + QPointF(side * r * 0.62, 0),
                                        grip + QPointF(side * r * 0.3, r * 0.35)}));
    const double inset = measures().gap(2);
    const QString before = pair_.before_tag(), after = pair_.after_tag();
    const double room = f.width() - 2 * inset;
    const QFontMetricsF metrics(font());
    const bool both_fit = metrics.horizontalAdvance(before) + metrics.horizontalAdvance(after) + 8 * inset < f.width();
    const double lower = both_fit ? 0 : tag_size(painter, before, room).height() + inset / 2;  // one below the other
    const QPointF after_corner = f.topRight() + QPointF(-inset, inset + lower);
    if (parting_ > 0.02) paint_tag(painter, f.topLeft() + QPointF(inset, inset), before, Qt::AlignLeft, room);
    if (parting_ < 0.98) paint_tag(painter, after_corner, after, Qt::AlignRight, room);
    paint_scale_bar(painter, f, pair_.px_per_mm * f.width() / pair_.before.width());
    if (hasFocus()) paint_focus(painter, f);
}

void BeforeAfter::follow(QPointF at) {
    const QRectF f = frame();
    set_parting((at.x() - f.left()) / std::max(1.0, f.width()));
}

void BeforeAfter::mousePressEvent(QMouseEvent* event) {
    follow(event->position());
}

void BeforeAfter::mouseMoveEvent(QMouseEvent* event) {
    if (event->buttons() & Qt::LeftButton) follow(event->position());
}

void BeforeAfter::keyPressEvent(QKeyEvent* event) {
    const double step = event->modifiers() & Qt::ShiftModifier ? 0.1 : 0.02;
    switch (event->key()) {
        case Qt::Key_Left:
            return set_parting(parting_ - step);
        case Qt::Key_Right:
            return set_parting(parting_ + step);
        case Qt::Key_Home:
            return set_parting(0);
        case Qt::Key_End:
            return set_parting(1);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace kempt::desk
