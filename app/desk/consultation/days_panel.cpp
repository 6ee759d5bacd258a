#include "desk/consultation/days_panel.h"

#include <QComboBox>
#include <QLabel>
#include <QVBoxLayout>

#include "desk/consultation/heat_row.h"
#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

// Upper ends of the fields: half a day; three times a day; two years of one style (own choices).
constexpr double most_minutes = 720, most_a_week = 21, most_weeks = 104;

}  // namespace

DaysPanel::DaysPanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("Her days"), "heading"));
    told_ = text({}, "caption");
    column->addWidget(told_);
    auto* numbers = new FlowLayout(measures().gap(3));
    add_number(numbers, tr("Minutes for her hair"), tr("Minutes a day that she has for her hair"), most_minutes,
               tr("a day"), &DailyLife::minutes_a_day);
    add_number(numbers, tr("Washes"), tr("How often she washes it"), most_a_week, tr("a week"),
               &DailyLife::washes_a_week);
    add_number(numbers, tr("Swims"), tr("How often she swims"), most_a_week, tr("a week"), &DailyLife::swims_a_week);
    column->addLayout(numbers);
    add_heat(column);
    habits_ = panel("surface");
    column = column_in(habits_, 4, 2);
    column->addWidget(text(tr("Water, cover and styles"), "heading"));
    auto* flow = new FlowLayout(measures().gap(5));
    column->addLayout(flow);
    add_yes_no(flow, tr("Is the water at home hard?"), &DailyLife::hard_water);
    add_yes_no(flow, tr("Does she cover her hair by day?"), &DailyLife::covers_hair);
    add_yes_no(flow, tr("Does headwear press on the hairline?"), &DailyLife::tight_headwear);
    add_yes_no(flow, tr("A smooth cover at night?"), &DailyLife::covers_at_night);
    add_yes_no(flow, tr("Styles that pull?"), &DailyLife::tight_styles);
    add_yes_no(flow, tr("Does a style hurt, then or afterwards?"), &DailyLife::style_hurts);
    add_yes_no(flow, tr("Is hair added?"), &DailyLife::added_hair);
    add_number(flow, tr("One style stays in"), tr("How long one style stays in"), most_weeks, tr("weeks"),
               &DailyLife::style_weeks);
}

void DaysPanel::add_yes_no(QLayout* row, const QString& question, std::optional<bool> DailyLife::*member) {
    ChoiceRow* choice = yes_no_row(question);
    choices_.insert(question, choice);
    fill_.append([this, choice, member] { choice->set_chosen(index_of(life_.*member)); });
    connect(choice, &ChoiceRow::picked, this, [this, member](int index) {
        life_.*member = answer_of(index);
        emit entered();
    });
    auto* box = labelled(question, choice);
    box->setMinimumWidth(measures().px(280));  // answers stand below each other
    row->addWidget(box);
}

void DaysPanel::add_number(QLayout* row, const QString& question, const QString& name, double most, const QString& unit,
                           std::optional<double> DailyLife::*member) {
    auto* number = new NumberField(name, {most, 0, 1, unit, tr("not known"), true});
    numbers_.insert(question, number);
    fill_.append([this, number, member] { number->set_number(life_.*member); });
    connect(number, &NumberField::entered, this, [this, number, member] {
        life_.*member = number->number();
        emit entered();
    });
    row->addWidget(labelled(question, number));
}

void DaysPanel::add_heat(QBoxLayout* column) {
    const QString question = tr("Does she use heat on it?");
    heat_ = yes_no_row(question);
    column->addWidget(labelled(question, heat_));
    tool_rows_ = new QVBoxLayout;
    tool_rows_->setSpacing(measures().gap(2));
    column->addLayout(tool_rows_);
    add_tool_ = button(tr("Another heat tool"), "quiet", Sign::add);
    column->addWidget(add_tool_, 0, Qt::AlignLeft);
    connect(heat_, &ChoiceRow::picked, this, [this](int index) {
        if (index == 0 && (!life_.heat || life_.heat->isEmpty()))
            life_.heat = QVector<HeatTool>{{heat_tools().first(), {}, 0, {}}};
        if (index == 1) life_.heat = QVector<HeatTool>();
        if (index == 2) life_.heat.reset();
        show_tools();
        emit entered();
    });
    connect(add_tool_, &QPushButton::clicked, this, [this] {
        HeatTool tool;
        for (const QString& name : heat_tools()) {  // one that is not there yet
            bool there = false;
            for (const HeatTool& one : life_.heat.value_or(QVector<HeatTool>())) there = there || one.name == name;
            tool.name = name;
            if (!there) break;
        }
        if (!life_.heat) life_.heat.emplace();
        life_.heat->append(tool);
        show_tools();
        tools_.last()->name()->setFocus(Qt::OtherFocusReason);
        emit entered();
    });
}

void DaysPanel::show_tools() {
    empty_layout(tool_rows_);
    tools_.clear();
    const QVector<HeatTool> all = life_.heat.value_or(QVector<HeatTool>());
    for (const HeatTool& tool : all) {
        auto* row = new HeatRow(tool);
        tools_.append(row);
        tool_rows_->addWidget(row);
        connect(row, &HeatRow::entered, this, &DaysPanel::take_tools);
        connect(row, &HeatRow::remove_asked, this, [this, row] {
            life_.heat->removeAt(tools_.indexOf(row));
            show_tools();
            heat_->focus_chosen();
            emit entered();
        });
    }
    heat_->set_chosen(!life_.heat ? 2 : all.isEmpty() ? 1 : 0);
    add_tool_->setVisible(!all.isEmpty());
}

void DaysPanel::take_tools() {
    QVector<HeatTool> all;
    for (const HeatRow* row : tools_) all.append(row->tool());
    life_.heat = all;
    emit entered();
}

void DaysPanel::show_life(const DailyLife& life, const QDate& today) {
    const bool same_tools = life.heat == life_.heat && !tools_.isEmpty();
    life_ = life;
    for (const auto& fill : fill_) fill();
    if (!same_tools) show_tools();
    told_->setText(!life.date.isValid() ? tr("Nothing was told in the last half year.")
                   : life.date == today
                       ? tr("As told today.")
                       : tr("As told on %1. What you change now is of today.").arg(date_words(life.date)));
}

}  // namespace kempt::desk
