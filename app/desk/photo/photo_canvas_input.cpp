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
#include "desk/photo/line_geometry.h"
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
    pressed_on_ = editor_.handle_near(map_.photo_from_window(event->position()), reach(), kind_of(tool_));
    if (pressed_on_) {
        grip_ = *editor_.at(*pressed_on_) - map_.photo_from_window(event->position());
        pick(pressed_on_, false);
    }
}

void PhotoCanvas::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (!pressed_) {
        const auto over = editor_.handle_near(map_.photo_from_window(at), reach(), kind_of(tool_));
        const int strand = over ? -1 : strand_near(map_.photo_from_window(at), reach());
        if (over == hovered_ && strand == strand_under_) return;
        setCursor(over ? Qt::SizeAllCursor : strand >= 0 ? Qt::PointingHandCursor : Qt::CrossCursor);
        hovered_ = over;
        strand_under_ = strand;
        update();
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
    if (editor_.handle_near(map_.photo_from_window(event->position()), reach(), kind_of(tool_))) mousePressEvent(event);
}

bool PhotoCanvas::takes_points() const {
    // A whole sheet that is asked for would become a half-drawn region by a slip of the finger.
    const bool whole_sheet = tool_ == Tool::combings || tool_ == Tool::strand;
    return !(whole_sheet && editor_.marks().region.isEmpty() && editor_.marks().sheet == sheet_of(tool_));
}

int PhotoCanvas::strand_near(QPointF p, double reach) const {
    const StrandsOverlay* found = overlay_shown_ ? strands() : nullptr;
    if (found == nullptr || sheet_of(tool_).isEmpty()) return -1;
    int best = -1;
    double nearest = reach;
    for (int i = 0; i < found->strands.size(); ++i)
        if (const double d = nearest_stretch(found->strands[i].path, p).distance; d <= nearest) {
            nearest = d;
            best = i;
        }
    return best;
}

void PhotoCanvas::click(QPointF at) {
    const QPointF p = map_.photo_from_window(at);
    if (!QRectF(QPointF(0, 0), editor_.photo_size()).contains(p)) return;
    const qsizetype corners = editor_.marks().region.size();
    if (const int strand = strand_near(p, reach()); strand >= 0 && (corners == 0 || corners == 4)) {
        set_strand(strand);
        emit strand_chosen(strand);
        return;
    }
    if (takes_points()) made(editor_.place(kind_of(tool_), p, reach(), sheet_of(tool_)), false);
}

void PhotoCanvas::fill_menu(QMenu& menu, std::optional<Handle> on, QPointF p, bool by_key) {
    if (on) menu.addAction(tr("Remove this point"), this, &PhotoCanvas::remove_picked);
    for (const MarkKind line : {MarkKind::edge_point, MarkKind::strand_point}) {
        const auto stretch = on || by_key ? std::nullopt : editor_.stretch_near(line, p, reach());
        if (!stretch) continue;
        menu.addAction(tr("Add a point here"), this,
                       [this, line, stretch, p] { made(editor_.insert(line, *stretch, p), false); });
        break;
    }
    if (can_turn(tool_, editor_.marks()))
        menu.addAction(tr("Turn: %1").arg(turn_words(tool_).toLower()), this, &PhotoCanvas::turn);
    if (const QString words = clear_words(tool_, editor_.marks()); !words.isEmpty())
        menu.addAction(words, this, [this, tool = tool_] { clear(tool); });
}

void PhotoCanvas::contextMenuEvent(QContextMenuEvent* event) {
    if (picture_.levels.empty()) return;
    const bool by_key = event->reason() == QContextMenuEvent::Keyboard;
    const QPointF p = map_.photo_from_window(event->pos());
    const auto on = by_key ? picked_ : editor_.handle_near(p, reach(), kind_of(tool_));
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (on) pick(on, by_key);
    fill_menu(*menu, on, p, by_key);
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
    strand_under_ = -1;
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
