#include "speech/language.h"

#include <QRegularExpression>
#include <algorithm>

namespace kempt::speech {
namespace {

// "4 de noviembre de 2026": Spanish joins day, month and year by "de"; months shortened are joined by blanks, and
// without the point that some countries' data put behind them.
QString spanish(const QLocale& locale, int day, int month, bool whole, const QString& year) {
    QString name = whole ? locale.monthName(month, QLocale::LongFormat) : locale.monthName(month, QLocale::ShortFormat);
    if (name.endsWith(u'.')) name.chop(1);
    QStringList parts;
    if (day > 0) parts << QString::number(day);
    parts << name;
    if (!year.isEmpty()) parts << year;
    return parts.join(whole ? QStringLiteral(" de ") : QStringLiteral(" "));
}

}  // namespace

QString code_of(Language language) {
    return language == Language::spanish ? QStringLiteral("es") : QStringLiteral("en");
}

std::optional<Language> language_of(const QString& code) {
    if (code == u"en") return Language::english;
    if (code == u"es") return Language::spanish;
    return std::nullopt;
}

QLocale locale_of(Language language) {
    const QLocale system = QLocale::system();
    const bool spanish = language == Language::spanish;
    const QLocale::Language wanted = spanish ? QLocale::Spanish : QLocale::English;
    QLocale locale = system.language() == wanted ? system
                     : spanish                   ? QLocale(QLocale::Spanish, system.territory())
                                                 : QLocale(QLocale::English, QLocale::UnitedKingdom);
    locale.setNumberOptions(QLocale::OmitGroupSeparator | QLocale::RejectGroupSeparator);
    return locale;
}

QString in_figures(QString words, const QLocale& locale) {
    const QString point = locale.decimalPoint();
    if (point == u".") return words;
    static const QRegularExpression decimal(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
    return words.replace(decimal, point);
}

QString date_in(const QDate& date, const QString& format, const QLocale& locale) {
    if (locale.language() != QLocale::Spanish) return locale.toString(date, format);
    return spanish(locale, format.startsWith(u'd') ? date.day() : 0, date.month(),
                   format.contains(QStringLiteral("MMMM")),
                   format.contains(QStringLiteral("yyyy")) ? QString::number(date.year()) : QString());
}

std::optional<QString> in_dates(const QString& words, const QLocale& locale) {
    static const QRegularExpression shape(
        QStringLiteral("^(?:(\\d{1,2}) )?"
                       "(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)"
                       "(uary|ruary|ch|il|e|y|ust|tember|ober|ember|t)?(?: (\\d{4}))?$"));
    const auto match = shape.match(words);
    if (!match.hasMatch() || (match.captured(1).isEmpty() && match.captured(4).isEmpty())) return std::nullopt;
    static const QString months = QStringLiteral("JanFebMarAprMayJunJulAugSepOctNovDec");
    const int month = static_cast<int>(months.indexOf(match.captured(2)) / 3) + 1;
    const int day = match.captured(1).toInt();
    const QString year = match.captured(4);
    // A month without a day is always written out; "May" is whole and short at once, and goes with its neighbours.
    const bool whole = day == 0 || (!match.captured(3).isEmpty() && match.captured(3) != u"t");
    if (locale.language() == QLocale::Spanish) return spanish(locale, day, month, whole, year);
    return words;
}

QString set_apart(const QString& name) {
    const bool from_right = std::any_of(name.begin(), name.end(), [](QChar c) {
        return c.direction() == QChar::DirR || c.direction() == QChar::DirAL;
    });
    return from_right ? QChar(0x2068) + name + QChar(0x2069) : name;
}

}  // namespace kempt::speech
