// What to draw next with the chosen tool, and what else can be done with what it has drawn.
#pragma once

#include <QFrame>

#include "desk/photo/tools.h"

class QLabel;
class QPushButton;

namespace kempt::desk {

class HintBox : public QFrame {
    Q_OBJECT
  public:
    explicit HintBox(QWidget* parent = nullptr);
    void show_tool(Tool tool, const Marks& marks);
    [[nodiscard]] QString sentence() const;

  signals:
    void sheet_asked();
    void clear_asked();

  private:
    QLabel* words_;
    QPushButton *sheet_, *clear_;
};

}  // namespace kempt::desk
