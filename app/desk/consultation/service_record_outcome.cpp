// Tests before a service, and how it turned out.
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "desk/consultation/day_field.h"
#include "desk/consultation/service_record.h"
#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

constexpr double most_days = 60;  // a patch test before that is of another visit (own choice)

}  // namespace

ChoiceRow* ServiceRecord::add_test(QBoxLayout* column, RecordField field, const QString& words,
                                   QString Service::*member) {
    auto* choice = new ChoiceRow(name_of(words), {tr("passed"), tr("failed"), tr("none, or unknown")});
    const qsizetype now = test_results().indexOf(service_.*member);
    choice->set_chosen(now < 0 ? 2 : static_cast<int>(now));
    connect(choice, &ChoiceRow::picked, this, [this, member](int index) {
        service_.*member = test_results().value(index);
        emit entered();
    });
    choices_.insert(static_cast<int>(field), choice);
    column->addWidget(labelled(words, choice));
    return choice;
}

void ServiceRecord::add_tests(QBoxLayout* column) {
    if (!has(RecordField::strand_test) && !has(RecordField::patch_test)) return;
    QBoxLayout* inside = box_in(column, tr("Tests before it"));
    if (has(RecordField::strand_test))
        (void)add_test(inside, RecordField::strand_test, tr("Strand test"), &Service::strand_test);
    if (!has(RecordField::patch_test)) return;
    (void)add_test(inside, RecordField::patch_test, tr("Patch test"), &Service::patch_test);
    patch_days_ = new NumberField(name_of(tr("Days before it on which the patch test was put on")),
                                  {most_days, 0, 1, tr("days before"), tr("not known"), true});
    if (service_.patch_test_on)
        patch_days_->set_number(static_cast<double>(service_.patch_test_on->daysTo(service_.date)));
    connect(patch_days_, &NumberField::entered, this, [this] {
        const auto days = patch_days_->number();
        service_.patch_test_on =
            days ? std::optional(service_.date.addDays(-static_cast<qint64>(*days))) : std::nullopt;
        emit entered();
    });
    patch_where_ = new QLineEdit(service_.patch_test_where);
    patch_where_->setAccessibleName(name_of(tr("Where the patch test was put")));
    patch_where_->setPlaceholderText(tr("behind the left ear"));
    patch_where_->setMinimumWidth(measures().px(190));
    connect(patch_where_, &QLineEdit::textEdited, this, [this](const QString& words) {
        service_.patch_test_where = words.trimmed();
        emit entered();
    });
    auto* row = new FlowLayout(measures().gap(3));
    row->addWidget(labelled(tr("Put on"), patch_days_));
    row->addWidget(labelled(tr("Where on the skin"), patch_where_));
    inside->addLayout(row);
}

ChoiceRow* ServiceRecord::add_yes_no(QBoxLayout* column, const QString& words, std::optional<bool> Service::*member) {
    ChoiceRow* choice = yes_no_row(name_of(words));
    choice->set_chosen(index_of(service_.*member));
    connect(choice, &ChoiceRow::picked, this, [this, member](int index) {
        service_.*member = answer_of(index);
        emit entered();
    });
    column->addWidget(labelled(words, choice));
    return choice;
}

QPlainTextEdit* ServiceRecord::add_words(QBoxLayout* column, const QString& words, const QString& hint,
                                         QString Service::*member) {
    auto* field = new QPlainTextEdit(service_.*member);
    field->setTabChangesFocus(true);
    field->setAccessibleName(name_of(words));
    field->setPlaceholderText(hint);
    field->setFixedHeight(measures().px(64));
    connect(field, &QPlainTextEdit::textChanged, this, [this, field, member] {
        service_.*member = field->toPlainText().trimmed();
        emit entered();
    });
    column->addWidget(labelled(words, field));
    return field;
}

void ServiceRecord::add_outcome(QBoxLayout* column) {
    QBoxLayout* inside = box_in(column, tr("How it turned out"));
    if (has(RecordField::reaction))
        choices_.insert(static_cast<int>(RecordField::reaction),
                        add_yes_no(inside, tr("Reaction of scalp or skin"), &Service::reaction));
    inside->addWidget(
        text(tr("A record only: it says nothing about what the hair can take. Burning, blisters, swelling or "
                "pain are for a doctor."),
             "caption"));
    result_ = add_words(inside, tr("Result, in your words"), tr("even, a little dry at the ends"), &Service::result);
    if (has(RecordField::line)) add_line(inside);
    note_ = add_words(inside, tr("Note"), tr("product, mixture, anything else"), &Service::note);
}

// A measured line and its day go together: without a day of its own it is of today.
void ServiceRecord::add_line(QBoxLayout* column) {
    auto* line = new LengthField(name_of(tr("Its line of demarcation, from the scalp")), tr("not measured"));
    line->set_mm(service_.line_mm);
    line_day_ = new DayField(name_of(tr("Day on which its line was measured")));
    line_day_->set_day(service_.line_on);
    numbers_.insert(static_cast<int>(RecordField::line), line);
    connect(line, &NumberField::entered, this, [this, line] {
        service_.line_mm = line->mm();
        if (service_.line_mm && !service_.line_on) line_day_->set_day(Clock().today());
        if (!service_.line_mm) line_day_->set_day(std::nullopt);
        service_.line_on = line_day_->day();
        emit entered();
    });
    connect(line_day_, &DayField::entered, this, [this] {
        if (!service_.line_mm) return;  // a day without a line says nothing
        service_.line_on = line_day_->day();
        emit entered();
    });
    auto* row = new FlowLayout(measures().gap(3));
    row->addWidget(labelled(tr("Its line of demarcation now, by tape"), line));
    row->addWidget(labelled(tr("Measured on"), line_day_));
    column->addLayout(row);
}

}  // namespace kempt::desk
