#include "desk/inbox/inbox_page.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QTimer>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/inbox/client_picker.h"
#include "desk/inbox/inbox_row.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "desk/widgets/photo_dialog.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

// Rows that are made at a time; the others come up as these go. Forty of them took the window 150 ms to lay out (on a
// busy core), twenty stay below the tenth of a second that nothing may stall it.
constexpr int most_rows = 20;

QString proposed_words(const work::VisitProposal& p) {
    const QString where = p.visit > 0
                              ? QObject::tr("%1, visit of %2").arg(name_within(p.client_name), date_words(p.day))
                              : QObject::tr("%1, a new visit of %2").arg(name_within(p.client_name), date_words(p.day));
    switch (p.by) {
        case work::ProposedBy::dropped:
            return QObject::tr("%1: you put them there.").arg(where);
        case work::ProposedBy::same_sitting:
            return QObject::tr("%1: photos of the same quarter of an hour are there.").arg(where);
        case work::ProposedBy::open_visit:
            return QObject::tr("%1: it is the visit that was open.").arg(where);
        case work::ProposedBy::open_client:
            return QObject::tr("%1: her page was open.").arg(where);
        case work::ProposedBy::only_visit:
            return QObject::tr("%1: a guess, the only visit of that day. Take all leaves them out.").arg(where);
        case work::ProposedBy::chosen:
            return QObject::tr("%1, as you chose.").arg(where);
        case work::ProposedBy::nothing:
            break;
    }
    return QObject::tr("Nothing tells whose they are.");
}

}  // namespace

InboxPage::InboxPage(Session& session, QWidget* parent) : Page(session, parent), inbox_(Inbox::of(session)) {
    auto* page = scrolled();
    page->addWidget(text(tr("New photos"), "title"));
    page->addWidget(text(tr("Nothing goes into a record before you take it. The files stay where they are."), "soft"));
    auto* acts = new FlowLayout(measures().gap(2));
    take_all_ = button(tr("Take all"), "primary");
    auto* choose = button(tr("Choose photos…"), "", Sign::picture);
    bring_back_ = button(tr("Bring back the last one left"), "quiet");
    for (QWidget* w : {take_all_, choose, bring_back_}) acts->addWidget(w);
    page->addLayout(acts);
    auto* undo_row = new FlowLayout(measures().gap(2));
    last_take_ = text({}, "soft");
    undo_ = button(tr("Undo it (Ctrl+Z)"), "quiet");
    undo_->setAccessibleName(tr("Undo the last take: the photos come back here"));
    undo_row->addWidget(last_take_);
    undo_row->addWidget(undo_);
    page->addLayout(undo_row);
    folder_ = new QVBoxLayout;
    folder_->setSpacing(measures().gap(1));
    page->addLayout(folder_);
    empty_ = text({}, "soft");
    page->addWidget(empty_);
    sittings_ = new QVBoxLayout;
    sittings_->setSpacing(measures().gap(4));
    page->addLayout(sittings_);
    told_ = new QVBoxLayout;
    told_->setSpacing(measures().gap(2));
    page->addLayout(told_);
    page->addStretch();

    connect(take_all_, &QPushButton::clicked, this, [this] {
        leaving_ = true;
        inbox_.take(all_shown());
    });
    connect(choose, &QPushButton::clicked, this, &InboxPage::choose_files);
    connect(bring_back_, &QPushButton::clicked, &inbox_, &Inbox::bring_back_last);
    connect(undo_, &QPushButton::clicked, this, [this] {
        claims_keyboard_ = true;
        inbox_.undo_last_take();
    });
    auto* all_key = new QShortcut(QKeySequence(Qt::Key_A), this);
    all_key->setContext(Qt::WidgetWithChildrenShortcut);
    connect(all_key, &QShortcut::activated, take_all_, &QPushButton::click);
    connect(&inbox_, &Inbox::rearranged, this, [this] {
        if (isVisible()) fill();
    });
    connect(&inbox_, &Inbox::photo_changed, this, &InboxPage::refresh);
    connect(&inbox_, &Inbox::taken, this, &InboxPage::took);
}

void InboxPage::show_place(const Place& place) {
    leaving_ = false;
    claims_keyboard_ = true;
    emit trail_changed({{tr("New photos"), place}});
    fill();
}

void InboxPage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    if (rows_.isEmpty() && inbox_.waiting() > 0) fill();
}

