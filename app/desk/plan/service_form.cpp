#include "desk/plan/service_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/section_picker.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

// Upper ends of the fields. Four hours: longer than any maker's directions (common practice). 250: hotter than irons
// for hair are made (common practice). A week and a day: an older patch test says the same as an older one still.
constexpr double longest_minutes = 240, most_celsius = 250, most_passes = 20, most_hours = 999;

int index_of_test(const std::optional<bool>& made, const std::optional<care::TestResult>& result) {
    if (result) return *result == care::TestResult::passed ? 0 : 1;
    return made && !*made ? 2 : 3;
}

}  // namespace

ServiceForm::ServiceForm(const care::PlannedService& service, QWidget* parent) : QFrame(parent), service_(service) {
    setProperty("panel", "surface");
    setAccessibleName(tr("Planned: %1").arg(said(word_of(service_.kind))));
    build();
}

QString ServiceForm::name_of(const QString& words) const {
    return tr("%1 of %2").arg(words, said(word_of(service_.kind)));
}

void ServiceForm::build() {
    auto* column = column_in(this, 4, 2);
    auto* head = new QHBoxLayout;
    head->addWidget(text(beginning(said(word_of(service_.kind))), "lead"), 1);
    auto* remove = sign_button(Sign::remove, tr("Take %1 off the plan").arg(said(word_of(service_.kind))));
    connect(remove, &QToolButton::clicked, this, &ServiceForm::remove_asked);
    head->addWidget(remove, 0, Qt::AlignTop);
    column->addLayout(head);
    auto* row = new FlowLayout(measures().gap(3));
    add_stretch(row);
    add_numbers(row);
    column->addLayout(row);
    add_sections(column);
    auto* choices = new FlowLayout(measures().gap(4));
    add_choices(choices);
    column->addLayout(choices);
    if (row->count() == 0 && choices->count() == 0 && !wants(service_.kind, PlanField::sections))
        column->addWidget(text(tr("Nothing else has to be said of it."), "caption"));
}

void ServiceForm::add_stretch(QLayout* row) {
    if (!wants(service_.kind, PlanField::stretch)) return;
    from_ = new LengthField(name_of(tr("Beginning, from the scalp,")), tr("the scalp"));
    to_ = new LengthField(name_of(tr("End, from the scalp,")), tr("the ends"));
    from_->set_mm(service_.from_mm > 0 ? std::optional(service_.from_mm) : std::nullopt);
    to_->set_mm(service_.to_mm);
    connect(from_, &NumberField::entered, this, [this] {
        service_.from_mm = from_->mm().value_or(0);
        emit entered();
    });
    connect(to_, &NumberField::entered, this, [this] {
        service_.to_mm = to_->mm();
        emit entered();
    });
    auto* from_box = labelled(tr("From"), from_);
    auto* to_box = labelled(tr("To"), to_);
    fields_.insert(static_cast<int>(PlanField::stretch), from_);
    if (wants(service_.kind, PlanField::new_growth)) {
        new_growth_ = new QCheckBox(tr("new growth only"));
        new_growth_->setAccessibleName(name_of(tr("New growth only")));
        new_growth_->setChecked(service_.new_growth_only);
        fields_.insert(static_cast<int>(PlanField::new_growth), new_growth_);
        row->addWidget(labelled(tr("Where"), new_growth_));
        const auto show = [from_box, to_box](bool only) {
            from_box->setVisible(!only);
            to_box->setVisible(!only);
        };
        connect(new_growth_, &QCheckBox::toggled, this, [this, show](bool only) {
            service_.new_growth_only = only;
            show(only);
            emit entered();
        });
        row->addWidget(from_box);
        row->addWidget(to_box);
        show(service_.new_growth_only);
        return;
    }
    row->addWidget(from_box);
    row->addWidget(to_box);
}

NumberField* ServiceForm::number(QLayout* row, PlanField field, const QString& words, double most, const QString& unit,
                                 std::optional<double> care::PlannedService::*member) {
    auto* box = new NumberField(name_of(words), {most, 0, most > 100 ? 5.0 : 1.0, unit, tr("not entered"), false});
    box->set_number(service_.*member);
    connect(box, &NumberField::entered, this, [this, box, member] {
        service_.*member = box->number();
        emit entered();
    });
    row->addWidget(labelled(tr("%1 (up to %2)").arg(words).arg(most), box));
    if (!fields_.contains(static_cast<int>(field))) fields_.insert(static_cast<int>(field), box);
    return box;
}

