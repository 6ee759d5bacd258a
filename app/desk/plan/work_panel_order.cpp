// What comes of the entries: the drawing, or why nothing works and what would.
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStyle>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/stretch_bar.h"
#include "desk/plan/timeline_view.h"
#include "desk/plan/work_panel.h"
#include "desk/translations/said.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

void WorkPanel::show_plan(const work::ServicePlan& plan, const std::optional<double>& length_mm) {
    stretches_->set_coverage(plan.coverage, length_mm);
    QString words = coverage_words(plan.coverage);
    if (plan.coverage.unsure)
        words +=
            tr(" The record does not say what all of this hair has been through: find the line of demarcation by "
               "eye first.");
    unsure_->setText(words.trimmed());
    unsure_->setVisible(!words.trimmed().isEmpty());
    show_parts(plan.coverage);
    empty_layout(order_);
    views_.clear();
    remedies_.clear();
    say_->setProperty("role", "soft");
    if (plan.timeline) {
        show_order(*plan.timeline);
    } else {
        QString say = said(plan.no_timeline);
        if (!hint_.isEmpty()) say += QLatin1Char(' ') + hint_;
        say_->setText(say);
        if (plan.stopped) say_->setProperty("role", "strong");
    }
    if (!views_.isEmpty()) add_legend();
    say_->setVisible(!say_->text().isEmpty());
    say_->style()->unpolish(say_);
    say_->style()->polish(say_);
    tidy_focus_order_later(this);
}

void WorkPanel::show_order(const work::PlannedTimeline& planned) {
    const QString kind = said(word_of(kind_));
    if (planned.timeline.works) {
        say_->setText(
            tr("In this order every part keeps within what is tolerated, with one rinse %1 after the first stroke.")
                .arg(clock_words(planned.timeline.rinse_minutes)));
        add_timeline(tr("Order of work: %1").arg(kind), planned.application, planned.timeline);
        return;
    }
    const auto rounds = std::find_if(planned.would_help.begin(), planned.would_help.end(),
                                     [](const auto& one) { return one.remedy.sort == care::RemedySort::rounds; });
    if (in_rounds_ && rounds != planned.would_help.end()) {
        say_->setText(said(rounds->remedy.text));
        for (std::size_t i = 0; i < rounds->rounds.size(); ++i) {
            order_->addWidget(text(tr("Round %1").arg(i + 1), "lead"));
            add_timeline(tr("Order of work: %1, round %2").arg(kind).arg(i + 1), rounds->remedy.rounds[i],
                         rounds->rounds[i]);
        }
        auto* once = button(tr("All in one go instead"), "quiet");
        connect(once, &QPushButton::clicked, this, [this] {
            in_rounds_ = false;
            emit entered();
        });
        order_->addWidget(once, 0, Qt::AlignLeft);
        return;
    }
    say_->setText({});
    auto* box = panel("worse");
    auto* column = column_in(box, 3, 1);
    column->addWidget(text(tr("No order of work keeps every part within what is tolerated."), "strong"));
    column->addWidget(text(said(planned.timeline.why_not)));
    box->setAccessibleName(tr("No order works. %1").arg(said(planned.timeline.why_not)));
    order_->addWidget(box);
    if (planned.would_help.empty()) {
        order_->addWidget(text(tr("Neither more people, nor rounds, nor a milder strength would make one work. Plan "
                                  "less hair, or do it on another day."),
                               "strong"));
    } else {
        order_->addWidget(text(tr("What would make one work"), "lead"));
        for (const work::ProvenRemedy& remedy : planned.would_help) add_remedy(remedy);
    }
    order_->addWidget(text(tr("The least bad order, to see where it fails:"), "caption"));
    add_timeline(tr("Order that does not work: %1").arg(kind), planned.application, planned.timeline);
}

void WorkPanel::add_timeline(const QString& title, const care::Application& application,
                             const care::Timeline& timeline) {
    auto* view = new TimelineView;
    view->set_timeline(title, application, timeline);
    views_.append(view);
    order_->addWidget(view);
}

// How the drawing is read.
void WorkPanel::add_legend() {
    order_->addWidget(text(tr("A strip is the hair of one part: it begins with the first stroke, is all covered at "
                              "the end of the slant, and runs to the rinse. The line that slants alike is where "
                              "its hair is ready; barred beyond it is over-processed, dotted past the rinse is "
                              "under-processed."),
                           "caption"));
}

void WorkPanel::add_remedy(const work::ProvenRemedy& remedy) {
    auto* row = new QHBoxLayout;
    row->setSpacing(measures().gap(2));
    const QString words = said(remedy.remedy.text);
    row->addWidget(text(words), 1);
    auto* take = button(tr("Do it so"));
    take->setAccessibleName(tr("Do it so: %1").arg(words));
    connect(take, &QPushButton::clicked, this, [this, one = remedy.remedy] { take_over(one); });
    row->addWidget(take, 0, Qt::AlignTop);
    remedies_.append(take);
    order_->addLayout(row);
}

void WorkPanel::take_over(const care::Remedy& remedy) {
    switch (remedy.sort) {
        case care::RemedySort::more_hands:
            hands_->set_chosen(remedy.rounds.front().hands - 1);
            break;
        case care::RemedySort::rounds:
            in_rounds_ = true;
            break;
        case care::RemedySort::smaller_sections: {
            std::vector<care::SectionMinutes> halves;
            for (const care::SectionMinutes& line : lines())
                for (const char* which : {", first half", ", second half"})  // as the proof names them
                    halves.push_back({line.name + which, line.roots / 2, line.mid_shaft / 2, line.ends / 2});
            fill_table(halves);
            in_rounds_ = true;
            break;
        }
        case care::RemedySort::milder: {
            const double now = strand_->number().value_or(0);
            hint_ = tr("With the milder strength an order works if its strand test takes %1 to %2 min.")
                        .arg(std::ceil(now * remedy.least_factor))
                        .arg(std::floor(now * remedy.most_factor));
            strand_->set_number(std::nullopt);
            roots_->set_number(std::nullopt);
            ends_->set_number(std::nullopt);
            emit milder_asked();
            break;
        }
    }
    emit entered();
}

}  // namespace kempt::desk
