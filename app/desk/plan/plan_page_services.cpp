// The services on the plan page: adding them, taking them off, putting them back, what is entered of them.
#include <QPointer>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/client/keep_service.h"
#include "desk/plan/plan_page.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/service_form.h"
#include "desk/plan/work_panel.h"
#include "desk/translations/said.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/parts.h"
#include "work/keep_care.h"
#include "work/keep_records.h"

namespace kempt::desk {

void PlanPage::show_services(const std::vector<work::DraftItem>& items) {
    empty_layout(forms_);
    empty_layout(works_);
    services_.clear();
    for (const work::DraftItem& one : items) add_widgets(one);
    again_->hide();
    show_empty();
}

void PlanPage::show_empty() {
    nothing_->setVisible(services_.isEmpty());
    put_back_->setVisible(taken_off_.has_value());
    tidy_focus_order_later(this);
}

void PlanPage::add_widgets(const work::DraftItem& item) {
    Planned made;
    made.form = new ServiceForm(item.item.service);
    forms_->addWidget(made.form);
    connect(made.form, &ServiceForm::entered, this, &PlanPage::entered);
    connect(made.form, &ServiceForm::remove_asked, this, [this, form = made.form] { remove_service(form); });
    if (wants(item.item.service.kind, PlanField::order)) {
        made.work = new WorkPanel(item);
        works_->addWidget(made.work);
        connect(made.work, &WorkPanel::entered, this, &PlanPage::entered);
        connect(made.work, &WorkPanel::milder_asked, this, [this, form = made.form] { one_step_milder(form); });
    }
    services_.append(made);
}

void PlanPage::add_service(care::Kind kind) {
    work::DraftItem item;
    item.item.service.kind = kind;
    // A second straightening or perm goes on new growth; whether there was a first one, the record says.
    item.item.service.new_growth_only =
        wants(kind, PlanField::new_growth) && care::grown_from(kind, data_.state) != nullptr;
    add_widgets(item);
    again_->hide();
    show_empty();
    entered();
}

void PlanPage::remove_service(ServiceForm* form) {
    for (int i = 0; i < services_.size(); ++i) {
        if (services_[i].form != form) continue;
        taken_off_ = qMakePair(i, items()[static_cast<std::size_t>(i)]);
        const QString name = said(word_of(form->kind()));
        put_back_->setText(QLatin1Char(' ') + tr("Put %1 back").arg(name));
        put_back_->setAccessibleName(tr("Put %1 back on the plan").arg(name));
        for (QWidget* widget : std::initializer_list<QWidget*>{services_[i].form, services_[i].work})
            if (widget != nullptr) {
                widget->hide();
                widget->deleteLater();
            }
        services_.removeAt(i);
        break;
    }
    show_empty();
    add_->setFocus(Qt::OtherFocusReason);
    entered();
}

void PlanPage::put_back() {
    if (!taken_off_) return;
    auto all = items();
    all.insert(all.begin() + std::min<std::ptrdiff_t>(taken_off_->first, static_cast<std::ptrdiff_t>(all.size())),
               taken_off_->second);
    taken_off_.reset();
    show_services(all);
    entered();
}

void PlanPage::one_step_milder(ServiceForm* form) {
    const auto now = form->service().strength;
    if (now && *now != care::Strength::mild)
        form->set_strength(static_cast<care::Strength>(static_cast<int>(*now) - 1));
    form->clear_strand_test();
}

std::vector<work::DraftItem> PlanPage::items() const {
    std::vector<work::DraftItem> all;
    for (const Planned& one : services_) {
        work::DraftItem item;
        item.item.service = one.form->service();
        if (one.work != nullptr) {
            item.item.setting = one.work->setting();
            item.in_rounds = one.work->in_rounds();
        }
        all.push_back(std::move(item));
    }
    return all;
}

void PlanPage::mark_done(const Service& service) {
    settled_ = false;
    mark_service_done(session_, &session_, service, 0, [self = QPointer<PlanPage>(this)] {
        if (self) self->load();
    });
}

void PlanPage::confirm_history() {
    keep_of_client(tr("“every service is in the record”"), [id = place_.client, today = data_.today](Book& book) {
        return work::confirm_history(book, id, today);
    });
}

void PlanPage::focus_field(PlanField field) {
    for (const bool open : {true, false})
        for (const Planned& one : services_)
            if ((!open || one.form->has_open(field)) && one.form->focus_field(field)) return;
}

}  // namespace kempt::desk
