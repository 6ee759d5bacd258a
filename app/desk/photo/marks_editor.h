// The marks of one photo while they are being drawn: every change is a step that can be taken back. No widgets.
#pragma once

#include <QPointF>
#include <QSizeF>
#include <optional>
#include <vector>

#include "domain/records.h"

namespace kempt::desk {

// What a point on the photo stands for.
enum class MarkKind { edge_point, hair_side, hair_tap, scalp_tap, scale_point };

struct Handle {
    MarkKind kind = MarkKind::edge_point;
    int index = 0;
    bool operator==(const Handle&) const = default;
};

class MarksEditor {
  public:
    // All points are kept inside the photo. Clears the steps that could be taken back.
    void start(const Marks& marks, QSizeF photo_size);
    [[nodiscard]] const Marks& marks() const { return now_; }
    [[nodiscard]] QSizeF photo_size() const { return size_; }

    // ---- reading ----
    [[nodiscard]] std::vector<Handle> handles() const;  // in the order the keyboard walks them
    [[nodiscard]] std::optional<QPointF> at(Handle handle) const;
    // The handle within `reach` px of `p`, nearest first.
    [[nodiscard]] std::optional<Handle> handle_near(QPointF p, double reach) const;
    // The stretch (index of its first point) of the edge line within `reach` px of `p`.
    [[nodiscard]] std::optional<int> stretch_near(QPointF p, double reach) const;
    // Where the hair lies: the point the person gave, else one beside the middle of the line, so that the side is never
    // unknown to the painter. No value without a line.
    [[nodiscard]] std::optional<QPointF> shown_hair_side() const;
    [[nodiscard]] bool ready_to_measure() const { return now_.edge_line.size() >= 2 && now_.hair_side.has_value(); }

    // ---- changing: each returns what is now picked; nothing when nothing changed ----
    std::optional<Handle> extend(QPointF p);  // at the nearer end; gives a first hair side with the 2nd point
    std::optional<Handle> insert(int stretch, QPointF p);
    std::optional<Handle> add_beside(std::optional<Handle> picked, double step,
                                     QPointF where_if_none);  // for the keyboard
    std::optional<Handle> tap(MarkKind kind, QPointF p);  // hair_side, hair_tap, scalp_tap, scale_point (two at most)
    bool move(Handle handle, QPointF p);
    std::optional<Handle> remove(Handle handle);  // what to pick next
    bool flip_side();
    bool clear_line();
    void set_scale_mm(double mm);
    void replace(const Marks& marks);  // by a proposal, in one step

    // Moves between begin and end are one step (a drag); nudges in a row on one handle are one step too.
    void begin_gesture();
    void end_gesture();
    void cancel_gesture();  // as if it had not begun; for the second finger of a pinch

    bool undo();
    bool redo();
    [[nodiscard]] bool can_undo() const { return !past_.empty(); }
    [[nodiscard]] bool can_redo() const { return !future_.empty(); }

  private:
    void remember();
    [[nodiscard]] QPointF inside(QPointF p) const;
    [[nodiscard]] QPointF* find(Handle handle);
    [[nodiscard]] std::optional<QPointF> beside_middle(double side) const;

    Marks now_;
    QSizeF size_;
    std::vector<Marks> past_, future_;
    bool in_gesture_ = false, gesture_kept_ = false;
};

}  // namespace kempt::desk
