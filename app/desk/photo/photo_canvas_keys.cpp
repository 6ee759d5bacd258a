// What keys do on the canvas.
#include <QKeyEvent>

#include "desk/photo/photo_canvas.h"

namespace kempt::desk {

void PhotoCanvas::pick_along(int step) {
    const auto all = editor_.handles();
    if (all.empty()) return;
    const int count = static_cast<int>(all.size());
    int now = step > 0 ? -1 : count;
    for (int i = 0; i < count; ++i)
        if (picked_ && all[static_cast<std::size_t>(i)] == *picked_) now = i;
    pick(all[static_cast<std::size_t>((now + step + count) % count)], true);
}

// Nudges in a row on one point are one step for undo.
void PhotoCanvas::nudge(QPointF window_delta) {
    if (!picked_) return;
    if (nudged_ != picked_) {
        end_nudge();
        editor_.begin_gesture();
        nudged_ = picked_;
    }
    by_keyboard_ = true;
    const QPointF to = *editor_.at(*picked_) + window_delta / map_.zoom();
    if (!editor_.move(*picked_, to)) return;
    map_.bring_into_view(*editor_.at(*picked_), 40);
    backdrop_ = {};
    changed(false);
}

void PhotoCanvas::end_nudge() {
    if (nudged_) editor_.end_gesture();
    nudged_.reset();
}

void PhotoCanvas::keyPressEvent(QKeyEvent* event) {
    if (picture_.levels.empty()) return QWidget::keyPressEvent(event);
    const double step = event->modifiers() & Qt::ShiftModifier ? 10 : 1;
    const auto arrow = [&](double dx, double dy) {
        if (picked_ && !(event->modifiers() & Qt::ControlModifier)) return nudge(QPointF(dx, dy) * step);
        map_.pan(-QPointF(dx, dy) * 60);
        view_moved();
    };
    if (event->matches(QKeySequence::Undo)) return undo();
    if (event->matches(QKeySequence::Redo)) return redo();
    switch (event->key()) {
        case Qt::Key_Left:
            return arrow(-1, 0);
        case Qt::Key_Right:
            return arrow(1, 0);
        case Qt::Key_Up:
            return arrow(0, -1);
        case Qt::Key_Down:
            return arrow(0, 1);
        case Qt::Key_Plus:
        case Qt::Key_Equal:
            return zoom_by(1.25);
        case Qt::Key_Minus:
            return zoom_by(0.8);
        case Qt::Key_0:
            return fit();
        case Qt::Key_1:
            return one_to_one();
        case Qt::Key_N:
            return pick_along(1);
        case Qt::Key_P:
            return pick_along(-1);
        case Qt::Key_F:
            return flip_side();
        case Qt::Key_Delete:
        case Qt::Key_Backspace:
            by_keyboard_ = true;
            return remove_picked();
        case Qt::Key_Insert:
        case Qt::Key_A: {
            end_nudge();
            const QPointF middle = map_.photo_from_window({width() / 2.0, height() / 2.0});
            std::optional<Handle> made;
            switch (tool_) {
                case Tool::edge_line:
                    made = editor_.add_beside(picked_, 60 / map_.zoom(), middle);
                    break;
                case Tool::hair_tap:
                    made = editor_.tap(MarkKind::hair_tap, middle);
                    break;
                case Tool::scalp_tap:
                    made = editor_.tap(MarkKind::scalp_tap, middle);
                    break;
                case Tool::ruler:
                    made = editor_.tap(MarkKind::scale_point, middle);
                    break;
            }
            pick(made, true);
            return changed(false);
        }
        case Qt::Key_Escape:
            if (!picked_) break;
            end_nudge();
            return pick(std::nullopt, true);
        default:
            break;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace kempt::desk