void InboxPage::fill_folder() {
    empty_layout(folder_);
    if (inbox_.folder().isEmpty()) {
        folder_->addWidget(text(
            tr("No folder is watched. Choose the one that your phone syncs to under Settings (Ctrl+,)."), "caption"));
        return;
    }
    if (!inbox_.folder_trouble().isEmpty()) {
        auto* box = panel("caution");
        column_in(box, 2, 1)->addWidget(text(inbox_.folder_trouble()));
        folder_->addWidget(box);
        return;
    }
    auto* watched = text(tr("Watched folder: %1. It is only looked at.").arg(inbox_.folder()), "caption");
    folder_->addWidget(watched);
    if (inbox_.older() == 0) return;
    auto* row = new FlowLayout(measures().gap(2));
    row->addWidget(text(tr("%1 in it, older than %2 days, not looked at.")
                            .arg(counted(inbox_.older(), tr("picture"), tr("pictures")))
                            .arg(work::watched_days),
                        "caption"));
    auto* older = button(tr("Look at them too"), "quiet");
    connect(older, &QPushButton::clicked, &inbox_, &Inbox::look_at_older);
    row->addWidget(older);
    folder_->addLayout(row);
}

void InboxPage::fill() {
    // What had the keyboard has it again; a row that is gone passes it on to the next.
    const QWidget* had = window()->focusWidget();
    int had_key = focus_key_;
    for (InboxRow* row : std::as_const(rows_))
        if (had != nullptr && row->isAncestorOf(had)) had_key = row->key();
    focus_key_ = 0;
    rows_.clear();
    fill_folder();
    empty_layout(sittings_);
    for (int i = 0; i < inbox_.sittings().size(); ++i) sittings_->addWidget(sitting_panel(i));
    int shown = static_cast<int>(rows_.size());
    if (inbox_.waiting() > shown && shown > 0)
        sittings_->addWidget(text(tr("%1 more come up when these are done.").arg(inbox_.waiting() - shown), "soft"));
    empty_->setVisible(inbox_.waiting() == 0);
    empty_->setText(inbox_.settled() ? tr("No new photos. Drop some anywhere on this window, or choose them.")
                                     : tr("Looking at the photos…"));
    fill_told();
    refresh_all_button();
    bring_back_->setVisible(inbox_.can_bring_back());
    undo_->setVisible(inbox_.can_undo());
    last_take_->setVisible(inbox_.can_undo());
    last_take_->setText(inbox_.last_take());
    InboxRow* next = rows_.value(had_key);
    if (next == nullptr && had_key > 0 && !inbox_.sittings().isEmpty())
        next = rows_.value(inbox_.sittings().first().keys.first());
    if (next != nullptr && !claims_keyboard_) return next->focus_first();
    give_focus();
}

// The first thing to do has the keyboard when the page comes up: all at once, or the first photo that is open.
void InboxPage::give_focus() {
    if (!claims_keyboard_) return;
    InboxRow* open = nullptr;
    for (const InboxSitting& sitting : inbox_.sittings())
        for (const int key : sitting.keys)
            if (open == nullptr && !inbox_.ready(key)) open = rows_.value(key);
    if (!inbox_.settled())
        setFocus();
    else if (open != nullptr)
        open->focus_first();
    else if (take_all_->isEnabled())
        take_all_->setFocus();
    if (inbox_.settled()) claims_keyboard_ = false;
}

