// Says that what was entered is kept, or that it is not and why not; takes the last change back.
#pragma once

#include <QFrame>

#include "desk/session/session.h"

class QLabel;
class QPushButton;

namespace kempt::desk {

class KeptStrip : public QFrame {
    Q_OBJECT
  public:
    explicit KeptStrip(QWidget* parent = nullptr);
    void say_nothing_yet();
    void say_kept();
    void say_not_kept(const QString& why);
    // What would be taken back; empty: nothing can be.
    void set_undo(const QString& words);
    [[nodiscard]] QPushButton* undo_button() const { return undo_; }
    [[nodiscard]] QString words() const;
    [[nodiscard]] bool tells_trouble() const { return trouble_; }

  signals:
    void undo_asked();

  private:
    void say(bool trouble, const QString& words);
    QLabel* words_;
    QPushButton* undo_;
    bool trouble_ = false;
};

// The same across the top of the window.
void tell_not_kept(Session& session, Error error);

}  // namespace kempt::desk
