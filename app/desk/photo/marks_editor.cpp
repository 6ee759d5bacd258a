#include "desk/photo/marks_editor.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

namespace kempt::desk {
namespace {

constexpr std::size_t most_steps = 200;  // a step is about 1 kB; more than a person will ever walk back

double length_between(QPointF a, QPointF b) {
    return QLineF(a, b).length();
}

double distance_to_stretch(QPointF p, QPointF a, QPointF b) {
    const QPointF d = b - a;
    const double length2 = QPointF::dotProduct(d, d);
    const double t = length2 > 0 ? std::clamp(QPointF::dotProduct(p - a, d) / length2, 0.0, 1.0) : 0.0;
    return length_between(p, a + t * d);
}

}  // namespace

void MarksEditor::start(const Marks& marks, QSizeF photo_size) {
    now_ = marks;
    size_ = photo_size;
    past_.clear();
    future_.clear();
    in_gesture_ = gesture_kept_ = false;
}

std::vector<Handle> MarksEditor::handles() const {
    std::vector<Handle> all;
    const auto add = [&all](MarkKind kind, qsizetype count) {
        for (int i = 0; i < count; ++i) all.push_back({kind, i});
    };
    add(MarkKind::edge_point, now_.edge_line.size());
    add(MarkKind::hair_side, now_.hair_side ? 1 : 0);
    add(MarkKind::hair_tap, now_.hair_taps.size());
    add(MarkKind::scalp_tap, now_.scalp_taps.size());
    add(MarkKind::scale_point, now_.scale_points.size());
    return all;
}

QPointF* MarksEditor::find(Handle handle) {
    const auto in = [&handle](QVector<QPointF>& list) -> QPointF* {
        return handle.index >= 0 && handle.index < list.size() ? &list[handle.index] : nullptr;
    };
    switch (handle.kind) {
        case MarkKind::edge_point:
            return in(now_.edge_line);
        case MarkKind::hair_side:
            return now_.hair_side ? &*now_.hair_side : nullptr;
        case MarkKind::hair_tap:
            return in(now_.hair_taps);
        case MarkKind::scalp_tap:
            return in(now_.scalp_taps);
        case MarkKind::scale_point:
            return in(now_.scale_points);
    }
    return nullptr;
}

std::optional<QPointF> MarksEditor::at(Handle handle) const {
    const QPointF* point = const_cast<MarksEditor*>(this)->find(handle);  // find() changes nothing
    if (point == nullptr) return std::nullopt;
    return *point;
}

std::optional<Handle> MarksEditor::handle_near(QPointF p, double reach) const {
    std::optional<Handle> best;
    double nearest = reach;
    for (const Handle& handle : handles()) {
        const double d = length_between(p, *at(handle));
        if (d <= nearest) {
            nearest = d;
            best = handle;
        }
    }
    return best;
}

std::optional<int> MarksEditor::stretch_near(QPointF p, double reach) const {
    std::optional<int> best;
    double nearest = reach;
    for (int i = 0; i + 1 < now_.edge_line.size(); ++i) {
        const double d = distance_to_stretch(p, now_.edge_line[i], now_.edge_line[i + 1]);
        if (d <= nearest) {
            nearest = d;
            best = i;
        }
    }
    return best;
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

std::optional<Handle> MarksEditor::extend(QPointF p) {
    p = inside(p);
    remember();
    auto& line = now_.edge_line;
    const bool at_start = line.size() >= 2 && length_between(p, line.first()) < length_between(p, line.last());
    if (at_start)
        line.prepend(p);
    else
        line.append(p);
    if (line.size() == 2 && !now_.hair_side) {
        // Hair hangs away from the face: until told otherwise, the side nearer to the top of the photo.
        const auto one = beside_middle(1), other = beside_middle(-1);
        if (one && other) now_.hair_side = one->y() <= other->y() ? one : other;
    }
    return Handle{MarkKind::edge_point, at_start ? 0 : static_cast<int>(line.size()) - 1};
}

std::optional<Handle> MarksEditor::insert(int stretch, QPointF p) {
    if (stretch < 0 || stretch + 1 >= now_.edge_line.size()) return std::nullopt;
    remember();
    now_.edge_line.insert(stretch + 1, inside(p));
    return Handle{MarkKind::edge_point, stretch + 1};
}

std::optional<Handle> MarksEditor::add_beside(std::optional<Handle> picked, double step, QPointF where_if_none) {
    const auto& line = now_.edge_line;
    if (!picked || picked->kind != MarkKind::edge_point || line.size() < 2)
        return line.isEmpty() ? extend(where_if_none) : extend(line.last() + QPointF(step, 0));
    const int i = picked->index;
    if (i > 0 && i + 1 < line.size()) return insert(i, (line[i] + line[i + 1]) / 2);
    const QPointF end = line[i], before = i == 0 ? line[1] : line[i - 1];
    const double length = std::max(1.0, length_between(before, end));
    return extend(end + (end - before) * (step / length));
}

std::optional<Handle> MarksEditor::tap(MarkKind kind, QPointF p) {
    p = inside(p);
    const auto append = [&](QVector<QPointF>& list) {
        list.append(p);
        return Handle{kind, static_cast<int>(list.size()) - 1};
    };
    remember();
    switch (kind) {
        case MarkKind::hair_side:
            now_.hair_side = p;
            return Handle{kind, 0};
        case MarkKind::hair_tap:
            return append(now_.hair_taps);
        case MarkKind::scalp_tap:
            return append(now_.scalp_taps);
        case MarkKind::scale_point:
            if (now_.scale_points.size() >= 2) now_.scale_points.removeFirst();
            return append(now_.scale_points);
        case MarkKind::edge_point:
            break;
    }
    past_.pop_back();
    return extend(p);
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
    switch (handle.kind) {
        case MarkKind::edge_point:
            now_.edge_line.removeAt(handle.index);
            break;
        case MarkKind::hair_side:
            now_.hair_side.reset();
            break;
        case MarkKind::hair_tap:
            now_.hair_taps.removeAt(handle.index);
            break;
        case MarkKind::scalp_tap:
            now_.scalp_taps.removeAt(handle.index);
            break;
        case MarkKind::scale_point:
            now_.scale_points.removeAt(handle.index);
            break;
    }
    for (const int index : {handle.index, handle.index - 1})
        if (const Handle next{handle.kind, index}; at(next)) return next;
    return std::nullopt;
}

bool MarksEditor::flip_side() {
    const auto& line = now_.edge_line;
    const auto side = shown_hair_side();
    if (line.size() < 2 || !side) return false;
    int nearest = 0;
    for (int i = 0; i + 1 < line.size(); ++i)
        if (distance_to_stretch(*side, line[i], line[i + 1]) <
            distance_to_stretch(*side, line[nearest], line[nearest + 1]))
            nearest = i;
    const QPointF a = line[nearest], d = line[nearest + 1] - a;
    const double length2 = QPointF::dotProduct(d, d);
    if (length2 <= 0) return false;
    const QPointF foot = a + d * (QPointF::dotProduct(*side - a, d) / length2);
    remember();
    now_.hair_side = inside(foot - (*side - foot));
    return true;
}

bool MarksEditor::clear_line() {
    if (now_.edge_line.isEmpty() && !now_.hair_side) return false;
    remember();
    now_.edge_line.clear();
    now_.hair_side.reset();
    return true;
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