void ServiceForm::add_numbers(QLayout* row) {
    if (wants(service_.kind, PlanField::strength)) {
        strength_ = new QComboBox;
        strength_->setAccessibleName(name_of(tr("Strength")));
        strength_->addItem(tr("not chosen"));
        strength_->addItems(said(strengths()));
        strength_->setCurrentIndex(service_.strength ? 1 + static_cast<int>(*service_.strength) : 0);
        strength_->setFocusPolicy(Qt::StrongFocus);
        fields_.insert(static_cast<int>(PlanField::strength), strength_);
        connect(strength_, &QComboBox::currentIndexChanged, this, [this](int index) {
            service_.strength = index > 0 ? std::optional(static_cast<care::Strength>(index - 1)) : std::nullopt;
            emit entered();
        });
        row->addWidget(labelled(tr("Strength"), strength_));
    }
    using P = care::PlannedService;
    if (wants(service_.kind, PlanField::minutes)) {
        minutes_ = number(row, PlanField::minutes, tr("Minutes planned"), longest_minutes, tr("min"), &P::minutes);
        most_ = number(row, PlanField::minutes, tr("Maker's maximum"), longest_minutes, tr("min"), &P::most_minutes);
        minutes_->setSingleStep(1);
        most_->setSingleStep(1);
    }
    if (wants(service_.kind, PlanField::temperature))
        (void)number(row, PlanField::temperature, tr("Temperature"), most_celsius, tr("°C"), &P::temperature_c);
    if (wants(service_.kind, PlanField::passes)) {
        auto* passes =
            new NumberField(name_of(tr("Passes")), {most_passes, 0, 1, tr("times"), tr("not entered"), false});
        passes->set_number(service_.passes ? std::optional<double>(*service_.passes) : std::nullopt);
        connect(passes, &NumberField::entered, this, [this, passes] {
            const auto value = passes->number();
            service_.passes = value ? std::optional(static_cast<int>(*value)) : std::nullopt;
            emit entered();
        });
        fields_.insert(static_cast<int>(PlanField::passes), passes);
        row->addWidget(labelled(tr("Passes over a strand (up to %1)").arg(most_passes), passes));
    }
}

void ServiceForm::add_sections(QLayout* column) {
    if (!wants(service_.kind, PlanField::sections)) return;
    QStringList chosen;
    for (const std::string& section : service_.sections) chosen.append(QString::fromStdString(section));
    auto* picker = new SectionPicker(chosen, [this](const QString& words) { return name_of(words); });
    connect(picker, &SectionPicker::picked, this, [this, picker] {
        service_.sections.clear();
        for (const QString& section : picker->chosen()) service_.sections.push_back(section.toStdString());
        emit entered();
    });
    column->addWidget(picker);
}

void ServiceForm::add_yes_no(QLayout* row, PlanField field, const QString& words) {
    const Truth member = truth_of(field);
    if (!wants(service_.kind, field)) return;
    ChoiceRow* choice = yes_no_row(name_of(words));
    choice->set_chosen(index_of(service_.*member));
    connect(choice, &ChoiceRow::picked, this, [this, member](int index) {
        service_.*member = answer_of(index);
        emit entered();
    });
    choices_.insert(static_cast<int>(field), choice);
    row->addWidget(labelled(words, choice));
}

void ServiceForm::add_test(QLayout* row, PlanField field, const QString& words,
                           std::optional<bool> care::PlannedService::*made,
                           std::optional<care::TestResult> care::PlannedService::*result) {
    if (!wants(service_.kind, field)) return;
    auto* choice = new ChoiceRow(name_of(words), {tr("passed"), tr("failed"), tr("not made"), tr("unknown")});
    choice->set_chosen(index_of_test(service_.*made, service_.*result));
    connect(choice, &ChoiceRow::picked, this, [this, made, result](int index) {
        service_.*result = index == 0   ? std::optional(care::TestResult::passed)
                           : index == 1 ? std::optional(care::TestResult::failed)
                                        : std::nullopt;
        service_.*made = index <= 1 ? std::optional(true) : index == 2 ? std::optional(false) : std::nullopt;
        if (hours_ != nullptr && made == &care::PlannedService::patch_tested) {
            hours_->setEnabled(index <= 1);
            if (index > 1) {  // no test, no hours
                hours_->set_number(std::nullopt);
                service_.patch_test_hours = std::nullopt;
            }
        }
        emit entered();
    });
    choices_.insert(static_cast<int>(field), choice);
    row->addWidget(labelled(words, choice));
}

void ServiceForm::add_choices(QLayout* row) {
    using P = care::PlannedService;
    add_test(row, PlanField::strand_test, tr("Strand test on the weakest hair"), &P::strand_tested, &P::strand_test);
    add_test(row, PlanField::patch_test, tr("Patch test with this very product"), &P::patch_tested, &P::patch_test);
    if (wants(service_.kind, PlanField::patch_test)) {
        hours_ = number(row, PlanField::patch_test, tr("Hours since it was put on"), most_hours, tr("h"),
                        &P::patch_test_hours);
        hours_->setSingleStep(12);
        hours_->setEnabled(service_.patch_tested.value_or(false));
    }
    add_yes_no(row, PlanField::scalp, tr("Product touches the scalp"));
    add_yes_no(row, PlanField::wet, tr("Hair is wet"));
    add_yes_no(row, PlanField::protectant, tr("Heat protectant"));
    add_yes_no(row, PlanField::formaldehyde, tr("Product releases formaldehyde"));
    add_yes_no(row, PlanField::data_sheet, tr("Safety data sheet at hand"));
    add_yes_no(row, PlanField::at_home, tr("To be done at home"));
    add_yes_no(row, PlanField::tight, tr("Style pulls on the hair"));
    add_yes_no(row, PlanField::adds_hair, tr("Hair is added"));
}

}  // namespace kempt::desk
