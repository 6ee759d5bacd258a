#include "desk/compare/side_by_side.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QPinchGesture>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

constexpr double nearest = 12, step = 1.25;  // as many steps as the photo page takes from whole to single strands
constexpr double key_share = 0.06;           // of the pane, for each press of an arrow

}  // namespace

SideBySide::SideBySide(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::OpenHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Both pictures side by side"));
    grabGesture(Qt::PinchGesture);
}

void SideBySide::set_pair(const PairOnShow& pair) {
    const bool other = pair.before.size() != pair_.before.size();
    pair_ = pair;
    if (other) show_whole();
    setAccessibleDescription(
        tr("Left: %1. Right: %2. Plus and minus go nearer and farther in both, arrows move both, 0 "
           "shows the whole.")
            .arg(pair.before_tag(), pair.after_tag()));
    update();
}

void SideBySide::set_lines_shown(bool shown) {
    lines_shown_ = shown;
    update();
}

void SideBySide::set_turned_over(bool turned) {
    turned_over_ = turned;
    update();
}

std::pair<QRectF, QRectF> SideBySide::panes() const {
    const double gap = measures().gap(1);
    const QSize size = pair_.before.size();
    const double beside =
        std::min((width() - gap) / 2 / std::max(1, size.width()), 1.0 * height() / std::max(1, size.height()));
    const double above =
        std::min(1.0 * width() / std::max(1, size.width()), (height() - gap) / 2 / std::max(1, size.height()));
    if (beside >= above) {
        const double w = (width() - gap) / 2;
        return {QRectF(0, 0, w, height()), QRectF(w + gap, 0, w, height())};
    }
    const double h = (height() - gap) / 2;
    return {QRectF(0, 0, width(), h), QRectF(0, h + gap, width(), h)};
}

QRectF SideBySide::whole(const QRectF& pane, bool turned) const {
    const QSizeF size = fitted(pair_.before.size(), pane).size() * zoom_;
    const QPointF middle(turned ? 1 - middle_.x() : middle_.x(), middle_.y());
    return {pane.center() - QPointF(middle.x() * size.width(), middle.y() * size.height()), size};
}

void SideBySide::hold() {
    zoom_ = std::clamp(zoom_, 1.0, nearest);
    const QRectF pane = panes().first;
    const QSizeF size = fitted(pair_.before.size(), pane).size() * zoom_;
    const auto held = [](double share, double room, double length) {
        const double half = length > 0 ? std::min(0.5, room / length / 2) : 0.5;
        return std::clamp(share, half, 1 - half);
    };
    middle_ = {held(middle_.x(), pane.width(), size.width()), held(middle_.y(), pane.height(), size.height())};
    update();
}

void SideBySide::zoom_by(double factor, QPointF at) {
    const auto [left, right] = panes();
    const bool in_right = right.contains(at);
    const QRectF pane = in_right ? right : left;
    const double before = zoom_;
    zoom_ = std::clamp(zoom_ * factor, 1.0, nearest);
    const QSizeF unit = fitted(pair_.before.size(), pane).size();
    if (unit.isEmpty()) return;
    QPointF off = at - pane.center();
    if (in_right && turned_over_) off.setX(-off.x());
    const double change = 1 / before - 1 / zoom_;
    middle_ += QPointF(off.x() / unit.width() * change, off.y() / unit.height() * change);
    hold();
}

void SideBySide::move_by(QPointF px) {
    const QSizeF size = fitted(pair_.before.size(), panes().first).size() * zoom_;
    if (size.isEmpty()) return;
    middle_ -= QPointF(px.x() / size.width(), px.y() / size.height());
    hold();
}

void SideBySide::show_whole() {
    zoom_ = 1;
    middle_ = {0.5, 0.5};
    update();
}

void SideBySide::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    if (pair_.before.isNull()) return;
    const auto [left, right] = panes();
    const double inset = measures().gap(2);
    const auto side = [&](const QRectF& pane, const QImage& image, const QPolygonF& line, const QString& words,
                          bool turned) {
        painter.save();
        painter.setClipRect(pane);
        painter.fillRect(pane, colours().sunken);
        const QRectF at = whole(pane, turned);
        // Only what is seen is scaled, so that going near stays quick.
        const QRectF seen = pane.intersected(at);
        if (turned) {
            painter.translate(at.left() + at.right(), 0);
            painter.scale(-1, 1);
        }
        QRectF drawn = seen;
        if (turned) drawn.moveLeft(at.left() + at.right() - seen.right());
        const double sx = image.width() / at.width(), sy = image.height() / at.height();
        painter.drawImage(drawn, image,
                          QRectF((drawn.left() - at.left()) * sx, (drawn.top() - at.top()) * sy, drawn.width() * sx,
                                 drawn.height() * sy));
        if (lines_shown_) paint_mark(painter, line, image.size(), at, mark_colours().line);
        painter.restore();
        painter.save();
        painter.setClipRect(pane);
        const QRectF shown = pane.intersected(at);
        paint_tag(painter, shown.topLeft() + QPointF(inset, inset), words, Qt::AlignLeft, shown.width() - 2 * inset);
        paint_scale_bar(painter, shown, pair_.px_per_mm * at.width() / image.width());
        painter.restore();
    };
    side(left, pair_.before, pair_.before_line, pair_.before_tag(), false);
    side(right, pair_.after, pair_.after_line, pair_.after_tag(), turned_over_);
    if (hasFocus()) paint_focus(painter, rect());
}

bool SideBySide::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        auto* native = static_cast<QNativeGestureEvent*>(event);
        if (native->gestureType() == Qt::ZoomNativeGesture) {
            zoom_by(1 + native->value(), native->position());
            return true;
        }
    }
    if (event->type() == QEvent::Gesture) {
        if (auto* pinch = static_cast<QPinchGesture*>(static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture))) {
            zoom_by(pinch->scaleFactor(), mapFromGlobal(pinch->centerPoint().toPoint()));
            move_by(pinch->centerPoint() - pinch->lastCenterPoint());
            return true;
        }
    }
    return QWidget::event(event);
}

void SideBySide::mousePressEvent(QMouseEvent* event) {
    dragged_ = event->position();
}

void SideBySide::mouseMoveEvent(QMouseEvent* event) {
    if (!(event->buttons() & Qt::LeftButton)) return;
    QPointF by = event->position() - dragged_;
    if (turned_over_ && panes().second.contains(event->position())) by.setX(-by.x());
    dragged_ = event->position();
    move_by(by);
}

void SideBySide::wheelEvent(QWheelEvent* event) {
    zoom_by(std::pow(step, event->angleDelta().y() / 120.0), event->position());
    event->accept();
}

void SideBySide::keyPressEvent(QKeyEvent* event) {
    const QRectF pane = panes().first;
    const double far = event->modifiers() & Qt::ShiftModifier ? 5 : 1;
    const QPointF by(pane.width() * key_share * far, pane.height() * key_share * far);
    switch (event->key()) {
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            return zoom_by(step, pane.center());
        case Qt::Key_Minus:
            return zoom_by(1 / step, pane.center());
        case Qt::Key_0:
            return show_whole();
        case Qt::Key_Left:
            return move_by({by.x(), 0});
        case Qt::Key_Right:
            return move_by({-by.x(), 0});
        case Qt::Key_Up:
            return move_by({0, by.y()});
        case Qt::Key_Down:
            return move_by({0, -by.y()});
        default:
            QWidget::keyPressEvent(event);
    }
}

void SideBySide::focusInEvent(QFocusEvent*) {
    update();
}

void SideBySide::focusOutEvent(QFocusEvent*) {
    update();
}

}  // namespace kempt::desk