QWidget* InboxPage::sitting_panel(int index) {
    const InboxSitting& sitting = inbox_.sittings()[index];
    auto* box = panel("surface");
    auto* column = column_in(box, 4, 2);
    const QString from = sitting.from.time().toString(QStringLiteral("HH:mm"));
    const QString to = sitting.to.time().toString(QStringLiteral("HH:mm"));
    const QString when = from == to ? tr("%1, %2").arg(date_words(sitting.from.date()), from)
                                    : tr("%1, %2 to %3").arg(date_words(sitting.from.date()), from, to);
    column->addWidget(text(tr("%1 of %2").arg(counted(sitting.keys.size(), tr("photo"), tr("photos")), when), "lead"));
    const bool known = sitting.proposal.client > 0;
    auto* whose = text(proposed_words(sitting.proposal), known ? "" : "strong");
    if (!known) whose->setProperty("tone", "caution");
    column->addWidget(whose);
    if (known && sitting.day != sitting.proposal.day) {
        auto* note = text(tr("They were taken on another day than the visit: %1.").arg(date_words(sitting.day)), "");
        note->setProperty("tone", "caution");
        column->addWidget(note);
    }
    auto* acts = new FlowLayout(measures().gap(2));
    if (known && (inbox_.sittings().size() > 1 || sitting.proposal.by == work::ProposedBy::only_visit)) {
        auto* take = button(tr("Take these"));
        take->setAccessibleName(tr("Take the photos of %1").arg(when));
        connect(take, &QPushButton::clicked, this, [this, keys = sitting.keys] { inbox_.take(keys); });
        acts->addWidget(take);
    }
    auto* client = button(known ? tr("Somebody else’s (C)") : tr("Say whose they are (C)"));
    client->setAccessibleName(tr("Choose the client of the photos of %1").arg(when));
    acts->addWidget(client);
    column->addLayout(acts);
    connect(client, &QPushButton::clicked, this, [this, keys = sitting.keys] { ask_client(keys); });
    auto* key_c = new QShortcut(QKeySequence(Qt::Key_C), box);
    key_c->setContext(Qt::WidgetWithChildrenShortcut);
    connect(key_c, &QShortcut::activated, this, [this, keys = sitting.keys] { ask_client(keys); });
    for (const int key : sitting.keys) {
        if (rows_.size() >= most_rows) break;
        auto* row = new InboxRow(*inbox_.photo(key));
        row->show_photo(*inbox_.photo(key), inbox_.ready(key), known);
        rows_.insert(key, row);
        column->addWidget(row);
        connect(row, &InboxRow::take_asked, this, [this](int k) {
            focus_key_ = k;
            leaving_ = true;
            inbox_.take({k});
        });
        connect(row, &InboxRow::leave_asked, &inbox_, &Inbox::leave);
        connect(row, &InboxRow::view_chosen, &inbox_, &Inbox::choose_view);
    }
    return box;
}

void InboxPage::refresh(int key) {
    const InboxPhoto* photo = inbox_.photo(key);
    InboxRow* row = rows_.value(key);
    if (photo == nullptr || row == nullptr) return;
    bool known = false;
    for (const InboxSitting& sitting : inbox_.sittings())
        if (sitting.keys.contains(key)) known = sitting.proposal.client > 0;
    row->show_photo(*photo, inbox_.ready(key), known);
    refresh_all_button();
    give_focus();
}

void InboxPage::refresh_all_button() {
    const int ready = static_cast<int>(all_shown().size());
    take_all_->setEnabled(ready > 0);
    const int open = inbox_.waiting() - ready;
    take_all_->setText(ready == 0 || open == 0           ? tr("Take all (A)")
                       : inbox_.waiting() > rows_.size() ? tr("Take the %1 sorted ones shown here (A)").arg(ready)
                                                         : tr("Take the %1 that are sorted (A)").arg(ready));
    take_all_->setAccessibleName(take_all_->text());
    take_all_->setToolTip(ready == 0 ? tr("No photo has both its client and its view yet") : QString());
}

// Nothing that she has not seen, and no guess by the day alone.
QVector<int> InboxPage::all_shown() const {
    QVector<int> out;
    for (const InboxSitting& sitting : inbox_.sittings())
        for (const int key : sitting.keys)
            if (rows_.contains(key) && inbox_.ready(key) && sitting.proposal.by != work::ProposedBy::only_visit)
                out.append(key);
    return out;
}

void InboxPage::undo(const Place&) {
    undo_->click();
}

void InboxPage::ask_client(const QVector<int>& keys) {
    auto* picker = new ClientPicker(session_, this);
    connect(picker, &ClientPicker::chosen, this, [this, keys](Id client) {
        claims_keyboard_ = true;
        inbox_.choose_client(keys, client);
    });
    picker->open();
}

void InboxPage::choose_files() {
    ask_for_photos(this, tr("New photos"), [this](const QStringList& paths) { inbox_.bring(paths, {}); });
}

// The last one taken: on to the visit that it belongs to.
void InboxPage::took(const Place& visit) {
    if (!isVisible() || !leaving_ || inbox_.waiting() > 0) return;
    leaving_ = false;
    QTimer::singleShot(0, this, [this, visit] { emit go(visit); });
}

}  // namespace kempt::desk
