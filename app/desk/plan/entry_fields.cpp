#include "desk/plan/entry_fields.h"

#include <QButtonGroup>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QTimer>
#include <QVBoxLayout>
#include <QWheelEvent>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

constexpr double mm_per_inch = 25.4;  // by definition
constexpr double longest_mm = 2000;   // hair to the ankles of a tall person
constexpr double longest_in = 78;     // the same

NumberRange length_range(const QString& nothing) {
    if (look().length() == LengthUnit::inches) return {longest_in, 2, 0.25, QObject::tr("in"), nothing, false};
    return {longest_mm, 0, 5, QObject::tr("mm"), nothing, false};
}

}  // namespace

NumberField::NumberField(const QString& name, const NumberRange& range, QWidget* parent) : QDoubleSpinBox(parent) {
    setLocale(QLocale());  // with the decimal sign of the language
    setRange(range.zero_counts ? -1 : 0, range.most);
    setDecimals(range.decimals);
    setSingleStep(range.step);
    setSuffix(QLatin1Char(' ') + range.unit);
    setSpecialValueText(range.nothing);
    setAccessibleName(name);
    const QString words = tr("%1: up to %2 %3").arg(name, textFromValue(range.most), range.unit);
    setToolTip(words);
    setAccessibleDescription(words);
    setFocusPolicy(Qt::StrongFocus);
    setGroupSeparatorShown(false);
    connect(this, &QDoubleSpinBox::valueChanged, this, &NumberField::entered);
}

std::optional<double> NumberField::number() const {
    return value() > 0 || (value() > minimum() && value() == 0) ? std::optional(value()) : std::nullopt;
}

void NumberField::set_number(const std::optional<double>& number) {
    if (number == this->number()) return;
    const QSignalBlocker quiet(this);
    setValue(number.value_or(minimum()));
}

void NumberField::wheelEvent(QWheelEvent* event) {
    if (hasFocus())
        QDoubleSpinBox::wheelEvent(event);
    else
        event->ignore();
}

void NumberField::focusInEvent(QFocusEvent* event) {
    QDoubleSpinBox::focusInEvent(event);
    if (!number()) QTimer::singleShot(0, this, &QAbstractSpinBox::selectAll);  // after the pointer has put its caret
}

LengthField::LengthField(const QString& name, const QString& nothing, QWidget* parent)
    : NumberField(name, length_range(nothing), parent) {}

std::optional<double> LengthField::mm() const {
    const auto shown = number();
    if (!shown) return std::nullopt;
    return look().length() == LengthUnit::inches ? *shown * mm_per_inch : *shown;
}

void LengthField::set_mm(const std::optional<double>& mm) {
    const bool inches = look().length() == LengthUnit::inches;
    set_number(mm && inches ? std::optional(*mm / mm_per_inch) : mm);
}

ChoiceRow::ChoiceRow(const QString& name, const QStringList& words, QWidget* parent) : QWidget(parent) {
    setAccessibleName(name);
    auto* row = new FlowLayout(measures().gap(2));
    setLayout(row);
    group_ = new QButtonGroup(this);
    for (qsizetype i = 0; i < words.size(); ++i) {
        auto* radio = new QRadioButton(words[i]);
        radio->setAccessibleName(name + QStringLiteral(": ") + words[i]);
        radio->installEventFilter(this);
        group_->addButton(radio, static_cast<int>(i));
        row->addWidget(radio);
    }
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(group_, &QButtonGroup::idClicked, this, &ChoiceRow::picked);
}

int ChoiceRow::chosen() const {
    return group_->checkedId();
}

void ChoiceRow::set_chosen(int index) {
    if (QAbstractButton* one = group_->button(index)) one->setChecked(true);
}

void ChoiceRow::focus_chosen() {
    QAbstractButton* one = group_->checkedButton();
    (one != nullptr ? one : group_->buttons().first())->setFocus(Qt::OtherFocusReason);
}

QSize ChoiceRow::sizeHint() const {
    QSize size(0, 0);
    for (const QAbstractButton* one : group_->buttons()) {
        const QSize hint = one->sizeHint();
        size = {size.width() + hint.width() + (size.width() > 0 ? layout()->spacing() : 0),
                std::max(size.height(), hint.height())};
    }
    return size;
}

bool ChoiceRow::eventFilter(QObject* object, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const QString typed = key->text().toLower();
        if (!typed.isEmpty() && typed[0].isLetter() && (key->modifiers() & ~Qt::ShiftModifier) == Qt::NoModifier)
            for (QAbstractButton* one : group_->buttons())
                if (one->text().startsWith(typed, Qt::CaseInsensitive)) {
                    one->setFocus(Qt::OtherFocusReason);
                    one->click();
                    return true;
                }
    }
    return QWidget::eventFilter(object, event);
}

ChoiceRow* yes_no_row(const QString& name) {
    return new ChoiceRow(name, {QObject::tr("yes"), QObject::tr("no"), QObject::tr("unknown")});
}

int index_of(const std::optional<bool>& answer) {
    return !answer ? 2 : *answer ? 0 : 1;
}

std::optional<bool> answer_of(int index) {
    return index == 0 ? std::optional(true) : index == 1 ? std::optional(false) : std::nullopt;
}

QWidget* labelled(const QString& words, QWidget* field) {
    auto* box = new QWidget;
    auto* column = column_in(box, 0, 0.5);
    auto* label = text(words, "caption");
    label->setWordWrap(false);
    label->setBuddy(field);
    column->addWidget(label);
    column->addWidget(field);
    return box;
}

}  // namespace kempt::desk
