#include "desk/plan/hair_panel.h"

#include <QCheckBox>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/plan/plan_words.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "domain/measure_units.h"
#include "work/care_state.h"

namespace kempt::desk {
namespace {

QString growth_words(const work::GrowthNow& growth) {
    const auto mm = [](double value) { return length_words(value); };
    return QObject::tr("New growth since the %1 of %2: %3 (%4 to %5), %6.")
        .arg(said(word_of(growth.kind)), short_date_words(work::date_of(growth.since)), mm(growth.new_growth_mm.value),
             mm(growth.new_growth_mm.low), mm(growth.new_growth_mm.high),
             !growth.measured ? QObject::tr("from the rate of growth")
             : growth.by_tape ? QObject::tr("measured by tape")
                              : QObject::tr("measured on a photo"));
}

}  // namespace

HairPanel::HairPanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("What this hair has been through"), "heading"));
    column->addWidget(text(tr("From the scalp on the left to the ends. A full stroke: it surely went through this. "
                              "Dotted: perhaps, as the rate of growth leaves it open. Lightened hair is hollow. Press "
                              "a place, or walk it with Left and Right."),
                           "caption"));
    gentle_ = new QCheckBox(tr("with treatments and styling"));
    gentle_->setAccessibleName(tr("Show treatments and styling along the hair too"));
    column->addWidget(gentle_);
    strand_ = new StrandView;
    column->addWidget(strand_);
    place_ = text({}, "lead");
    column->addWidget(place_);
    list_ = new QVBoxLayout;
    list_->setSpacing(measures().gap(1));
    column->addLayout(list_);
    growth_ = text({}, "caption");
    column->addWidget(growth_);
    connect(gentle_, &QCheckBox::toggled, strand_, &StrandView::set_gentle_too);
    connect(strand_, &StrandView::place_picked, this, &HairPanel::list_place);
}

void HairPanel::show_hair(const care::ClientState& state, const std::vector<care::Carried>& carried,
                          const work::CarePlan& plan) {
    state_ = state;
    carried_ = carried;
    plan_ = plan;
    gentle_->setVisible(std::any_of(carried.begin(), carried.end(), [&](const care::Carried& one) {
        return sort_of(state.history.services[one.service].kind) == LaneSort::gentle;
    }));
    strand_->show_hair(state, carried, plan);
    QStringList words;
    for (const work::GrowthNow& growth : plan.growth) words.append(growth_words(growth));
    constexpr double month = 30.44 / 1000;  // days in a mean month; µm to mm
    const double rate = plan.rate.um_per_day * month, half = 1.96 * plan.rate.sd_um_per_day * month;
    const auto mm = [half](double value) {
        return in_figures(plain_value(value, half, QStringLiteral("mm"), look().length()));
    };
    words.append(tr("Growth of %1 a month (95 %: %2 to %3). %4")
                     .arg(mm(rate), mm(std::max(0.0, rate - half)), mm(rate + half), said(plan.rate_from)));
    growth_->setText(words.join(QLatin1Char(' ')));
    list_place();
}

void HairPanel::list_place() {
    empty_layout(list_);
    const care::Span at = strand_->picked();
    const double middle = (at.from_mm + at.to_mm) / 2;
    place_->setText(tr("At %1 from the scalp").arg(span_words(at)));
    const QVector<PassedWords> all = passed_at(middle, state_, carried_);
    for (const PassedWords& one : all)
        list_->addWidget(
            text(one.surely ? beginning(one.words) : tr("Perhaps: %1").arg(one.words), one.surely ? "" : "soft"));
    const bool whole = record_reaches(middle, plan_);
    if (all.isEmpty())
        list_->addWidget(text(whole ? tr("Nothing that is in the record.") : tr("Nothing is in the record."), ""));
    if (!whole)
        list_->addWidget(text(tr("The record does not reach back to when this hair grew: it may have been through "
                                 "more. Ask."),
                              "soft"));
    QStringList words = listed();
    strand_->setAccessibleDescription(place_->text() + QStringLiteral(": ") + words.join(QStringLiteral("; ")));
}

QStringList HairPanel::listed() const {
    QStringList words;
    for (int i = 0; i < list_->count(); ++i)
        if (const auto* label = qobject_cast<QLabel*>(list_->itemAt(i)->widget())) words.append(label->text());
    return words;
}

}  // namespace kempt::desk
