#include "desk/plan/plan_page.h"

#include <QHBoxLayout>
#include <QMenu>
#include <QPointer>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/consultation/keep_told.h"
#include "desk/look/look.h"
#include "desk/plan/cautions_strip.h"
#include "desk/plan/dates_panel.h"
#include "desk/plan/findings_panel.h"
#include "desk/plan/hair_panel.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/questions_panel.h"
#include "desk/plan/service_form.h"
#include "desk/plan/was_it_done.h"
#include "desk/plan/work_panel.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "work/plan_words.h"

namespace kempt::desk {
namespace {

// A third of a second after the last key: shorter than the eye goes from the keys to the findings.
constexpr int pause_ms = 300;
constexpr double widest = 1640;  // at 100 %: wider, the lines of two columns get too long to be read

}  // namespace

PlanPage::PlanPage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* outside = scrolled();
    auto* middle = new QWidget;
    middle->setMaximumWidth(measures().px(widest));
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    row->addWidget(middle, 1000);
    row->addStretch(1);
    outside->addLayout(row);
    outside->addStretch();
    build(column_in(middle, 0, 4));
    cautions_ = new CautionsStrip;
    layout()->addWidget(cautions_);
    qobject_cast<QBoxLayout*>(layout())->setSpacing(0);

    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, [this] {
        keep_draft();
        work_out();
    });
    connect(findings_, &FindingsPanel::kind_chosen, this, &PlanPage::add_service);
    connect(questions_, &QuestionsPanel::answered, this, &PlanPage::answer);
    connect(questions_, &QuestionsPanel::field_asked, this, &PlanPage::focus_field);
    connect(questions_, &QuestionsPanel::field_answered, this, [this](PlanField field, const std::optional<bool>& yes) {
        for (const Planned& one : services_) one.form->answer(field, yes);
    });
    connect(questions_, &QuestionsPanel::record_asked, this, [this] { emit go({Where::client, place_.client}); });
    connect(questions_, &QuestionsPanel::grades_asked, this, [this] {
        const Id visit = data_.visit_today > 0 ? data_.visit_today : place_.visit;
        // Grades belong to a visit; without one the client's page opens one.
        emit go(visit > 0 ? Place{Where::grades, place_.client, visit} : Place{Where::client, place_.client});
    });
    connect(was_it_done_, &WasItDone::done, this, &PlanPage::mark_done);
    connect(was_it_done_, &WasItDone::all_there, this, &PlanPage::confirm_history);
    connect(was_it_done_, &WasItDone::opened, this, [this](Id service) {
        Place place{Where::service, place_.client, place_.visit};
        place.service = service;
        emit go(place);
    });
    connect(&session_, &Session::client_changed, this, [this](Id client) {
        if (client == place_.client && isVisible()) load();
    });
}

void PlanPage::build(QBoxLayout* column) {
    title_ = text(tr("What can this hair take today?"), "title");
    below_ = text({}, "soft");
    column->addWidget(title_);
    column->addWidget(below_);
    was_it_done_ = new WasItDone;
    column->addWidget(was_it_done_);
    auto* columns = new Columns(measures().px(900));
    columns->set_shares(1, 1);
    columns->left()->addWidget(build_planned());
    findings_ = new FindingsPanel;
    questions_ = new QuestionsPanel;
    columns->left()->addStretch();
    columns->right()->addWidget(findings_);
    columns->right()->addStretch();
    column->addWidget(columns);
    column->addWidget(questions_);
    works_ = new QVBoxLayout;
    works_->setSpacing(measures().gap(4));
    column->addLayout(works_);
    hair_ = new HairPanel;
    column->addWidget(hair_);
    auto* below = new Columns(measures().px(900));
    below->set_shares(1, 1);
    dates_ = new DatesPanel(session_);
    home_ = new HomeCarePanel;
    below->left()->addWidget(dates_);
    below->left()->addStretch();
    below->right()->addWidget(home_);
    below->right()->addStretch();
    column->addWidget(below);
}

QWidget* PlanPage::build_planned() {
    auto* box = new QWidget;
    auto* column = column_in(box, 0, 2);
    column->addWidget(text(tr("Planned today"), "heading"));
    auto* acts = new FlowLayout(measures().gap(2));
    add_ = button(tr("Add a service"), "primary", Sign::add);
    auto* menu = new QMenu(add_);
    for (const KindGroup& group : kind_groups()) {
        auto* of = menu->addMenu(group.name);
        for (const care::Kind kind : group.kinds)
            of->addAction(beginning(said(word_of(kind))), this, [this, kind] { add_service(kind); });
    }
    add_->setMenu(menu);
    again_ = button({}, "quiet");
    put_back_ = button({}, "quiet", Sign::undo);
    for (QWidget* w : std::initializer_list<QWidget*>{add_, again_, put_back_}) acts->addWidget(w);
    column->addLayout(acts);
    nothing_ = text(tr("Nothing yet. Add a service: what speaks against it is said at once."), "soft");
    column->addWidget(nothing_);
    forms_ = new QVBoxLayout;
    forms_->setSpacing(measures().gap(2));
    column->addLayout(forms_);
    connect(again_, &QPushButton::clicked, this, [this] {
        if (!data_.draft) return;
        show_services(without_that_day(data_.draft->items));
        entered();
    });
    connect(put_back_, &QPushButton::clicked, this, &PlanPage::put_back);
    return box;
}

