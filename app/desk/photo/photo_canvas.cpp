#include "desk/photo/photo_canvas.h"

#include <QEvent>
#include <QPainter>
#include <QResizeEvent>

#include "desk/look/look.h"
#include "desk/photo/canvas_painter.h"
#include "desk/photo/mark_parts.h"
#include "desk/photo/overlay_painter.h"

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
    overlay_ = {};
    strand_ = strand_under_ = -1;
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

void PhotoCanvas::set_overlay(const Overlay& overlay, const Marks& made_with) {
    overlay_ = overlay;
    overlay_marks_ = made_with;
    const StrandsOverlay* found = strands();
    if (found == nullptr || strand_ >= found->strands.size()) strand_ = -1;
    strand_under_ = -1;
    backdrop_ = {};
    update();
}

void PhotoCanvas::set_overlay_shown(bool shown) {
    overlay_shown_ = shown;
    backdrop_ = {};
    update();
}

void PhotoCanvas::set_strand(int strand) {
    const StrandsOverlay* found = strands();
    const int wanted = found != nullptr && strand < found->strands.size() ? strand : -1;
    if (wanted == strand_) return;
    strand_ = wanted;
    update();
}

void PhotoCanvas::point_at_strand(int strand) {
    strand_under_ = strand;
    update();
}

bool PhotoCanvas::fresh(ReadingGroup group) const {
    Marks now = finished_part(editor_.marks());
    now.not_hair = overlay_marks_.not_hair;
    now.joined = overlay_marks_.joined;
    now.whole = overlay_marks_.whole;
    return same_marks_for(group, overlay_marks_, now);
}

const StrandsOverlay* PhotoCanvas::strands() const {
    for (const auto& [group, found] :
         {std::pair{ReadingGroup::combings, &overlay_.combings}, {ReadingGroup::pattern, &overlay_.pattern}})
        if (*found && fresh(group)) return &**found;
    return nullptr;
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

void PhotoCanvas::turn() {
    end_nudge();
    if (editor_.turn(kind_of(tool_))) changed(false);
}

void PhotoCanvas::clear(Tool tool) {
    end_nudge();
    if (!editor_.clear(kind_of(tool))) return;
    picked_.reset();
    changed(false);
}

void PhotoCanvas::ask_for_sheet(Tool tool) {
    end_nudge();
    if (editor_.set_sheet(sheet_of(tool))) changed(false);
}

void PhotoCanvas::drop_strand(int strand) {
    end_nudge();
    const StrandsOverlay* found = strands();
    if (found == nullptr || strand < 0 || strand >= found->strands.size()) return;
    editor_.place(MarkKind::not_hair, own_point(found->strands, strand));
    strand_ = strand_under_ = -1;
    changed(false);
}

void PhotoCanvas::mark_whole(int strand) {
    end_nudge();
    const StrandsOverlay* found = strands();
    if (found == nullptr || strand < 0 || strand >= found->strands.size()) return;
    editor_.place(MarkKind::whole, own_point(found->strands, strand));
    changed(false);
}

void PhotoCanvas::join_strands(int one, int other) {
    end_nudge();
    const StrandsOverlay* found = strands();
    if (found == nullptr || one == other || std::min(one, other) < 0) return;
    if (std::max(one, other) >= found->strands.size()) return;
    editor_.join(own_point(found->strands, one), own_point(found->strands, other));
    strand_ = strand_under_ = -1;
    changed(false);
}

void PhotoCanvas::clear_corrections() {
    end_nudge();
    if (editor_.clear_corrections()) changed(false);
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
    if (overlay_shown_) backdrop_ = {};  // what was measured with other marks goes
    if (strands() == nullptr) strand_ = -1;
    tell_state();
    update();
    emit marks_changed(dragging);
}

void PhotoCanvas::made(std::optional<Handle> handle, bool keyboard) {
    if (!handle) return;
    pick(handle, keyboard);
    changed(false);
}

void PhotoCanvas::view_moved() {
    backdrop_ = {};
    update();
    emit view_changed();
}

void PhotoCanvas::resizeEvent(QResizeEvent* event) {
    map_.set_window(event->size());
    view_moved();
}

void PhotoCanvas::render_backdrop() {
    const double ratio = devicePixelRatioF();
    backdrop_ = QPixmap(size() * ratio);
    backdrop_.setDevicePixelRatio(ratio);
    backdrop_.fill(colours().sunken);
    QPainter under(&backdrop_);
    under.setRenderHint(QPainter::SmoothPixmapTransform, map_.zoom() * ratio < 4);
    const QImage& image = picture_.level_for(map_.zoom() * ratio);
    const double shrink = static_cast<double>(image.width()) / picture_.size().width();
    const QRectF shown = map_.shown_photo();
    const QRectF target(map_.window_from_photo(shown.topLeft()), map_.window_from_photo(shown.bottomRight()));
    under.drawImage(target, image, QRectF(shown.topLeft() * shrink, shown.size() * shrink));
    if (!overlay_shown_) return;
    QVector<ReadingGroup> groups;
    for (const ReadingGroup group : all_reading_groups())
        if (fresh(group)) groups.append(group);
    paint_overlay(under, map_, overlay_, groups, measures().space);
}

void PhotoCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (picture_.levels.empty()) {
        painter.fillRect(rect(), colours().sunken);
        return;
    }
    if (backdrop_.size() != size() * devicePixelRatioF()) render_backdrop();
    painter.drawPixmap(0, 0, backdrop_);
    const double scale = measures().space;
    if (const StrandsOverlay* found = overlay_shown_ ? strands() : nullptr)
        for (const int at : {strand_, strand_under_})
            if (at >= 0 && at < found->strands.size()) paint_strand_picked(painter, map_, found->strands[at], scale);
    const QPolygonF band = fresh(ReadingGroup::edges) ? overlay_.edges.band : QPolygonF();
    const MarksScene scene{&editor_, picked_, hovered_, band, scale, by_keyboard_ && hasFocus()};
    paint_marks(painter, map_, scene);
    if (overlay_shown_ && fresh(ReadingGroup::tone)) paint_overlay_words(painter, map_, overlay_, scale);
    if (dragging_ && picked_)
        if (const auto at = editor_.at(*picked_)) paint_glass(painter, map_, picture_, *at, size(), scale);
    if (hasFocus()) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(QPen(colours().focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

}  // namespace kempt::desk
