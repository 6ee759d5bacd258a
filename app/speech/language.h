// The languages that Kempt speaks, with their numbers and dates.
#pragma once

#include <QDate>
#include <QLocale>
#include <QString>
#include <optional>

namespace kempt::speech {

enum class Language { english, spanish };

// "en", "es": as they are kept in settings and given on the command line.
[[nodiscard]] QString code_of(Language language);
[[nodiscard]] std::optional<Language> language_of(const QString& code);

// Numbers and dates of a language: of the person's own country where it has that language (a Spanish number has a
// comma in Madrid and a point in Mexico), else of Britain or Spain. Without signs between thousands: "1.200" is one
// thing here and another there.
[[nodiscard]] QLocale locale_of(Language language);

// The decimal point of figures that the rooms below have written, turned to the locale's: "12.5 mm (11.0-14.0)".
[[nodiscard]] QString in_figures(QString words, const QLocale& locale);

// A date in a form of Qt's, of day, month (MMM or MMMM) and year, any of them left out; in Spanish "4 nov 2026", "4 de
// noviembre de 2026".
[[nodiscard]] QString date_in(const QDate& date, const QString& format, const QLocale& locale);

// "4 Nov 2026", "4 November 2026", "November 2026", "Nov 2026", "1 Nov" as the rooms below write them, in the locale's
// words; not set for anything else.
[[nodiscard]] std::optional<QString> in_dates(const QString& words, const QLocale& locale);

// A name as it stands inside a sentence or beside figures: one that is written from the right keeps its own order there
// and leaves the sentence's alone (U+2068 and U+2069 of the Unicode bidirectional algorithm, UAX 9). Names that are
// written from the left stay as they are. For showing only.
[[nodiscard]] QString set_apart(const QString& name);

}  // namespace kempt::speech
