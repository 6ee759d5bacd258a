// What mouse and touch do on the canvas.
#include <QContextMenuEvent>
#include <QEvent>
#include <QGestureEvent>
#include <QKeyEvent>
#include <QLineF>
#include <QMenu>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPinchGesture>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/photo/photo_canvas.h"

namespace kempt::desk {
namespace {

constexpr double still = 5;         // a press that moved less, in window px, is a click; common practice
constexpr double wheel_step = 1.2;  // zoom for one notch of 120 units

}  // namespace

double PhotoCanvas::reach() const {
    return 12 * measures().space / map_.zoom();
}

void PhotoCanvas::pick(std::optional<Handle> handle, bool keyboard) {
    by_keyboard_ = keyboard;
    picked_ = handle;
    if (handle && keyboard)
        if (const auto at = editor_.at(*handle)) {
            map_.bring_into_view(*at, 60);
            view_moved();
        }
    tell_state();
    update();
    emit picked_changed();
}

void PhotoCanvas::mousePressEvent(QMouseEvent* event) {
    if (picture_.levels.empty()) return;
    end_nudge();
    pressed_at_ = last_at_ = event->position();
    if (event->button() == Qt::MiddleButton) {
        panning_ = pressed_ = true;
        return;
    }
    if (event->button() != Qt::LeftButton) return;
    pressed_ = true;
    panning_ = dragging_ = false;
    pressed_on_ = editor_.handle_near(map_.photo_from_window(event->position()), reach());
    if (pressed_on_) {
        grip_ = *editor_.at(*pressed_on_) - map_.photo_from_window(event->position());
        pick(pressed_on_, false);
    }
}

void PhotoCanvas::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (!pressed_) {
        const auto over = editor_.handle_near(map_.photo_from_window(at), reach());
        if (over != hovered_) {
            hovered_ = over;
            setCursor(over ? Qt::SizeAllCursor : Qt::CrossCursor);
            update();
        }
        return;
    }
    if (!panning_ && !dragging_ && QLineF(pressed_at_, at).length() >= still) {
        if (pressed_on_) {
            dragging_ = true;
            editor_.begin_gesture();
        } else {
            panning_ = true;
            setCursor(Qt::ClosedHandCursor);
        }
    }
    if (dragging_ && pressed_on_) {
        if (editor_.move(*pressed_on_, map_.photo_from_window(at) + grip_)) changed(true);
    } else if (panning_) {
        map_.pan(at - last_at_);
        view_moved();
    }
    last_at_ = at;
}

void PhotoCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (!pressed_) return;
    pressed_ = false;
    setCursor(Qt::CrossCursor);
    if (dragging_) {
        dragging_ = false;
        editor_.end_gesture();
        changed(false);
    } else if (!panning_ && !pressed_on_ && event->button() == Qt::LeftButton) {
        click(event->position());
    }
    panning_ = false;
    pressed_on_.reset();
}

// The second press of a double click is not a second point on the same place.
void PhotoCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (editor_.handle_near(map_.photo_from_window(event->position()), reach())) mousePressEvent(event);
}

void PhotoCanvas::click(QPointF at) {
    const QPointF p = map_.photo_from_window(at);
    if (!QRectF(QPointF(0, 0), editor_.photo_size()).contains(p)) return;
    std::optional<Handle> made;
    switch (tool_) {
        case Tool::edge_line: {
            const auto stretch = editor_.stretch_near(p, reach());
            made = stretch ? editor_.insert(*stretch, p) : editor_.extend(p);
            break;
        }
        case Tool::hair_tap:
            made = editor_.tap(MarkKind::hair_tap, p);
            break;
        case Tool::scalp_tap:
            made = editor_.tap(MarkKind::scalp_tap, p);
            break;
        case Tool::ruler:
            made = editor_.tap(MarkKind::scale_point, p);
            break;
    }
    pick(made, false);
    changed(false);
}

void PhotoCanvas::contextMenuEvent(QContextMenuEvent* event) {
    if (picture_.levels.empty()) return;
    const bool by_key = event->reason() == QContextMenuEvent::Keyboard;
    const QPointF p = map_.photo_from_window(event->pos());
    const auto on = by_key ? picked_ : editor_.handle_near(p, reach());
    const auto stretch = on || by_key ? std::nullopt : editor_.stretch_near(p, reach());
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (on) {
        pick(on, by_key);
        menu->addAction(tr("Remove this point"), this, &PhotoCanvas::remove_picked);
    }
    if (stretch)
        menu->addAction(tr("Add a point here"), this, [this, stretch, p] {
            pick(editor_.insert(*stretch, p), false);
            changed(false);
        });
    if (editor_.marks().edge_line.size() >= 2)
        menu->addAction(tr("Hair is on the other side"), this, &PhotoCanvas::flip_side);
    if (!editor_.marks().edge_line.isEmpty())
        menu->addAction(tr("Clear the edge line"), this, &PhotoCanvas::clear_line);
    if (menu->isEmpty()) {
        delete menu;
        return;
    }
    menu->popup(event->globalPos());
}

void PhotoCanvas::wheelEvent(QWheelEvent* event) {
    if (picture_.levels.empty()) return;
    if (event->modifiers() & Qt::ShiftModifier) {
        const QPoint turn = event->angleDelta();
        map_.pan(QPointF(turn.y() != 0 ? turn.y() : turn.x(), 0));
    } else {
        const double notches = event->angleDelta().y() / 120.0;
        map_.zoom_about(event->position(), std::pow(wheel_step, notches));
    }
    view_moved();
    event->accept();
}

bool PhotoCanvas::event(QEvent* event) {
    if (event->type() == QEvent::Gesture) return pinch(static_cast<QGestureEvent*>(event));
    if (event->type() == QEvent::NativeGesture) {
        auto* native = static_cast<QNativeGestureEvent*>(event);
        if (native->gestureType() == Qt::ZoomNativeGesture) {
            map_.zoom_about(native->position(), 1 + native->value());
            view_moved();
            return true;
        }
    }
    // Undo and redo belong to the drawing while the canvas has the keyboard.
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo) ||
            (key->key() == Qt::Key_Escape && picked_)) {
            key->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

bool PhotoCanvas::pinch(QGestureEvent* event) {
    auto* gesture = static_cast<QPinchGesture*>(event->gesture(Qt::PinchGesture));
    if (gesture == nullptr) return false;
    // Two fingers never draw: what the first one began is taken back.
    if (dragging_) {
        editor_.cancel_gesture();
        changed(false);
    }
    pressed_ = dragging_ = panning_ = false;
    pressed_on_.reset();
    map_.zoom_about(mapFromGlobal(gesture->centerPoint()), gesture->scaleFactor());
    map_.pan(gesture->centerPoint() - gesture->lastCenterPoint());
    view_moved();
    event->accept(gesture);
    return true;
}

void PhotoCanvas::leaveEvent(QEvent*) {
    hovered_.reset();
    update();
}

void PhotoCanvas::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void PhotoCanvas::focusOutEvent(QFocusEvent* event) {
    end_nudge();
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace kempt::desk
