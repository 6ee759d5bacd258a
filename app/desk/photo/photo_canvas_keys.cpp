// What keys do on the canvas.
#include <QKeyEvent>
#include <algorithm>

#include "desk/photo/photo_canvas.h"

namespace kempt::desk {

void PhotoCanvas::pick_along(int step) {
    const auto all = editor_.handles();
    if (all.empty()) return;
    const auto count = static_cast<std::ptrdiff_t>(all.size());
    std::ptrdiff_t at = step > 0 ? 0 : count - 1;
    if (picked_) {
        at = std::find(all.begin(), all.end(), *picked_) - all.begin();
        at = (at + step + count) % count;
    } else {
        // From nothing the walk begins with what the tool draws: at its first point, or backwards at its last.
        const auto mine = [this](const Handle& handle) {
            const bool beside_edge = handle.kind == MarkKind::hair_side && tool_ == Tool::edge_line;
            return handle.kind == kind_of(tool_) || beside_edge;
        };
        const auto first = std::find_if(all.begin(), all.end(), mine);
        const auto last = std::find_if(all.rbegin(), all.rend(), mine);
        if (first != all.end()) at = step > 0 ? first - all.begin() : all.rend() - last - 1;
    }
    pick(all[static_cast<std::size_t>(at)], true);
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
            return turn();
        case Qt::Key_Delete:
        case Qt::Key_Backspace:
            by_keyboard_ = true;
            if (!picked_ && strand_ >= 0 && tool_ == Tool::combings) return drop_strand(strand_);
            return remove_picked();
        case Qt::Key_Insert:
        case Qt::Key_A: {
            end_nudge();
            if (!takes_points()) return;
            return made(
                editor_.place_by_key(kind_of(tool_), picked_, 60 / map_.zoom(), map_.shown_photo(), sheet_of(tool_)),
                true);
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
