// Across the top of the window: back, the way here as buttons, and what belongs to the whole book.
#pragma once

#include <QFrame>

#include "desk/window/place.h"

class QBoxLayout;
class QLayout;
class QToolButton;

namespace kempt::desk {

class TrailBar : public QFrame {
    Q_OBJECT
  public:
    explicit TrailBar(const QString& book_name, QWidget* parent = nullptr);
    void show_trail(const Trail& trail);
    void set_back_possible(bool possible);
    void set_new_photos(int count);
    // What would be taken back; empty: nothing, and no sign stands there.
    void set_undo(const QString& words);
    [[nodiscard]] QToolButton* undo_button() const { return undo_; }

  signals:
    void back();
    void undo_asked();
    void go(const kempt::desk::Place& place);
    void inbox_asked();
    void settings_asked();
    void another_book_asked();

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    // Leaves out steps from the left until the rest has room.
    void fit();
    QToolButton *back_, *undo_, *inbox_;
    QWidget* box_;
    QLayout* steps_;
    QString book_name_;
};

}  // namespace kempt::desk
