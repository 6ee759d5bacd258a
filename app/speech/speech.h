// What the rooms say, in the language of the person who reads it. The rooms write English; their sentence is the key.
// Sentences with figures and words in them are known with placeholders (said_sentences.cpp): what was put in is taken
// out, the sentence is translated, and it is put back, with the decimal sign and the months of the locale. Whoever has
// the template itself (report, charts) says it before its figures go in: say("Page %1 of %2").arg(...).
// Safe to use from several threads at once.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>
#include <functional>
#include <memory>
#include <optional>

#include "speech/language.h"

namespace kempt::speech {

class Speech {
  public:
    // The translation of one text, nothing where there is none.
    using Dictionary = std::function<std::optional<QString>(const QString& english)>;

    Speech() : Speech(Language::english) {}
    explicit Speech(Language language);
    // With a dictionary of its own, over the same sentences; for tests.
    Speech(const QLocale& locale, const Dictionary& dictionary);

    [[nodiscard]] bool is_english() const;
    [[nodiscard]] const QLocale& locale() const;

    // What is not known stays as it is; of several sentences each is looked up by itself. Never for what a person
    // wrote. English is given back unchanged.
    [[nodiscard]] QString operator()(const QString& english) const;
    [[nodiscard]] QString operator()(const char* english) const { return (*this)(QString::fromUtf8(english)); }
    // Nothing where any part of it is not known.
    [[nodiscard]] std::optional<QString> find(const QString& english) const;
    // The parts that would stay English: none where all of it is known. Figures, units and dates are no words.
    [[nodiscard]] QStringList left_english(const QString& english) const;
    // A date in one of Qt's forms: day, month (MMM or MMMM) and year, any of them left out.
    [[nodiscard]] QString date(const QDate& date, const QString& format) const;
    // "12.5 mm (11.0-14.0)" with the decimal sign of the locale.
    [[nodiscard]] QString figures(const QString& words) const { return in_figures(words, locale()); }

  private:
    struct Kept;
    std::shared_ptr<Kept> kept_;
};

// Every sentence and word that is known, with placeholders.
[[nodiscard]] const QStringList& known_sayings();

}  // namespace kempt::speech
