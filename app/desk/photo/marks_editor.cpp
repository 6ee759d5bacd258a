#include "desk/photo/marks_editor.h"

#include <algorithm>
#include <cmath>

#include "desk/photo/line_geometry.h"

namespace kempt::desk {
namespace {

constexpr std::size_t most_steps = 200;  // a step is about 1 kB; more than a person will ever walk back

}  // namespace

void MarksEditor::start(const Marks& marks, QSizeF photo_size) {
    now_ = marks;
    size_ = photo_size;
    past_.clear();
    future_.clear();
    in_gesture_ = gesture_kept_ = false;
}

QVector<QPointF>* MarksEditor::list_of(MarkKind kind) {
    switch (kind) {
        case MarkKind::edge_point:
            return &now_.edge_line;
        case MarkKind::hair_side:
            return nullptr;
        case MarkKind::hair_tap:
            return &now_.hair_taps;
        case MarkKind::scalp_tap:
            return &now_.scalp_taps;
        case MarkKind::shine_corner:
            return &now_.shine_region;
        case MarkKind::strand_point:
            return &now_.strand_line;
        case MarkKind::region_corner:
            return &now_.region;
        case MarkKind::anchor:
            return &now_.anchors;
        case MarkKind::scale_point:
            return &now_.scale_points;
        case MarkKind::not_hair:
            return &now_.not_hair;
        case MarkKind::join_point:
            return &now_.joined;
        case MarkKind::whole:
            return &now_.whole;
    }
    return nullptr;
}

std::vector<Handle> MarksEditor::handles() const {
    using enum MarkKind;
    std::vector<Handle> all;
    for (const MarkKind kind : {edge_point, hair_side, hair_tap, scalp_tap, shine_corner, strand_point, region_corner,
                                anchor, scale_point, not_hair, join_point, whole}) {
        const auto* list = const_cast<MarksEditor*>(this)->list_of(kind);  // list_of() changes nothing
        const qsizetype count = list != nullptr ? list->size() : now_.hair_side ? 1 : 0;
        for (int i = 0; i < count; ++i) all.push_back({kind, i});
    }
    return all;
}

QPointF* MarksEditor::find(Handle handle) {
    if (QVector<QPointF>* list = list_of(handle.kind))
        return handle.index >= 0 && handle.index < list->size() ? &(*list)[handle.index] : nullptr;
    return now_.hair_side && handle.index == 0 ? &*now_.hair_side : nullptr;
}

std::optional<QPointF> MarksEditor::at(Handle handle) const {
    const QPointF* point = const_cast<MarksEditor*>(this)->find(handle);  // find() changes nothing
    if (point == nullptr) return std::nullopt;
    return *point;
}

std::optional<Handle> MarksEditor::handle_near(QPointF p, double reach, MarkKind preferred) const {
    std::optional<Handle> best;
    double nearest = reach;
    bool best_preferred = false;
    for (const Handle& handle : handles()) {
        const double d = length_between(p, *at(handle));
        const bool wanted = handle.kind == preferred;
        if (d > reach || (best_preferred && !wanted)) continue;
        if (d <= nearest || (wanted && !best_preferred)) {
            nearest = d;
            best = handle;
            best_preferred = wanted;
        }
    }
    return best;
}

std::optional<int> MarksEditor::stretch_near(MarkKind line, QPointF p, double reach) const {
    const auto [stretch, distance] =
        nearest_stretch(line == MarkKind::strand_point ? now_.strand_line : now_.edge_line, p);
    if (stretch < 0 || distance > reach) return std::nullopt;
    return stretch;
}

std::optional<QPointF> MarksEditor::beside_middle(double side) const {
    const auto& line = now_.edge_line;
    if (line.size() < 2) return std::nullopt;
    const int middle = static_cast<int>(line.size() - 1) / 2;
    const QPointF a = line[middle], b = line[middle + 1];
    const double length = length_between(a, b);
    if (length <= 0) return std::nullopt;
    const QPointF across = QPointF(-(b - a).y(), (b - a).x()) / length;
    const double reach = std::max(size_.width(), size_.height()) * 0.08;
    return inside((a + b) / 2 + side * reach * across);
}

std::optional<QPointF> MarksEditor::shown_hair_side() const {
    return now_.hair_side ? now_.hair_side : beside_middle(1);
}

QPointF MarksEditor::inside(QPointF p) const {
    return {std::clamp(p.x(), 0.0, std::max(0.0, size_.width() - 1)),
            std::clamp(p.y(), 0.0, std::max(0.0, size_.height() - 1))};
}

void MarksEditor::remember() {
    if (in_gesture_ && gesture_kept_) return;
    gesture_kept_ = in_gesture_;
    past_.push_back(now_);
    if (past_.size() > most_steps) past_.erase(past_.begin());
    future_.clear();
}

bool MarksEditor::move(Handle handle, QPointF p) {
    p = inside(p);
    if (const auto old = at(handle); !old || *old == p) return false;
    remember();
    *find(handle) = p;
    return true;
}

std::optional<Handle> MarksEditor::remove(Handle handle) {
    if (!at(handle)) return std::nullopt;
    remember();
    if (handle.kind == MarkKind::join_point)
        now_.joined.remove(handle.index / 2 * 2, 2);  // one end of a join is none
    else if (QVector<QPointF>* list = list_of(handle.kind))
        list->removeAt(handle.index);
    else
        now_.hair_side.reset();
    // With its last corner the region is no longer asked for; a whole sheet would be another question.
    if (handle.kind == MarkKind::region_corner && now_.region.isEmpty()) {
        now_.sheet.clear();
        forget_corrections();
    }
    for (const int index : {handle.index, handle.index - 1})
        if (const Handle next{handle.kind, index}; at(next)) return next;
    return std::nullopt;
}

bool MarksEditor::flip_side() {
    const auto& line = now_.edge_line;
    const auto side = shown_hair_side();
    if (line.size() < 2 || !side) return false;
    const int nearest = nearest_stretch(line, *side).stretch;
    const QPointF a = line[nearest], d = line[nearest + 1] - a;
    const double length2 = QPointF::dotProduct(d, d);
    if (length2 <= 0) return false;
    const QPointF foot = a + d * (QPointF::dotProduct(*side - a, d) / length2);
    remember();
    now_.hair_side = inside(foot - (*side - foot));
    return true;
}

bool MarksEditor::turn(MarkKind kind) {
    QVector<QPointF>* list = list_of(kind);
    if (kind == MarkKind::shine_corner || kind == MarkKind::region_corner) {
        if (list->size() != 4) return false;
        remember();
        std::rotate(list->begin(), list->begin() + 1, list->end());
        return true;
    }
    if (kind == MarkKind::strand_point) {
        if (list->size() < 2) return false;
        remember();
        std::reverse(list->begin(), list->end());
        return true;
    }
    return flip_side();
}

bool MarksEditor::clear(MarkKind kind) {
    QVector<QPointF>* list = list_of(kind);
    const bool line = kind == MarkKind::edge_point || kind == MarkKind::hair_side;
    const bool region = kind == MarkKind::region_corner;
    if ((list == nullptr || list->isEmpty()) && !(line && now_.hair_side) && !(region && !now_.sheet.isEmpty()))
        return false;
    remember();
    if (line) {
        now_.edge_line.clear();
        now_.hair_side.reset();
    } else {
        list->clear();
    }
    if (region) {
        now_.sheet.clear();
        forget_corrections();
    }
    if (kind == MarkKind::scale_point) now_.scale_mm = 0;
    return true;
}

bool MarksEditor::set_sheet(const QString& sheet) {
    if (now_.sheet == sheet) return false;
    remember();
    now_.sheet = sheet;
    forget_corrections();
    return true;
}

void MarksEditor::forget_corrections() {
    now_.not_hair.clear();
    now_.joined.clear();
    now_.whole.clear();
}

bool MarksEditor::clear_corrections() {
    if (now_.not_hair.isEmpty() && now_.joined.isEmpty() && now_.whole.isEmpty()) return false;
    remember();
    forget_corrections();
    return true;
}

void MarksEditor::join(QPointF one, QPointF other) {
    remember();
    now_.joined << inside(one) << inside(other);
}

void MarksEditor::set_scale_mm(double mm) {
    if (now_.scale_mm == mm) return;
    remember();
    now_.scale_mm = mm;
}

void MarksEditor::replace(const Marks& marks) {
    remember();
    now_ = marks;
}

void MarksEditor::begin_gesture() {
    in_gesture_ = true;
    gesture_kept_ = false;
}

void MarksEditor::end_gesture() {
    in_gesture_ = gesture_kept_ = false;
}

void MarksEditor::cancel_gesture() {
    if (in_gesture_ && gesture_kept_) {
        now_ = past_.back();
        past_.pop_back();
    }
    end_gesture();
}

bool MarksEditor::undo() {
    if (past_.empty()) return false;
    end_gesture();
    future_.push_back(now_);
    now_ = past_.back();
    past_.pop_back();
    return true;
}

bool MarksEditor::redo() {
    if (future_.empty()) return false;
    end_gesture();
    past_.push_back(now_);
    now_ = future_.back();
    future_.pop_back();
    return true;
}

}  // namespace kempt::desk
