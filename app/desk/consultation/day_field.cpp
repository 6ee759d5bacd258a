#include "desk/consultation/day_field.h"

#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QRegularExpression>
#include <QStyle>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"

namespace kempt::desk {
namespace {

void set_tone(QLabel* label, const char* tone) {
    label->setProperty("tone", QString::fromLatin1(tone));
    label->style()->unpolish(label);
    label->style()->polish(label);
}

// "may", "sep", "sept", "september": three letters and more of a month; 0: none.
int month_of(const QString& word) {
    static const QStringList months{QStringLiteral("january"), QStringLiteral("february"), QStringLiteral("march"),
                                    QStringLiteral("april"),   QStringLiteral("may"),      QStringLiteral("june"),
                                    QStringLiteral("july"),    QStringLiteral("august"),   QStringLiteral("september"),
                                    QStringLiteral("october"), QStringLiteral("november"), QStringLiteral("december")};
    for (int i = 0; i < months.size(); ++i)
        if (months[i].startsWith(word)) return i + 1;
    // As date_words writes them in the language of the windows.
    for (int i = 1; i <= 12; ++i)
        if (QLocale().standaloneMonthName(i).toLower().startsWith(word) ||
            QLocale().monthName(i).toLower().startsWith(word))
            return i;
    return 0;
}

}  // namespace

std::optional<QDate> day_from(const QString& words, const QDate& today, bool coarse) {
    const QString plain = words.simplified().toLower();
    if (plain == QObject::tr("today")) return today;
    if (plain == QObject::tr("yesterday")) return today.addDays(-1);
    const auto valid = [](int year, int month, int day) {
        const QDate date(year, month, day);
        return date.isValid() && year > 1000 ? std::optional(date) : std::nullopt;
    };
    static const QRegularExpression figures(QStringLiteral("^(\\d{4})-(\\d{1,2})-(\\d{1,2})$")),
        dots(QStringLiteral("^(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4})$")),
        named(QStringLiteral("^(?:(\\d{1,2})\\.? (?:de )?)?(\\p{L}{3,12})\\.? (?:de )?(\\d{4})$")),
        year(QStringLiteral("^\\d{4}$"));
    if (const auto m = figures.match(plain); m.hasMatch())
        return valid(m.captured(1).toInt(), m.captured(2).toInt(), m.captured(3).toInt());
    if (const auto m = dots.match(plain); m.hasMatch())
        return valid(m.captured(3).toInt(), m.captured(2).toInt(), m.captured(1).toInt());
    if (const auto m = named.match(plain); m.hasMatch()) {
        const QString word = m.captured(2);
        const int month = month_of(word);
        if (month == 0 || (m.captured(1).isEmpty() && !coarse)) return std::nullopt;
        return valid(m.captured(3).toInt(), month, m.captured(1).isEmpty() ? 1 : m.captured(1).toInt());
    }
    if (coarse && year.match(plain).hasMatch()) return valid(plain.toInt(), 1, 1);
    return std::nullopt;
}

DayField::DayField(const QString& name, bool coarse, QWidget* parent) : QWidget(parent), coarse_(coarse) {
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
        if (line_->text().trimmed().isEmpty() && day_) {  // emptied and left: no day; while typing it may be anything
            set_day(std::nullopt);
            emit entered();
        } else if (day_ && told_->text() == date_words(*day_)) {
            set_day(day_);
        }
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
    if (line_->text().trimmed().isEmpty()) {
        told_->clear();
        told_->hide();
        return;
    }
    const QDate today = Clock().today();
    const auto day = day_from(line_->text(), today, coarse_);
    const bool late = day && *day > today;
    if (day && !late) {
        told_->setText(date_words(*day));
        set_tone(told_, "");
        told_->show();
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
