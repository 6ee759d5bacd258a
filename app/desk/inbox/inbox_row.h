// One new photo: its picture, when it was taken and how that is known, the view it is proposed for, and one key each to
// take it, to leave it or to say another view.
#pragma once

#include <QFrame>

#include "desk/inbox/inbox.h"

class QLabel;
class QPushButton;

namespace kempt::desk {

class ChoiceRow;

class InboxRow : public QFrame {
    Q_OBJECT
  public:
    InboxRow(const InboxPhoto& photo, QWidget* parent = nullptr);
    // ready: client and view are known. client: whose it would be.
    void show_photo(const InboxPhoto& photo, bool ready, bool client_known);
    [[nodiscard]] int key() const { return key_; }
    [[nodiscard]] QPushButton* take_button() const { return take_; }
    [[nodiscard]] QPushButton* leave_button() const { return leave_; }
    [[nodiscard]] ChoiceRow* views() const { return views_; }
    void focus_first();

  signals:
    void take_asked(int key);
    void leave_asked(int key);
    void view_chosen(int key, kempt::View view);

  private:
    int key_;
    QLabel* why_;
    ChoiceRow* views_;
    QPushButton *take_, *leave_;
};

// "4 May 2026, 10:15"
[[nodiscard]] QString taken_words(const work::IncomingPhoto& photo);
// "as the camera says (UTC+02:00)"
[[nodiscard]] QString taken_from_words(const work::IncomingPhoto& photo);

}  // namespace kempt::desk
