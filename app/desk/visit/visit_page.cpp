#include "desk/visit/visit_page.h"

#include <QCheckBox>
#include <QDateEdit>
#include <QHBoxLayout>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "desk/client/services_panel.h"
#include "desk/look/look.h"
#include "desk/session/keep_entry.h"
#include "desk/visit/steps_panel.h"
#include "desk/visit/visit_data.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {

VisitPage::VisitPage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* page = scrolled();
    auto* head = new QHBoxLayout;
    title_ = text({}, "title");
    auto* erase = button(tr("Erase this visit…"), "quiet");
    auto* plan = button(tr("Plan"), "", Sign::plan);
    plan->setAccessibleName(tr("Plan: what can this hair take today"));
    auto* grades = button(tr("Grades"), "", Sign::pencil);
    grades->setAccessibleName(tr("Grades of this visit by zone"));
    auto* profile = button(tr("Hair and days"), "", Sign::hair);
    profile->setAccessibleName(tr("Hair and days: what she told of her hair and her daily life"));
    head->addWidget(title_, 1);
    head->addWidget(erase);
    page->addLayout(head);
    auto* acts = new FlowLayout(measures().gap(2));
    for (QWidget* w : {profile, grades, plan}) acts->addWidget(w);
    page->addLayout(acts);

    auto* columns = new Columns(measures().px(760));
    columns->put_right_above();  // the way through the visit before the note
    auto* state = panel("surface");
    auto* state_column = column_in(state, 4, 2);
    state_column->addWidget(text(tr("How the hair was"), "heading"));
    auto* line = new FlowLayout(measures().gap(2));
    date_ = new QDateEdit;
    date_->setLocale(QLocale());  // as date_words
    date_->setDisplayFormat(QStringLiteral("d MMM yyyy"));
    date_->setCalendarPopup(true);
    date_->setMinimumWidth(measures().px(140));
    date_->setAccessibleName(tr("Day of the visit"));
    wet_ = new QCheckBox(tr("wet"));
    styled_ = new QCheckBox(tr("styled"));
    product_ = new QCheckBox(tr("with product"));
    line->addWidget(date_);
    for (QCheckBox* check : {wet_, styled_, product_}) {
        check->setAccessibleName(tr("Hair was %1").arg(check->text()));
        line->addWidget(check);
        connect(check, &QCheckBox::toggled, this, &VisitPage::keep_visit);
    }
    state_column->addLayout(line);
    state_column->addWidget(text(tr("Visits compare only when the hair was in the same state."), "caption"));
    note_ = new QPlainTextEdit;
    note_->setTabChangesFocus(true);
    note_->setAcceptDrops(false);  // photos dropped on it are photos, not words
    note_->setAccessibleName(tr("Note on this visit"));
    note_->setPlaceholderText(tr("What she said, what you saw"));
    note_->setMinimumHeight(measures().px(72));  // it takes what the steps beside it leave free
    note_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    state_column->addWidget(note_, 1);
    steps_ = new StepsPanel;
    connect(steps_, &StepsPanel::step_asked, this, &VisitPage::go_to_step);
    connect(steps_, &StepsPanel::missing_asked, this, &VisitPage::go_to_missing);
    columns->left()->addWidget(state);
    columns->right()->addWidget(steps_);
    page->addWidget(columns);

    page->addWidget(text(tr("Photos"), "heading"));
    auto* bring = new FlowLayout(measures().gap(2));
    auto* many = button(tr("Add photos, sorted by view…"), "", Sign::picture);
    auto* camera = button(tr("Camera"));
    camera->setAccessibleName(tr("Take photos with the camera of this computer"));
    bring->addWidget(many);
    bring->addWidget(camera);
    connect(many, &QPushButton::clicked, this, &VisitPage::choose_to_sort);
    connect(camera, &QPushButton::clicked, this, [this] { emit go({Where::camera, client_, visit_id_}); });
    page->addLayout(bring);
    page->addWidget(text(tr("Lay the card beside the hair, flat in its plane. Two or three shots of each view, each "
                            "with card and phone set up anew."),
                         "soft"));
    filled_ = new FlowLayout(measures().gap(3), true);
    unfilled_ = new FlowLayout(measures().gap(3), true);
    for (const View view : all_views()) {
        auto* tray = new ViewTray(view);
        trays_.append(tray);
        unfilled_->addWidget(tray);
        connect(tray, &ViewTray::files_given, this, &VisitPage::take_files);
        connect(tray, &ViewTray::choose_files, this, [this](View v) { choose(v, false); });
        connect(tray, &ViewTray::choose_folder, this, [this](View v) { choose(v, true); });
        connect(tray, &ViewTray::photo_chosen, this, [this, view](Id photo) {
            emit go({Where::photo, client_, visit_id_, photo, view});
        });
        connect(tray, &ViewTray::erase_asked, this, &VisitPage::ask_to_erase_photo);
    }
    page->addLayout(filled_);
    page->addLayout(unfilled_);
    services_ = new ServicesPanel(session_);
    page->addWidget(services_);
    page->addStretch();

    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &VisitPage::keep_visit);
    const auto typed = [this] {
        if (!filling_ && visit_.id == visit_id_) pause_.start();
    };
    connect(note_, &QPlainTextEdit::textChanged, this, typed);
    connect(date_, &QDateEdit::dateChanged, this, typed);
    connect(plan, &QPushButton::clicked, this, [this] { emit go({Where::plan, client_, visit_id_}); });
    connect(grades, &QPushButton::clicked, this, [this] { emit go({Where::grades, client_, visit_id_}); });
    connect(profile, &QPushButton::clicked, this, [this] { emit go({Where::profile, client_, visit_id_}); });
    connect(services_, &ServicesPanel::go, this, &Page::go);
    connect(erase, &QPushButton::clicked, this, &VisitPage::ask_to_erase_visit);
    connect(&session_, &Session::visit_changed, this, [this](Id visit) {
        if (visit == visit_id_ && isVisible()) load();
    });
}

