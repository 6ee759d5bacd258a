#include "desk/consultation/profile_page.h"

#include <QVBoxLayout>

#include "desk/consultation/days_panel.h"
#include "desk/consultation/keep_told.h"
#include "desk/consultation/kept_strip.h"
#include "desk/consultation/profile_panel.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "work/care_json.h"
#include "work/keep_care.h"
#include "work/keep_records.h"

namespace kempt::desk {
namespace {

constexpr int pause_ms = 500;  // after the last key: between two words, not between two letters

DailyLife undated(DailyLife life) {
    life.id = life.client = 0;
    life.date = {};
    return life;
}

// Whether two tellings say the same, whenever they were told.
bool same_words(const DailyLife& a, const DailyLife& b) {
    return work::json_of_daily_life(undated(a)) == work::json_of_daily_life(undated(b));
}

}  // namespace

Result<TalkData> talk_data(Book& book, Id id, const QDate& today) {
    TalkData data;
    auto client = work::client_of(book, id);
    if (!client) return client.error();
    data.client = std::move(client).value();
    auto profile = work::profile_of(book, id);
    if (!profile) return profile.error();
    data.profile = std::move(profile).value();
    data.profile.client = id;
    auto life = work::daily_life_of(book, id, today);
    if (!life) return life.error();
    data.life = work::fresh_life(*life, today).value_or(DailyLife{});  // what is too old is asked anew
    data.life.client = id;
    return data;
}

Status keep_talk(Book& book, const TalkData& before, const TalkData& now, const QDate& today) {
    if (!(now.profile == before.profile))
        if (const Status kept = work::set_profile(book, now.profile); !kept) return kept;
    if (same_words(before.life, now.life) && before.life.date == now.life.date) return Done{};
    const auto stands = work::daily_life_of(book, now.client.id, today);
    if (!stands) return stands.error();
    if (now.life.date == today) {
        const auto kept = work::set_daily_life(book, now.life);
        return kept ? Status(Done{}) : Status(kept.error());
    }
    // Back to what was told before today.
    if (*stands && (*stands)->date == today) return work::erase_daily_life(book, (*stands)->id);
    return Done{};
}

ProfilePage::ProfilePage(Session& session, QWidget* parent) : Page(session, parent), today_(Clock().today()) {
    auto* page = scrolled();
    title_ = text(tr("Hair and days"), "title");
    below_ = text({}, "soft");
    page->addWidget(title_);
    page->addWidget(below_);
    strip_ = new KeptStrip;
    page->addWidget(strip_);
    auto* columns = new Columns(measures().px(820));
    profile_ = new ProfilePanel;
    days_ = new DaysPanel;
    columns->left()->addWidget(profile_);
    columns->left()->addStretch();
    columns->right()->addWidget(days_);
    columns->right()->addStretch();
    page->addWidget(columns);
    page->addWidget(days_->habits());
    page->addStretch();

    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &ProfilePage::keep);
    connect(profile_, &ProfilePanel::entered, this, [this] {
        shown_.profile = profile_->profile();
        pause_.start();
    });
    connect(days_, &DaysPanel::entered, this, [this] {
        DailyLife life = days_->life();
        life.client = place_.client;
        life.date = today_;
        shown_.life = life;
        tidy_focus_order_later(this);
        pause_.start();
    });
    connect(strip_, &KeptStrip::undo_asked, this, &ProfilePage::take_back);
    connect(&session_.undo(), &Undo::changed, this, &ProfilePage::show_undo);
    connect(&session_, &Session::client_changed, this, [this](Id client) {
        if (client == place_.client && isVisible() && !keeping_ && !pause_.isActive()) load();
    });
}

bool ProfilePage::settled() const {
    return settled_ && !keeping_ && !pause_.isActive();
}

bool ProfilePage::differs() const {
    return !(shown_.profile == data_.profile) || !same_words(shown_.life, data_.life);
}

void ProfilePage::show_place(const Place& place) {
    if (place.client != place_.client) {
        to_top();
        strip_->say_nothing_yet();
    }
    place_ = place;
    today_ = Clock().today();  // the window may have stood open overnight
    load();
}

void ProfilePage::put_away(std::function<void()> then) {
    if (QWidget* typed_in = focusWidget()) typed_in->clearFocus();  // a day that was emptied is none from here on
    if (pause_.isActive()) {
        pause_.stop();
        keep();
    }
    then();
}

void ProfilePage::load() {
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading what she told"), this,
        [id = place_.client, today = today_](Book& book, const Progress&) { return talk_data(book, id, today); },
        [this](const TalkData& read) {
            settled_ = true;
            if (read.client.id == place_.client && !pause_.isActive() && !keeping_) take(read);
        },
        [this] { settled_ = true; });
}

void ProfilePage::take(const TalkData& read) {
    data_ = read;
    show_data(read);
    below_->setText(name_within(data_.client.name));
    Trail trail{{data_.client.name, {Where::client, data_.client.id}}};
    if (place_.visit > 0) trail.append({tr("Visit"), {Where::visit, place_.client, place_.visit}});
    trail.append({tr("Hair and days"), place_});
    emit trail_changed(trail);
}

void ProfilePage::show_data(const TalkData& told) {
    shown_ = told;
    profile_->show_profile(told.profile);
    days_->show_life(told.life, today_);
    show_undo();
    tidy_focus_order_later(this);
}

void ProfilePage::show_undo() {
    strip_->set_undo(differs() ? tr("what was entered last")
                               : session_.undo().words(place_.client, about_told(place_.client)));
}

void ProfilePage::keep() {
    if (place_.client == 0 || !differs()) return strip_->say_kept();
    keeping_ = true;
    const TalkData now = shown_, before = data_;
    keep_told(
        session_, this, now.client.id, tr("what was told of hair and days"),
        [now, before, today = today_](Book& book) { return keep_talk(book, before, now, today); },
        [this, now](const Status& kept) {
            if (!kept.ok()) {
                keeping_ = false;
                tell_not_kept(session_, kept.error());       // the line above the fields may be out of sight
                if (place_.client != now.client.id) return;  // she has gone on
                strip_->say_not_kept(said(kept.error().what));
                return show_undo();
            }
            if (place_.client == now.client.id) {
                data_ = now;
                strip_->say_kept();
                if (!differs()) days_->show_life(now.life, today_);
                show_undo();
            }
            session_.changed(now.client.id, 0);  // the other pages read it anew
            keeping_ = false;
        });
}

void ProfilePage::take_back() {
    pause_.stop();
    if (differs()) {  // not in the book yet, or refused by it
        show_data(data_);
        return strip_->say_kept();
    }
    session_.undo().take_back(place_.client, about_told(place_.client));
}

void ProfilePage::do_again() {
    if (!differs()) session_.undo().do_again(place_.client, about_told(place_.client));
}

}  // namespace kempt::desk
