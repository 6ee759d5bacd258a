#include "desk/plan/dates_panel.h"

#include <QCheckBox>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "desk/look/look.h"
#include "desk/plan/calendar_file.h"
#include "desk/plan/plan_words.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

QString range_words(const care::DateRange& range) {
    const QString from = date_words(work::date_of(range.from)), to = date_words(work::date_of(range.to));
    return range.from == range.to ? from : QObject::tr("%1 to %2").arg(from, to);
}

}  // namespace

DatesPanel::DatesPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("Next dates"), "heading"));
    rows_ = new QVBoxLayout;
    rows_->setSpacing(measures().gap(2));
    column->addLayout(rows_);
    auto* acts = new FlowLayout(measures().gap(3));
    save_ = button(tr("Save for a calendar…"), "", Sign::report);
    with_name_ = new QCheckBox(tr("with her name"));
    with_name_->setAccessibleName(tr("The calendar file carries the client's name"));
    with_name_->setToolTip(tr("The file leaves the book. Without the name it says the client's number."));
    acts->addWidget(save_);
    acts->addWidget(with_name_);
    column->addLayout(acts);
    column->addStretch();
    connect(save_, &QPushButton::clicked, this, &DatesPanel::choose_file);
}

void DatesPanel::show_dates(const Client& client, const work::CarePlan& plan) {
    client_ = client;
    dates_ = plan.dates;
    empty_layout(rows_);
    const care::Day today = work::care_day(plan.today);
    for (const care::DateRange& range : plan.dates) {
        auto* box = new QWidget;
        auto* column = column_in(box, 0, 0.5);
        column->addWidget(text(beginning(said(word_of(range.sort))), "strong"));
        auto* when = text(range_words(range));
        column->addWidget(when);
        if (range.to < today) {
            when->setText(tr("%1: its last day has passed").arg(range_words(range)));
            when->setProperty("tone", "caution");
        }
        if (range.expected)
            column->addWidget(text(tr("Likeliest %1.").arg(date_words(work::date_of(*range.expected))), "soft"));
        column->addWidget(text(tr("%1 Source: %2").arg(said(range.reason), said(range.source)), "caption"));
        rows_->addWidget(box);
    }
    if (plan.dates.empty())
        rows_->addWidget(
            text(tr("None yet. Dates are counted from services and photos that are in the book."), "soft"));
    save_->setEnabled(!plan.dates.empty());
    save_->setToolTip(plan.dates.empty() ? tr("There are no dates to save yet.") : QString());
    with_name_->setVisible(!plan.dates.empty());
}

void DatesPanel::choose_file() {
    choose_calendar_file(this, tr("dates %1.ics").arg(client_.name.simplified()),
                         [this](const QString& path) { write_to(path); });
}

void DatesPanel::write_to(const QString& path) {
    write_calendar(
        session_, path,
        [client = client_, dates = dates_](Book& book, const work::CalendarOptions& options) {
            return work::calendar_of(book, client, dates, options);
        },
        with_name_->isChecked());
}

HomeCarePanel::HomeCarePanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("Care at home"), "heading"));
    sum_ = text({}, "soft");
    column->addWidget(sum_);
    rows_ = new QVBoxLayout;
    rows_->setSpacing(measures().gap(2));
    column->addLayout(rows_);
    more_ = button({}, "quiet");
    column->addWidget(more_, 0, Qt::AlignLeft);
    more_box_ = new QWidget;
    left_out_ = column_in(more_box_, 0, 2);
    column->addWidget(more_box_);
    column->addStretch();
    more_box_->hide();
    more_->setCheckable(true);
    connect(more_, &QPushButton::toggled, more_box_, &QWidget::setVisible);
}

void HomeCarePanel::show_care(const care::HomeCarePlan& plan) {
    empty_layout(rows_);
    empty_layout(left_out_);
    const auto add = [](QBoxLayout* into, const care::Tip& tip) {
        auto* box = new QWidget;
        auto* column = column_in(box, 0, 0.5);
        column->addWidget(text(said(tip.text)));
        const QString minutes =
            tip.minutes_a_week > 0 ? QObject::tr("%1 min a week. ").arg(std::lround(tip.minutes_a_week)) : QString();
        column->addWidget(text(minutes + QObject::tr("Source: %1").arg(said(tip.source)), "caption"));
        into->addWidget(box);
    };
    for (const care::Tip& tip : plan.tips) add(rows_, tip);
    for (const care::Tip& tip : plan.left_out) add(left_out_, tip);
    QString words = plan.tips.empty() ? tr("Nothing fits what is known so far.")
                                      : tr("%1 min a week").arg(std::lround(plan.minutes_a_week));
    if (!plan.tips.empty() && plan.minutes_there_are)
        words += tr(" of the %1 that she has").arg(std::lround(*plan.minutes_there_are));
    if (!plan.questions.empty()) words += tr(". More may belong here: %1").arg(said(plan.questions.front()));
    sum_->setText(words);
    const auto count = static_cast<qsizetype>(plan.left_out.size());
    more_->setText(tr("Left out for her minutes or the page: %1").arg(count));
    more_->setAccessibleName(more_->text());
    more_->setVisible(count > 0);
    more_box_->setVisible(count > 0 && more_->isChecked());
}

}  // namespace kempt::desk