ViewTray* VisitPage::tray(View view) const {
    for (ViewTray* tray : trays_)
        if (tray->view() == view) return tray;
    return nullptr;
}

void VisitPage::show_place(const Place& place) {
    if (visit_id_ != place.visit) {
        pause_.stop();
        unkept_ = false;
        to_top();
        looks_.clear();
        asked_looks_.clear();
    }
    client_ = place.client;
    visit_id_ = place.visit;
    load();
}

void VisitPage::put_away(std::function<void()> then) {
    date_->interpretText();  // ends a day that is half typed
    if (pause_.isActive() || unkept_) keep_visit();
    then();
}

void VisitPage::load() {
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading the visit"), this,
        [id = visit_id_](Book& book, const Progress& progress) { return visit_data(book, id, progress); },
        [this](const VisitData& read) {
            settled_ = true;
            if (read.visit.id == visit_id_) take(read);
        },
        [this] { settled_ = true; });
}

void VisitPage::take(const VisitData& read) {
    client_ = read.client.id;
    client_name_ = read.client.name;
    photos_ = read.photos;
    take_entries(read.visit);
    title_->setText(tr("Visit of %1").arg(date_words(visit_.date)));
    for (ViewTray* tray : trays_) tray->show_photos(read.photos, looks_);
    order_trays();
    fill_steps(read);
    services_->show_services(client_, visit_id_, visit_.date, read.services);
    look_at_new(read.photos);
    emit trail_changed(
        {{client_name_, {Where::client, client_}}, {date_words(visit_.date), {Where::visit, client_, visit_id_}}});
}

Visit VisitPage::entered() const {
    Visit visit = visit_;
    visit.date = date_->date();
    visit.hair = {wet_->isChecked(), styled_->isChecked(), product_->isChecked()};
    visit.note = note_->toPlainText();
    return visit;
}

// What was entered since the visit was read stays; what is being kept is read again once it is.
void VisitPage::take_entries(const Visit& read) {
    if (visit_.id == read.id && (keeping_ > 0 || unkept_)) return;
    Visit shown = read;
    if (visit_.id == read.id) {
        const Visit now = entered();
        if (now.date != visit_.date) shown.date = now.date;
        if (now.hair != visit_.hair) shown.hair = now.hair;
        if (now.note != visit_.note) shown.note = now.note;
    }
    visit_ = read;
    fill_entries(shown);
}

void VisitPage::fill_entries(const Visit& visit) {
    filling_ = true;
    if (date_->date() != visit.date) date_->setDate(visit.date);  // a day that is half typed stays
    wet_->setChecked(visit.hair.wet);
    styled_->setChecked(visit.hair.styled);
    product_->setChecked(visit.hair.product);
    if (note_->toPlainText() != visit.note) note_->setPlainText(visit.note);
    filling_ = false;
}

// Views with photos first, the others in rows of their own: what is there is seen without scrolling past what is not.
void VisitPage::order_trays() {
    for (ViewTray* tray : trays_) {
        filled_->removeWidget(tray);
        unfilled_->removeWidget(tray);
    }
    for (ViewTray* tray : trays_) (tray->shots() > 0 ? filled_ : unfilled_)->addWidget(tray);
    tidy_focus_order_later(this);
}

// What is still being typed goes first.
void VisitPage::undo(const Place& here) {
    if (!pause_.isActive() && !unkept_) return Page::undo(here);
    pause_.stop();
    if (!unkept_) return fill_entries(visit_);
    unkept_ = false;
    visit_ = {};  // as the book has it
    load();
}

void VisitPage::keep_visit() {
    if (filling_ || visit_id_ == 0 || visit_.id != visit_id_) return;  // not read yet
    pause_.stop();
    const Visit visit = entered();
    const bool same = visit.date == visit_.date && visit.hair == visit_.hair && visit.note == visit_.note;
    if (same && !unkept_) return;
    const QString what = visit.date != visit_.date   ? tr("day of the visit")
                         : visit.hair != visit_.hair ? tr("how the hair was")
                                                     : tr("note on the visit");
    visit_ = visit;
    ++keeping_;
    keep_entry(
        session_, tr("Keeping the visit"), this,
        {what, QStringLiteral("visit/%1/").arg(visit.id), visit.client, visit.id, {}},
        [id = visit.id](Book& book) { return work::visit_of(book, id); },
        [visit](Book& book) { return work::change_visit(book, visit); },
        [this, visit](const Status& kept) {
            --keeping_;
            if (visit.id == visit_id_) unkept_ = !kept.ok();  // the next entry tries again
            if (kept.ok()) return session_.changed(visit.client, visit.id);
            session_.tell(kept.error());
        });
}

}  // namespace kempt::desk
