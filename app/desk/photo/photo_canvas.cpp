#include "desk/photo/photo_canvas.h"

#include <QAccessible>
#include <QEvent>
#include <QPainter>
#include <QResizeEvent>

#include "desk/look/look.h"
#include "desk/photo/canvas_painter.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

PhotoCanvas::PhotoCanvas(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setCursor(Qt::CrossCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Photo with its edge line"));
    grabGesture(Qt::PinchGesture);
    connect(&look(), &Look::changed, this, [this] { view_moved(); });
}

void PhotoCanvas::set_picture(const Picture& picture) {
    picture_ = picture;
    map_.set_photo(picture.size());
    map_.set_window(size());
    cover_ = {};
    band_.clear();
    view_moved();
}

void PhotoCanvas::set_marks(const Marks& marks) {
    editor_.start(marks, picture_.size());
    pressed_ = dragging_ = panning_ = false;
    nudged_.reset();
    pick(std::nullopt, false);
    update();
}

void PhotoCanvas::set_tool(Tool tool) {
    tool_ = tool;
    tell_state();
    update();
}

void PhotoCanvas::set_cover(const Cover& cover) {
    cover_ = cover;
    backdrop_ = {};
    update();
}

void PhotoCanvas::set_cover_shown(bool shown) {
    cover_shown_ = shown;
    backdrop_ = {};
    update();
}

void PhotoCanvas::set_band(const QPolygonF& band_px) {
    band_ = band_px;
    update();
}

void PhotoCanvas::zoom_by(double factor) {
    const std::optional<QPointF> held = picked_ ? editor_.at(*picked_) : std::nullopt;
    const QPointF middle(width() / 2.0, height() / 2.0);
    map_.zoom_about(middle, factor);
    if (held) map_.bring_into_view(*held, 60);
    view_moved();
}

void PhotoCanvas::fit() {
    map_.fit();
    view_moved();
}

void PhotoCanvas::one_to_one() {
    zoom_by(1.0 / map_.zoom());
}

void PhotoCanvas::undo() {
    end_nudge();
    if (!editor_.undo()) return;
    if (picked_ && !editor_.at(*picked_)) picked_.reset();
    changed(false);
}

void PhotoCanvas::redo() {
    end_nudge();
    if (!editor_.redo()) return;
    if (picked_ && !editor_.at(*picked_)) picked_.reset();
    changed(false);
}

void PhotoCanvas::flip_side() {
    end_nudge();
    if (editor_.flip_side()) changed(false);
}

void PhotoCanvas::clear_line() {
    end_nudge();
    if (!editor_.clear_line()) return;
    picked_.reset();
    changed(false);
}

void PhotoCanvas::remove_picked() {
    end_nudge();
    if (!picked_) return;
    const auto next = editor_.remove(*picked_);
    pick(next, by_keyboard_);
    changed(false);
}

void PhotoCanvas::set_scale_mm(double mm) {
    end_nudge();
    if (mm == editor_.marks().scale_mm) return;
    editor_.set_scale_mm(mm);
    changed(false);
}

void PhotoCanvas::propose(const Marks& marks) {
    end_nudge();
    editor_.replace(marks);
    picked_.reset();
    changed(false);
}

void PhotoCanvas::changed(bool dragging) {
    band_.clear();
    if (!cover_.tint.isNull()) {
        cover_ = {};
        backdrop_ = {};
    }
    tell_state();
    update();
    emit marks_changed(dragging);
}

void PhotoCanvas::view_moved() {
    backdrop_ = {};
    update();
    emit view_changed();
}

// The state in words, for screen readers.
void PhotoCanvas::tell_state() {
    QString words =
        tr("%1 on the edge line.").arg(counted(editor_.marks().edge_line.size(), tr("point"), tr("points")));
    if (picked_) {
        switch (picked_->kind) {
            case MarkKind::edge_point:
                words += tr(" Point %1 is picked.").arg(picked_->index + 1);
                break;
            case MarkKind::hair_side:
                words += tr(" The sign for the hair's side is picked.");
                break;
            case MarkKind::hair_tap:
                words += tr(" Hair sample %1 is picked.").arg(picked_->index + 1);
                break;
            case MarkKind::scalp_tap:
                words += tr(" Scalp sample %1 is picked.").arg(picked_->index + 1);
                break;
            case MarkKind::scale_point:
                words += tr(" Ruler end %1 is picked.").arg(picked_->index + 1);
                break;
        }
    }
    if (words != accessibleDescription()) setAccessibleDescription(words);
}

void PhotoCanvas::resizeEvent(QResizeEvent* event) {
    map_.set_window(event->size());
    view_moved();
}

void PhotoCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Colours& c = colours();
    if (picture_.levels.empty()) {
        painter.fillRect(rect(), c.sunken);
        return;
    }
    if (backdrop_.size() != size() * devicePixelRatioF()) {
        backdrop_ = QPixmap(size() * devicePixelRatioF());
        backdrop_.setDevicePixelRatio(devicePixelRatioF());
        backdrop_.fill(c.sunken);
        QPainter under(&backdrop_);
        under.setRenderHint(QPainter::SmoothPixmapTransform, map_.zoom() * devicePixelRatioF() < 4);
        const QImage& image = picture_.level_for(map_.zoom() * devicePixelRatioF());
        const double shrink = static_cast<double>(image.width()) / picture_.size().width();
        const QRectF shown = map_.shown_photo();
        const QRectF target(map_.window_from_photo(shown.topLeft()), map_.window_from_photo(shown.bottomRight()));
        under.drawImage(target, image, QRectF(shown.topLeft() * shrink, shown.size() * shrink));
        if (cover_shown_ && !cover_.tint.isNull())
            under.drawImage(QRectF(map_.window_from_photo(cover_.where.topLeft()),
                                   map_.window_from_photo(cover_.where.bottomRight())),
                            cover_.tint);
    }
    painter.drawPixmap(0, 0, backdrop_);
    MarksScene scene{&editor_, picked_, hovered_, band_, measures().space, by_keyboard_ && hasFocus()};
    paint_marks(painter, map_, scene);
    if (dragging_ && picked_)
        if (const auto at = editor_.at(*picked_)) paint_glass(painter, map_, picture_, *at, size(), measures().space);
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(c.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

}  // namespace kempt::desk
