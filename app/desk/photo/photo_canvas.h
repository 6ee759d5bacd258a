// A photo that can be zoomed and drawn on. Mouse, touch and keyboard do the same things:
//   wheel, pinch, + - 0 1      zoom in, out, whole photo, one to one
//   drag beside the marks      pan (also the middle button); arrow keys while no point is picked
//   click                      a point of what the chosen tool draws, e.g. of the edge line: at the nearer end, or
//   between
//                              two points when on the line; with a sheet tool on a traced strand: picks the strand out
//   drag a point               moves it; arrows nudge the picked one by 1 px of the screen, with Shift by 10
//   N P                        pick the next or the one before; Esc picks none; Insert adds one; Delete removes it
//   F                          the hair is on the other side of the line, the roots at the next side of the region
#pragma once

#include <QPixmap>
#include <QWidget>
#include <optional>

#include "desk/photo/marks_editor.h"
#include "desk/photo/overlay.h"
#include "desk/photo/picture.h"
#include "desk/photo/tools.h"
#include "desk/photo/view_map.h"

class QGestureEvent;
class QMenu;

namespace kempt::desk {

class PhotoCanvas : public QWidget {
    Q_OBJECT
  public:
    explicit PhotoCanvas(QWidget* parent = nullptr);

    void set_picture(const Picture& picture);
    // Marks as they are kept; clears undo.
    void set_marks(const Marks& marks);
    [[nodiscard]] const Marks& marks() const { return editor_.marks(); }
    [[nodiscard]] const MarksEditor& editor() const { return editor_; }
    [[nodiscard]] const ViewMap& map() const { return map_; }
    [[nodiscard]] std::optional<Handle> picked() const { return picked_; }
    [[nodiscard]] bool dragging() const { return dragging_; }

    void set_tool(Tool tool);
    [[nodiscard]] Tool tool() const { return tool_; }
    // What was measured, and the marks it was measured with: a group is drawn as long as its marks are those.
    void set_overlay(const Overlay& overlay, const Marks& made_with);
    void set_overlay_shown(bool shown);
    [[nodiscard]] bool overlay_shown() const { return overlay_shown_; }
    [[nodiscard]] const Overlay& overlay() const { return overlay_; }
    // The traced strand that is drawn above the others; -1: none.
    void set_strand(int strand);
    [[nodiscard]] int strand() const { return strand_; }
    void point_at_strand(int strand);  // as the pointer over it does

    void zoom_by(double factor);  // about the middle of the window
    void fit();
    void one_to_one();
    void undo();
    void redo();
    void turn();                    // as the chosen tool turns its mark
    void clear(Tool tool);          // all of its marks
    void ask_for_sheet(Tool tool);  // its readings from the sheet as it is drawn
    void remove_picked();
    void drop_strand(int strand);           // it is no hair
    void join_strands(int one, int other);  // they are one hair
    void mark_whole(int strand);            // it is a hair of its own
    void clear_corrections();
    void set_scale_mm(double mm);
    void propose(const Marks& marks);  // in place of what is drawn; can be taken back

    [[nodiscard]] QSize sizeHint() const override { return {640, 480}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, 200}; }

  signals:
    // After every change of the marks; dragging: the person has not let go yet.
    void marks_changed(bool dragging);
    void picked_changed();
    void view_changed();
    void strand_chosen(int strand);  // by a press on the photo

  protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    bool pinch(QGestureEvent* event);
    void click(QPointF at);
    void pick(std::optional<Handle> handle, bool keyboard);
    void pick_along(int step);
    void nudge(QPointF window_delta);
    void end_nudge();
    void changed(bool dragging);
    void made(std::optional<Handle> handle, bool keyboard);
    void view_moved();
    void render_backdrop();
    void fill_menu(QMenu& menu, std::optional<Handle> on, QPointF p, bool by_key);
    [[nodiscard]] bool takes_points() const;  // the chosen tool, as the marks stand
    // What was measured of it belongs to what is drawn. Strands stay while she corrects them.
    [[nodiscard]] bool fresh(ReadingGroup group) const;
    [[nodiscard]] const StrandsOverlay* strands() const;  // that are drawn now
    [[nodiscard]] int strand_near(QPointF p, double reach) const;
    void tell_state();
    [[nodiscard]] double reach() const;  // of a press, in photo pixels

    Picture picture_;
    MarksEditor editor_;
    ViewMap map_;
    Tool tool_ = Tool::edge_line;
    Overlay overlay_;
    Marks overlay_marks_;
    bool overlay_shown_ = false;
    int strand_ = -1, strand_under_ = -1;
    QPixmap backdrop_;  // photo and overlay at the present view
    std::optional<Handle> picked_, hovered_, pressed_on_, nudged_;
    QPointF pressed_at_, last_at_, grip_;
    bool pressed_ = false, dragging_ = false, panning_ = false, by_keyboard_ = false;
};

}  // namespace kempt::desk
