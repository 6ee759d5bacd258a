#include "desk/consultation/service_record.h"

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "care/client_state.h"
#include "desk/consultation/day_field.h"
#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/plan/section_picker.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

// Upper ends of the fields. Four hours: longer than any maker's directions; 250: hotter than irons for hair are made;
// 20 passes: more than anybody counts (all common practice).
constexpr double longest_minutes = 240, most_celsius = 250, most_passes = 20;

struct Place {
    QString words;
    double from_mm = 0;
    std::optional<double> to_mm;
};

// Quick choices; where mid-shaft and ends lie depends on the length of the hair.
QVector<Place> places(const std::optional<double>& length_mm) {
    QVector<Place> all{{QObject::tr("all of it"), 0, {}}, {QObject::tr("roots"), 0, care::roots_mm}};
    const care::Span ends = care::span_of(care::Part::ends, length_mm);
    if (length_mm && ends.from_mm > care::roots_mm) {
        all.append({QObject::tr("mid-shaft"), care::roots_mm, std::round(ends.from_mm)});
        all.append({QObject::tr("ends"), std::round(ends.from_mm), {}});
    }
    all.append({QObject::tr("not the roots"), care::roots_mm, {}});
    return all;
}

int index_of_place(const QVector<Place>& all, double from_mm, const std::optional<double>& to_mm) {
    const auto same = [&](const Place& one) {
        return std::abs(one.from_mm - from_mm) < 0.5 && one.to_mm.has_value() == to_mm.has_value() &&
               (!to_mm || std::abs(*one.to_mm - *to_mm) < 0.5);
    };
    const auto found = std::find_if(all.begin(), all.end(), same);
    return static_cast<int>(found - all.begin());  // behind the last: another
}

}  // namespace

QBoxLayout* ServiceRecord::box_in(QBoxLayout* column, const QString& heading) {
    auto* frame = panel("surface");
    auto* inside = column_in(frame, 4, 3);
    inside->addWidget(text(heading, "heading"));
    column->addWidget(frame);
    return inside;
}

ServiceRecord::ServiceRecord(const Service& service, const std::optional<double>& length_mm, QWidget* parent)
    : QWidget(parent), service_(service), length_mm_(length_mm) {
    auto* outside = column_in(this, 0, 0);
    auto* columns = new Columns(measures().px(820));
    add_where(columns->left());
    add_how(columns->left());
    columns->left()->addStretch();
    add_tests(columns->right());
    add_outcome(columns->right());
    columns->right()->addStretch();
    outside->addWidget(columns);
}

QString ServiceRecord::name_of(const QString& words) const {
    return tr("%1, %2").arg(words, said(service_.kind));
}

// The day of the patch test stays; how long before it was moves.
void ServiceRecord::set_day(const QDate& day) {
    service_.date = day;
    show_state();
    if (patch_days_ != nullptr && service_.patch_test_on) {
        const qint64 days = service_.patch_test_on->daysTo(day);
        patch_days_->set_number(days < 0 ? std::nullopt : std::optional(static_cast<double>(days)));
    }
}

// What is to come cannot be done yet.
void ServiceRecord::show_state() {
    const bool to_come = service_.date > Clock().today();
    if (to_come) service_.done = false;
    if (state_ == nullptr) return;
    state_->set_chosen(service_.done ? 0 : 1);
    state_->setEnabled(!to_come);
    state_->setToolTip(to_come ? tr("Its day is still to come.") : QString());
}

void ServiceRecord::focus_first() {
    if (where_ != nullptr) return where_->focus_chosen();
    if (to_ != nullptr) return to_->setFocus(Qt::OtherFocusReason);
    if (at_home_ != nullptr) at_home_->focus_chosen();
}

void ServiceRecord::add_where(QBoxLayout* column) {
    QBoxLayout* inside = box_in(column, tr("Where"));
    if (has(RecordField::cut_length)) {
        to_ = new LengthField(name_of(tr("Length that was left")), tr("not known"));
        to_->set_mm(service_.to_mm);
        connect(to_, &NumberField::entered, this, [this] {
            service_.to_mm = to_->mm();
            emit entered();
        });
        inside->addWidget(labelled(tr("Length that was left, stretched straight"), to_), 0, Qt::AlignLeft);
    }
    if (has(RecordField::stretch)) add_stretch(inside);
    if (has(RecordField::sections)) add_sections(inside);
    state_ = new ChoiceRow(name_of(tr("State")), {tr("done"), tr("planned")});
    show_state();
    connect(state_, &ChoiceRow::picked, this, [this](int index) {
        service_.done = index == 0;
        show_state();
        emit entered();
    });
    inside->addWidget(labelled(tr("Done or still planned"), state_));
    at_home_ = new ChoiceRow(name_of(tr("By whom")), {tr("by a stylist"), tr("at home"), tr("unknown")});
    at_home_->set_chosen(!service_.at_home ? 2 : *service_.at_home ? 1 : 0);
    connect(at_home_, &ChoiceRow::picked, this, [this](int index) {
        service_.at_home = index > 1 ? std::nullopt : std::optional(index == 1);
        emit entered();
    });
    inside->addWidget(labelled(tr("By whom"), at_home_));
}

