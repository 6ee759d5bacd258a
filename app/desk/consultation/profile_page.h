// What a client told of her hair and of her days. Every entry is kept a moment after the hand is still.
#pragma once

#include <QTimer>
#include <optional>

#include "desk/window/page.h"
#include "domain/records.h"

class QLabel;

namespace kempt::desk {

class DaysPanel;
class KeptStrip;
class ProfilePanel;

struct TalkData {
    Client client;
    ClientProfile profile;
    DailyLife life;  // told last, until today; without a day: nothing was told
};
[[nodiscard]] Result<TalkData> talk_data(Book& book, Id client, const QDate& today);
// Puts what has changed into the book. Days that are not of today: what was told today is erased.
[[nodiscard]] Status keep_talk(Book& book, const TalkData& before, const TalkData& now, const QDate& today);

class ProfilePage : public Page {
    Q_OBJECT
  public:
    explicit ProfilePage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    void put_away(std::function<void()> then) override;
    [[nodiscard]] bool settled() const override;
    void take_back();
    void do_again();
    void undo(const Place&) override { take_back(); }
    void redo(const Place&) override { do_again(); }
    [[nodiscard]] QString undo_words(const Place&) const override { return {}; }  // its strip says them
    [[nodiscard]] ProfilePanel* profile() const { return profile_; }
    [[nodiscard]] DaysPanel* days() const { return days_; }
    [[nodiscard]] KeptStrip* strip() const { return strip_; }

  private:
    void load();
    void take(const TalkData& read);
    void show_data(const TalkData& told);
    void keep();
    void show_undo();
    [[nodiscard]] bool differs() const;

    Place place_;
    QDate today_;
    TalkData data_;   // as the book holds it
    TalkData shown_;  // as it stands on the page
    bool settled_ = true, keeping_ = false;
    QTimer pause_;
    QLabel *title_, *below_;
    KeptStrip* strip_;
    ProfilePanel* profile_;
    DaysPanel* days_;
};

}  // namespace kempt::desk
