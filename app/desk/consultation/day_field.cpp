#include "desk/consultation/day_field.h"

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QStyle>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

void set_tone(QLabel* label, const char* tone) {
    label->setProperty("tone", QString::fromLatin1(tone));
    label->style()->unpolish(label);
    label->style()->polish(label);
}

}  // namespace

std::optional<QDate> day_from(const QString& words, const QDate& today, bool coarse) {
    const QString plain = words.simplified().toLower();
    if (plain == QObject::tr("today")) return today;
    if (plain == QObject::tr("yesterday")) return today.addDays(-1);
    const QLocale english(QLocale::English, QLocale::UnitedKingdom);  // as date_words
    QStringList formats{QStringLiteral("yyyy-M-d"), QStringLiteral("d.M.yyyy"), QStringLiteral("d MMM yyyy"),
                        QStringLiteral("d MMMM yyyy")};
    if (coarse)
        formats +=
            {QStringLiteral("MMM yyyy"), QStringLiteral("MMMM yyyy"), QStringLiteral("yyyy-M"), QStringLiteral("yyyy")};
    for (const QString& format : formats)
        if (const QDate day = english.toDate(plain, format); day.isValid() && day.year() > 1000) return day;
    return std::nullopt;
}

DayField::DayField(const QString& name, const QDate& today, bool coarse, QWidget* parent)
    : QWidget(parent), today_(today), coarse_(coarse) {
    auto* column = column_in(this, 0, 0.5);
    line_ = new QLineEdit;
    line_->setAccessibleName(name);
    line_->setPlaceholderText(coarse ? tr("like May 2020") : tr("like 4 May 2026"));
    line_->setMinimumWidth(measures().px(150));
    told_ = text({}, "caption");
    told_->hide();
    column->addWidget(line_);
    column->addWidget(told_);
    setFocusProxy(line_);
    connect(line_, &QLineEdit::textEdited, this, &DayField::read);
    connect(line_, &QLineEdit::editingFinished, this, [this] {
        if (day_ && !told_->text().isEmpty()) set_day(day_);
    });
}

QString DayField::told() const {
    return told_->isHidden() ? QString() : told_->text();
}

void DayField::set_day(const std::optional<QDate>& day) {
    day_ = day;
    line_->setText(day ? short_date_words(*day) : QString());
    told_->clear();
    told_->hide();
}

void DayField::read() {
    const bool none = line_->text().trimmed().isEmpty();
    const auto day = day_from(line_->text(), today_, coarse_);
    const bool late = day && *day > today_;
    if (none || (day && !late)) {
        told_->setText(day ? date_words(*day) : QString());
        set_tone(told_, "");
        told_->setVisible(day.has_value());
        if (day_ == day) return;
        day_ = day;
        emit entered();
        return;
    }
    told_->setText(late ? tr("That day is still to come. What was kept before stays.")
                        : tr("No day can be read yet. What was kept before stays; write the month as a word."));
    set_tone(told_, "caution");
    told_->show();
}

}  // namespace kempt::desk