void ServiceRecord::add_stretch(QBoxLayout* column) {
    QStringList words;
    for (const Place& one : places(length_mm_)) words.append(one.words);
    words.append(tr("other"));
    where_ = new ChoiceRow(name_of(tr("Which part of the hair")), words);
    column->addWidget(labelled(tr("Which part of the hair, as long as it was that day"), where_));
    from_ = new LengthField(name_of(tr("Beginning, from the scalp")), tr("the scalp"));
    to_ = new LengthField(name_of(tr("End, from the scalp")), tr("the ends"));
    auto* row = new FlowLayout(measures().gap(3));
    row->addWidget(labelled(tr("From"), from_));
    row->addWidget(labelled(tr("To"), to_));
    column->addLayout(row);
    if (!length_mm_)
        column->addWidget(text(tr("How long her hair was is not known: mid-shaft and ends need it."), "caption"));
    show_where();
    connect(where_, &ChoiceRow::picked, this, [this](int index) {
        const QVector<Place> all = places(length_mm_);
        if (index >= all.size()) {
            from_->setFocus(Qt::OtherFocusReason);
            return;
        }
        service_.from_mm = all[index].from_mm;
        service_.to_mm = all[index].to_mm;
        show_where();
        emit entered();
    });
    // Each end by itself: the other may be finer than a field shows.
    const auto typed = [this] {
        where_->set_chosen(index_of_place(places(length_mm_), service_.from_mm, service_.to_mm));
        emit entered();
    };
    connect(from_, &NumberField::entered, this, [this, typed] {
        service_.from_mm = from_->mm().value_or(0);
        typed();
    });
    connect(to_, &NumberField::entered, this, [this, typed] {
        service_.to_mm = to_->mm();
        typed();
    });
}

void ServiceRecord::show_where() {
    where_->set_chosen(index_of_place(places(length_mm_), service_.from_mm, service_.to_mm));
    from_->set_mm(service_.from_mm > 0 ? std::optional(service_.from_mm) : std::nullopt);
    to_->set_mm(service_.to_mm);
}

QCheckBox* ServiceRecord::section(const QString& name) const {
    return sections_ ? sections_->check(name) : nullptr;
}

void ServiceRecord::add_sections(QBoxLayout* column) {
    sections_ = new SectionPicker(service_.sections, [this](const QString& words) { return name_of(words); });
    connect(sections_, &SectionPicker::picked, this, [this] {
        service_.sections = sections_->chosen();
        emit entered();
    });
    column->addWidget(sections_);
}

NumberField* ServiceRecord::add_number(QLayout* row, RecordField field, const QString& words, double most,
                                       const QString& unit, std::optional<double> Service::*member) {
    auto* number = new NumberField(
        name_of(words), {std::max(most, (service_.*member).value_or(0)), 0, 1, unit, tr("not known"), false});
    number->setSingleStep(unit == tr("min") ? 1 : 5);
    number->set_number(service_.*member);
    connect(number, &NumberField::entered, this, [this, number, member] {
        service_.*member = number->number();
        emit entered();
    });
    if (!numbers_.contains(static_cast<int>(field))) numbers_.insert(static_cast<int>(field), number);
    row->addWidget(labelled(words, number));
    return number;
}

void ServiceRecord::add_how(QBoxLayout* column) {
    if (!has(RecordField::strength) && !has(RecordField::minutes) && !has(RecordField::temperature) &&
        !has(RecordField::passes))
        return;
    QBoxLayout* inside = box_in(column, tr("With what, how long"));
    if (has(RecordField::strength)) {
        auto* strength = new ChoiceRow(name_of(tr("Strength")), said(strengths()) << tr("unknown"));
        const qsizetype now = strengths().indexOf(service_.strength);
        strength->set_chosen(static_cast<int>(now < 0 ? strengths().size() : now));
        connect(strength, &ChoiceRow::picked, this, [this](int index) {
            service_.strength = strengths().value(index);
            emit entered();
        });
        choices_.insert(static_cast<int>(RecordField::strength), strength);
        inside->addWidget(labelled(tr("Strength"), strength));
    }
    auto* row = new FlowLayout(measures().gap(3));
    inside->addLayout(row);
    if (has(RecordField::minutes)) {
        (void)add_number(row, RecordField::minutes, tr("Minutes, first stroke to rinse"), longest_minutes, tr("min"),
                         &Service::minutes);
        (void)add_number(row, RecordField::minutes, tr("Maker's maximum"), longest_minutes, tr("min"),
                         &Service::most_minutes);
    }
    if (has(RecordField::temperature))
        (void)add_number(row, RecordField::temperature, tr("Temperature"), most_celsius, tr("°C"),
                         &Service::temperature_c);
    if (!has(RecordField::passes)) return;
    auto* passes =
        new NumberField(name_of(tr("Passes over a strand")), {most_passes, 0, 1, tr("times"), tr("not known"), false});
    passes->set_number(service_.passes ? std::optional<double>(*service_.passes) : std::nullopt);
    connect(passes, &NumberField::entered, this, [this, passes] {
        const auto value = passes->number();
        service_.passes = value ? std::optional(static_cast<int>(*value)) : std::nullopt;
        emit entered();
    });
    numbers_.insert(static_cast<int>(RecordField::passes), passes);
    row->addWidget(labelled(tr("Passes over a strand"), passes));
}

}  // namespace kempt::desk
