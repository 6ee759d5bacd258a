// The tools above the photo: those that its view is taken for and those that have drawn something stand in the row,
// the others wait in a menu.
#pragma once

#include <QHash>
#include <QObject>
#include <QToolButton>

#include "desk/photo/tools.h"

class QMenu;

namespace kempt::desk {

class FlowLayout;

class ToolRow : public QObject {
    Q_OBJECT
  public:
    // Puts its buttons into `row`.
    ToolRow(FlowLayout* row, QObject* parent);
    // For another photo: its view, and nothing chosen yet.
    void begin(View view, const Marks& marks);
    void refresh(const Marks& marks, bool scale_missing);
    void choose(Tool tool);  // as a press of its button does
    [[nodiscard]] Tool tool() const { return tool_; }
    [[nodiscard]] QToolButton* button_of(Tool tool) const { return buttons_.value(tool); }
    [[nodiscard]] QToolButton* turn_button() const { return turn_; }
    [[nodiscard]] QToolButton* more_button() const { return more_; }

  signals:
    void chosen(kempt::desk::Tool tool, bool by_hand);
    void turn_asked();

  private:
    void take(Tool tool, bool by_hand);
    [[nodiscard]] bool in_row(Tool tool) const;

    QHash<Tool, QToolButton*> buttons_;  // no QButtonGroup: Tab would reach only the chosen one of it
    QHash<Tool, QAction*> entries_;
    QToolButton *more_, *turn_;
    Tool tool_ = Tool::edge_line;
    View view_ = View::left_temple;
    Marks marks_;
    bool scale_missing_ = false;
};

}  // namespace kempt::desk