bool PlanPage::settled() const {
    return settled_ && !planning_ && !pause_.isActive();
}

void PlanPage::show_place(const Place& place) {
    if (place.client != place_.client) {
        to_top();
        filled_ = unkept_ = false;
        shown_.reset();
        taken_off_.reset();
        show_services({});
        questions_->begin();
    }
    place_ = place;
    load();
}

void PlanPage::put_away(std::function<void()> then) {
    questions_->flush();
    if (pause_.isActive()) {
        pause_.stop();
        keep_draft();
    }
    then();
}

void PlanPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    cautions_->fit(width(), height());
}

void PlanPage::load() {
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading what is known of the hair"), this,
        [id = place_.client, today = Clock().today()](Book& book, const Progress&) {
            return plan_data(book, id, today);
        },
        [this](PlanData read) {
            settled_ = true;
            if (read.client.id == place_.client) take(std::move(read));
        },
        [this] { settled_ = true; });
}

void PlanPage::take(PlanData read) {
    data_ = std::move(read);
    below_->setText(tr("%1  ·  %2").arg(name_within(data_.client.name), date_words(data_.today)));
    Trail trail{{data_.client.name, {Where::client, data_.client.id}}};
    if (place_.visit > 0) trail.append({tr("Visit"), {Where::visit, place_.client, place_.visit}});
    trail.append({tr("Plan"), place_});
    emit trail_changed(trail);
    if (!filled_) take_draft();
    work_out();
}

void PlanPage::take_draft() {
    filled_ = true;
    const bool todays = data_.draft && data_.draft->day == data_.today;
    show_services(todays ? data_.draft->items : std::vector<work::DraftItem>{});
    if (todays || !data_.draft) return;
    QStringList names;
    for (const work::DraftItem& one : data_.draft->items) names.append(said(word_of(one.item.service.kind)));
    again_->setText(tr("As planned on %1").arg(short_date_words(data_.draft->day)));
    again_->setAccessibleName(
        tr("Plan what was planned on %1: %2").arg(date_words(data_.draft->day), names.join(QStringLiteral(", "))));
    again_->setToolTip(names.join(QStringLiteral(", ")));
    again_->show();
}

void PlanPage::entered() {
    for (const Planned& one : services_)
        if (one.work != nullptr) one.work->set_sections(one.form->service().sections);
    unkept_ = true;
    pause_.start();
}

void PlanPage::keep_draft() {
    if (!unkept_ || place_.client == 0) return;
    unkept_ = false;
    work::PlanDraft draft{data_.today, items()};
    data_.draft = draft;
    session_.ask(
        session_.records(), tr("Keeping the plan"), &session_,
        [id = place_.client, draft](Book& book, const Progress&) { return work::keep_plan_draft(book, id, draft); },
        [](Done) {});
}

void PlanPage::work_out() {
    work::PlanRequest request = data_.base;
    for (work::DraftItem& one : items()) request.services.push_back(std::move(one.item));
    planning_ = true;
    session_.live().start_latest(
        QStringLiteral("plan"), tr("Working out the plan"), this,
        [state = data_.state, request](const Progress& progress) { return worked_out(state, request, progress); },
        [this, client = place_.client](Result<WorkedOut> worked) {
            planning_ = false;
            if (client != place_.client) return;
            if (worked.ok()) return take_plan(std::move(*worked));
            if (worked.error().kind == ErrorKind::cancelled) return;
            findings_->show_error(worked.error());
        });
}

void PlanPage::take_plan(WorkedOut worked) {
    shown_ = std::move(worked);
    const work::CarePlan& plan = shown_->plan;
    was_it_done_->show_open(plan.unanswered, said(work::history_sentence(plan)));
    findings_->show_plan(plan);
    QVector<PlanField> on_forms;
    for (int field = 0; field <= static_cast<int>(PlanField::order); ++field)
        for (const Planned& one : services_)
            if (one.form->shows(static_cast<PlanField>(field))) on_forms.append(static_cast<PlanField>(field));
    questions_->show_questions(plan, data_, on_forms);
    // An answer of a moment ago may have been for services that have changed since.
    for (int i = 0; i < services_.size() && i < static_cast<int>(plan.services.size()); ++i)
        if (services_[i].work != nullptr && services_[i].form->kind() == plan.services[i].service.kind)
            services_[i].work->show_plan(plan.services[i], data_.state.length_mm);
    hair_->show_hair(data_.state, shown_->carried, plan);
    dates_->show_dates(data_.client, plan);
    home_->show_care(plan.home_care);
    tidy_focus_order_later(this);
}

void PlanPage::answer(const Answering& answering, const std::optional<double>& value) {
    keep_of_client(tr("an answer before the service"),
                   [id = place_.client, today = data_.today, answering, value](Book& book) {
                       return keep_answer(book, id, today, answering, value);
                   });
}

// What she told, from here; the page shows what is really kept.
void PlanPage::keep_of_client(const QString& words, std::function<Status(Book&)> write) {
    settled_ = false;
    keep_told(session_, &session_, place_.client, words, std::move(write),
              [session = &session_, id = place_.client, self = QPointer<PlanPage>(this)](const Status& kept) {
                  if (kept.ok()) return session->changed(id, 0);
                  session->tell(kept.error());
                  if (self) self->load();
              });
}

}  // namespace kempt::desk
