#include "desk/consultation/heat_row.h"

#include <QComboBox>
#include <QLocale>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

// 250: hotter than tools for hair are made; 50 times a week: seven times a day (common practice, own choice).
constexpr double most_celsius = 250, most_times = 50;

// "3", but "0.5".
class TimesField : public NumberField {
  public:
    using NumberField::NumberField;
    [[nodiscard]] QString textFromValue(double value) const override { return QLocale().toString(value, 'g', 3); }
};

}  // namespace

HeatRow::HeatRow(const HeatTool& tool, QWidget* parent) : QFrame(parent), tool_(tool) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 2, 2);
    name_ = new QComboBox;
    const QString called = said(tool.name);
    QStringList names = heat_tools();
    if (!names.contains(tool.name)) names.prepend(tool.name);
    for (const QString& name : names) name_->addItem(said(name), name);
    name_->setCurrentIndex(static_cast<int>(names.indexOf(tool.name)));
    name_->setFocusPolicy(Qt::StrongFocus);
    name_->setAccessibleName(tr("Heat tool"));
    auto* remove = button(tr("Take off"), "quiet", Sign::remove);
    remove->setAccessibleName(tr("Take the %1 off the list").arg(called));
    temperature_ = new NumberField(tr("Temperature of the %1").arg(called),
                                   {most_celsius, 0, 5, tr("°C"), tr("not known"), false});
    temperature_->set_number(tool.temperature_c);
    times_ = new TimesField(tr("Times a week of the %1").arg(called),
                            {most_times, 1, 1, tr("a week"), tr("hardly ever"), false});
    times_->set_number(tool.times_a_week > 0 ? std::optional(tool.times_a_week) : std::nullopt);
    wet_ = yes_no_row(tr("%1 on wet hair").arg(beginning(called)));
    wet_->set_chosen(index_of(tool.on_wet_hair));
    auto* row = new FlowLayout(measures().gap(3));
    row->addWidget(labelled(tr("Tool"), name_));
    row->addWidget(labelled(tr("Temperature"), temperature_));
    row->addWidget(labelled(tr("How often"), times_));
    row->addWidget(labelled(tr("On wet hair"), wet_));
    row->addWidget(labelled(QStringLiteral(" "), remove));
    column->addLayout(row);
    connect(name_, &QComboBox::currentIndexChanged, this, [this](int index) {
        tool_.name = name_->itemData(index).toString();
        emit entered();
    });
    connect(temperature_, &NumberField::entered, this, [this] {
        tool_.temperature_c = temperature_->number();
        emit entered();
    });
    connect(times_, &NumberField::entered, this, [this] {
        tool_.times_a_week = times_->number().value_or(0);
        emit entered();
    });
    connect(wet_, &ChoiceRow::picked, this, [this](int index) {
        tool_.on_wet_hair = answer_of(index);
        emit entered();
    });
    connect(remove, &QPushButton::clicked, this, &HeatRow::remove_asked);
}

}  // namespace kempt::desk
