// How a new point finds its place among the marks.
#include <algorithm>

#include "desk/photo/line_geometry.h"
#include "desk/photo/mark_parts.h"
#include "desk/photo/marks_editor.h"

namespace kempt::desk {

Handle MarksEditor::append(MarkKind kind, QPointF p) {
    QVector<QPointF>* list = list_of(kind);
    list->append(p);
    return {kind, static_cast<int>(list->size()) - 1};
}

Handle MarksEditor::extend_edge(QPointF p) {
    auto& line = now_.edge_line;
    const bool at_start = line.size() >= 2 && length_between(p, line.first()) < length_between(p, line.last());
    line.insert(at_start ? 0 : line.size(), p);
    if (line.size() == 2 && !now_.hair_side) {
        // Hair hangs away from the face: until told otherwise, the side nearer to the top of the photo.
        const auto one = beside_middle(1), other = beside_middle(-1);
        if (one && other) now_.hair_side = one->y() <= other->y() ? one : other;
    }
    return {MarkKind::edge_point, at_start ? 0 : static_cast<int>(line.size()) - 1};
}

// The fourth corner goes where no two sides cross, at the end if it can: corners may be given in any order.
std::optional<Handle> MarksEditor::add_corner(MarkKind kind, QPointF p, const QString& sheet) {
    QVector<QPointF>& corners = *list_of(kind);
    if (corners.size() >= 4) return std::nullopt;
    remember();
    if (kind == MarkKind::region_corner && !sheet.isEmpty()) now_.sheet = sheet;
    if (corners.size() < 3) return append(kind, p);
    for (const int where : {3, 2, 1}) {
        QVector<QPointF> with = corners;
        with.insert(where, p);
        if (crosses_itself(with)) continue;
        corners = with;
        return Handle{kind, where};
    }
    return append(kind, p);
}

std::optional<Handle> MarksEditor::insert(MarkKind kind, int stretch, QPointF p) {
    QVector<QPointF>& line = *list_of(kind);
    if (stretch < 0 || stretch + 1 >= line.size()) return std::nullopt;
    remember();
    line.insert(stretch + 1, inside(p));
    return Handle{kind, stretch + 1};
}

std::optional<Handle> MarksEditor::place(MarkKind kind, QPointF p, double reach, const QString& sheet) {
    p = inside(p);
    switch (kind) {
        case MarkKind::edge_point:
        case MarkKind::strand_point:
            if (const auto stretch = stretch_near(kind, p, reach)) return insert(kind, *stretch, p);
            remember();
            return kind == MarkKind::edge_point ? extend_edge(p) : append(kind, p);
        case MarkKind::shine_corner:
        case MarkKind::region_corner:
            return add_corner(kind, p, sheet);
        case MarkKind::hair_side:
            remember();
            now_.hair_side = p;
            return Handle{kind, 0};
        case MarkKind::scale_point:
            remember();
            if (now_.scale_points.size() >= 2) now_.scale_points.removeFirst();
            return append(kind, p);
        case MarkKind::hair_tap:
        case MarkKind::scalp_tap:
        case MarkKind::anchor:
        case MarkKind::not_hair:
        case MarkKind::whole:
            break;
        case MarkKind::join_point:  // two at a time: join()
            return std::nullopt;
    }
    remember();
    return append(kind, p);
}

// Between two points when one amid the line is picked, beyond an end when that is picked, else beyond the last.
std::optional<Handle> MarksEditor::lengthen_by_key(MarkKind kind, std::optional<Handle> picked, double step,
                                                   QRectF shown) {
    QVector<QPointF>& line = *list_of(kind);
    const bool down = kind == MarkKind::strand_point;  // hair hangs; an edge runs across
    if (line.isEmpty())
        return place(kind, down ? QPointF(shown.center().x(), shown.top() + shown.height() / 4) : shown.center());
    const bool one = line.size() == 1;
    const int i = picked && picked->kind == kind && !one ? picked->index : static_cast<int>(line.size()) - 1;
    if (i > 0 && i + 1 < line.size()) return insert(kind, i, (line[i] + line[i + 1]) / 2);
    const bool at_start = i == 0 && !one;
    QPointF along = down ? QPointF(0, step) : QPointF(step, 0);
    if (picked && picked->kind == kind && !one) {
        const QPointF last = line[i] - (at_start ? line[1] : line[i - 1]);
        along = last * (step / std::max(1.0, length_between({}, last)));
    }
    const QPointF p = inside(line[i] + along);
    if (kind == MarkKind::edge_point) {
        remember();
        return extend_edge(p);
    }
    remember();
    line.insert(at_start ? 0 : line.size(), p);
    return Handle{kind, at_start ? 0 : static_cast<int>(line.size()) - 1};
}

std::optional<Handle> MarksEditor::place_by_key(MarkKind kind, std::optional<Handle> picked, double step, QRectF shown,
                                                const QString& sheet) {
    switch (kind) {
        case MarkKind::edge_point:
        case MarkKind::strand_point:
            return lengthen_by_key(kind, picked, step, shown);
        case MarkKind::shine_corner:
        case MarkKind::region_corner: {
            // The corners of a rectangle in the middle, clockwise from the top left; a missing one of four completes
            // the parallelogram.
            const QVector<QPointF>& have = *list_of(kind);
            const QRectF box(shown.topLeft() + QPointF(shown.width(), shown.height()) / 4, shown.size() / 2);
            const QPointF next = have.isEmpty()     ? box.topLeft()
                                 : have.size() == 1 ? have[0] + QPointF(box.width(), 0)
                                 : have.size() == 2 ? have[1] + QPointF(0, box.height())
                                                    : have[0] + have[2] - have[1];
            return place(kind, next, 0, sheet);
        }
        case MarkKind::hair_side:
        case MarkKind::hair_tap:
        case MarkKind::scalp_tap:
        case MarkKind::anchor:
        case MarkKind::scale_point:
            break;
        case MarkKind::not_hair:  // by choosing a strand
        case MarkKind::whole:
        case MarkKind::join_point:
            return std::nullopt;
    }
    // Beside the last one, so that no two lie on each other.
    const auto* list = list_of(kind);
    return place(kind, list == nullptr || list->isEmpty() ? shown.center() : list->last() + QPointF(step, 0));
}

}  // namespace kempt::desk
