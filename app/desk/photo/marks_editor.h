// The marks of one photo while they are being drawn: every change is a step that can be taken back. No widgets.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <optional>
#include <vector>

#include "domain/records.h"

namespace kempt::desk {

// What a point on the photo stands for.
enum class MarkKind {
    edge_point,
    hair_side,
    hair_tap,
    scalp_tap,
    shine_corner,
    strand_point,
    region_corner,
    anchor,
    scale_point,
    not_hair,    // on a traced strand that is no hair
    join_point,  // two and two: on traced strands that are one hair
    whole        // on a traced strand that is a hair of its own
};

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
    // The handle within `reach` px of `p`: one of the preferred kind before the others, then the nearest.
    [[nodiscard]] std::optional<Handle> handle_near(QPointF p, double reach,
                                                    MarkKind preferred = MarkKind::edge_point) const;
    // The stretch (index of its first point) of the edge line or the strand line within `reach` px of `p`.
    [[nodiscard]] std::optional<int> stretch_near(MarkKind line, QPointF p, double reach) const;
    // Where the hair lies: the point the person gave, else one beside the middle of the line, so that the side is never
    // unknown to the painter. No value without a line.
    [[nodiscard]] std::optional<QPointF> shown_hair_side() const;

    // ---- changing: each returns what is now picked; nothing when nothing changed ----
    // What a click does: a point of a line between two others when on the line, else at its end (the edge line's nearer
    // one; the strand line's last one, away from the scalp); the next corner of a region, up to four; a sample, an
    // anchor; a ruler's end (the older of two gives way). The edge line's second point brings a first hair side.
    // Corners of `region` also set the kind of sheet.
    std::optional<Handle> place(MarkKind kind, QPointF p, double reach = 0, const QString& sheet = {});
    // The same without a pointer: beside the picked point, `step` px on, within the part of the photo that is shown.
    std::optional<Handle> place_by_key(MarkKind kind, std::optional<Handle> picked, double step, QRectF shown,
                                       const QString& sheet = {});
    // Two traced strands are one hair: a point on each.
    void join(QPointF one, QPointF other);
    std::optional<Handle> insert(MarkKind line, int stretch, QPointF p);
    bool move(Handle handle, QPointF p);
    std::optional<Handle> remove(Handle handle);  // what to pick next
    // The hair lies on the other side of the edge line; the next side of a region lies towards the roots; the strand
    // line runs the other way.
    bool turn(MarkKind kind);
    // All of the kind; an edge line with its hair side, a region with its sheet and its corrections.
    bool clear(MarkKind kind);
    bool clear_corrections();              // of traced strands
    bool set_sheet(const QString& sheet);  // "hem", "combings", "strand" or empty; ends the corrections of a comb-out
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
    [[nodiscard]] QVector<QPointF>* list_of(MarkKind kind);  // nullptr for hair_side
    [[nodiscard]] QPointF* find(Handle handle);
    [[nodiscard]] std::optional<QPointF> beside_middle(double side) const;
    Handle append(MarkKind kind, QPointF p);
    Handle extend_edge(QPointF p);
    std::optional<Handle> add_corner(MarkKind kind, QPointF p, const QString& sheet);
    std::optional<Handle> lengthen_by_key(MarkKind line, std::optional<Handle> picked, double step, QRectF shown);
    bool flip_side();
    void forget_corrections();

    Marks now_;
    QSizeF size_;
    std::vector<Marks> past_, future_;
    bool in_gesture_ = false, gesture_kept_ = false;
};

}  // namespace kempt::desk
