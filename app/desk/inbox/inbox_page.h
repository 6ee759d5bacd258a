// New photos, put together by sitting: whose they are, which view each shows, and one press to take all of them.
#pragma once

#include <QHash>

#include "desk/inbox/inbox.h"
#include "desk/window/page.h"

class QLabel;
class QPushButton;
class QBoxLayout;

namespace kempt::desk {

class InboxRow;

class InboxPage : public Page {
    Q_OBJECT
  public:
    explicit InboxPage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    [[nodiscard]] bool settled() const override { return inbox_.settled(); }
    [[nodiscard]] InboxRow* row(int key) const { return rows_.value(key); }
    [[nodiscard]] QPushButton* take_all_button() const { return take_all_; }
    [[nodiscard]] QPushButton* undo_button() const { return undo_; }
    // Of the last take, which says so itself.
    void undo(const Place&) override;
    void redo(const Place&) override {}
    [[nodiscard]] QString undo_words(const Place&) const override { return {}; }
    // The dialog of the client of these photos.
    void ask_client(const QVector<int>& keys);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void fill();
    void fill_folder();
    void fill_told();
    QWidget* sitting_panel(int index);
    void refresh(int key);
    void refresh_all_button();
    [[nodiscard]] QVector<int> all_shown() const;  // that one press takes
    void give_focus();
    void choose_files();
    void took(const Place& visit);

    Inbox& inbox_;
    QHash<int, InboxRow*> rows_;
    int focus_key_ = 0;  // to be given the keyboard when the rows are made anew
    bool leaving_ = false;
    bool claims_keyboard_ = false;  // until what she came for is there: the first thing to do has it
    QPushButton *take_all_, *bring_back_, *undo_;
    QBoxLayout *folder_, *sittings_, *told_;
    QLabel *empty_, *last_take_;
};

}  // namespace kempt::desk
