#include "desk/consultation/profile_panel.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "desk/consultation/day_field.h"
#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "domain/words.h"
#include "work/care_state.h"

namespace kempt::desk {
namespace {

constexpr double oldest_years = 130;  // as the book takes it

int index_in(const QStringList& words, const QString& word) {
    const qsizetype at = words.indexOf(word);
    return static_cast<int>(at < 0 ? words.size() : at);  // behind the words: unknown
}

}  // namespace

ProfilePanel::ProfilePanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 3);
    column->addWidget(text(tr("Her hair"), "heading"));
    add_texture(column);
    add_length(column);
    add_age(column);
    add_history(column);
}

void ProfilePanel::add_texture(QBoxLayout* column) {
    const QString how = tr("How thick are single hairs?");
    texture_ = new ChoiceRow(how, said(hair_textures()) << tr("unknown"));
    column->addWidget(labelled(how, texture_));
    connect(texture_, &ChoiceRow::picked, this, [this](int index) {
        profile_.texture = hair_textures().value(index);
        emit entered();
    });
    const QString as = tr("Growth as of which hair?");
    group_ = new ChoiceRow(as, QStringList{tr("African"), tr("Asian"), tr("Caucasian"), tr("unknown, or mixed")});
    column->addWidget(labelled(as, group_));
    column->addWidget(text(tr("As studies of growth name their groups. It counts only until her own growth was "
                              "measured."),
                           "caption"));
    connect(group_, &ChoiceRow::picked, this, [this](int index) {
        profile_.hair_group = hair_groups().value(index);
        emit entered();
    });
}

void ProfilePanel::add_length(QBoxLayout* column) {
    length_ = new LengthField(tr("Length of the longest hair, stretched straight"), tr("not measured"));
    length_day_ = new DayField(tr("Day on which the length was measured"));
    auto* row = new FlowLayout(measures().gap(3));
    row->addWidget(labelled(tr("Longest hair, stretched straight"), length_));
    row->addWidget(labelled(tr("Measured on"), length_day_));
    column->addLayout(row);
    connect(length_, &NumberField::entered, this, [this] {
        profile_.length_mm = length_->mm();
        // What is measured now is of today; a corrected figure keeps its day.
        if (!profile_.length_mm)
            length_day_->set_day(std::nullopt);
        else if (!length_day_->day())
            length_day_->set_day(Clock().today());
        profile_.length_on = length_day_->day();
        emit entered();
    });
    connect(length_day_, &DayField::entered, this, [this] {
        if (!profile_.length_mm) return;  // a day without a length says nothing
        profile_.length_on = length_day_->day();
        emit entered();
    });
}

void ProfilePanel::add_age(QBoxLayout* column) {
    born_ = new DayField(tr("Her birthday, with the year"));
    age_ = new NumberField(tr("Her age, where she does not tell the birthday"),
                           {oldest_years, 0, 1, tr("years"), tr("not told"), false});
    auto* row = new FlowLayout(measures().gap(3));
    row->addWidget(labelled(tr("Born on"), born_));
    row->addWidget(labelled(tr("Or her age today"), age_));
    column->addLayout(row);
    connect(born_, &DayField::entered, this, [this] {
        profile_.born = born_->day();
        show_age();
        emit entered();
    });
    connect(age_, &NumberField::entered, this, [this] {
        profile_.age_years = age_->number();
        profile_.age_on = profile_.age_years ? std::optional(Clock().today()) : std::nullopt;
        emit entered();
    });
}

void ProfilePanel::add_history(QBoxLayout* column) {
    const QString how = tr("Is every service of her hair in the record?");
    history_ = new ChoiceRow(how, {tr("all her life"), tr("since a day"), tr("unknown")});
    column->addWidget(labelled(how, history_));
    history_from_ = new DayField(tr("Day since which every service is in the record"), true);
    column->addWidget(labelled(tr("Since"), history_from_), 0, Qt::AlignLeft);
    told_ = text({}, "caption");
    column->addWidget(told_);
    still_so_ = button(tr("Told again today"), "quiet");
    column->addWidget(still_so_, 0, Qt::AlignLeft);
    connect(still_so_, &QPushButton::clicked, this, [this] {
        told_today();
        emit entered();
    });
    connect(history_, &ChoiceRow::picked, this, [this](int index) {
        history_from_->setEnabled(index == 1);
        if (index == 1) history_from_->setFocus(Qt::OtherFocusReason);
        profile_.whole_history = index == 0;
        profile_.history_from = index == 1 ? history_from_->day() : std::nullopt;
        told_today();
        emit entered();
    });
    connect(history_from_, &DayField::entered, this, [this] {
        profile_.whole_history = false;
        profile_.history_from = history_from_->day();
        told_today();
        emit entered();
    });
}

// What is said now of the record is told today, and counts for a week.
void ProfilePanel::told_today() {
    const bool told = profile_.whole_history || profile_.history_from;
    profile_.history_told_on = told ? std::optional(Clock().today()) : std::nullopt;
    show_told();
}

void ProfilePanel::show_told() {
    const bool told = profile_.whole_history || profile_.history_from;
    const bool counts = work::tells_history(profile_, Clock().today());
    QString words;
    if (told)
        words = profile_.history_told_on ? tr("Told on %1.").arg(date_words(*profile_.history_told_on))
                                         : tr("When it was told was not kept.");
    if (told && !counts) words += QLatin1Char(' ') + tr("That is too long ago to count: ask again.");
    told_->setText(words);
    told_->setVisible(told);
    still_so_->setVisible(told && !counts);
}

// The birthday says the age; the figure of another day then stands aside.
void ProfilePanel::show_age() {
    age_->setEnabled(!profile_.born);
    age_->setToolTip(profile_.born ? tr("The birthday says it.") : tr("Age, in years, today"));
}

void ProfilePanel::show_profile(const ClientProfile& profile) {
    profile_ = profile;
    texture_->set_chosen(index_in(hair_textures(), profile.texture));
    group_->set_chosen(index_in(hair_groups(), profile.hair_group));
    length_->set_mm(profile.length_mm);
    length_day_->set_day(profile.length_on);
    born_->set_day(profile.born);
    // Whole years gone since she told it.
    std::optional<double> age = profile.age_years;
    if (age && profile.age_on)
        age = std::floor(*age + static_cast<double>(profile.age_on->daysTo(Clock().today())) / 365.25);
    age_->set_number(profile.born ? std::nullopt : age);
    show_age();
    history_->set_chosen(profile.whole_history ? 0 : profile.history_from ? 1 : 2);
    history_from_->set_day(profile.history_from);
    history_from_->setEnabled(profile.history_from.has_value());
    show_told();
}

}  // namespace kempt::desk
