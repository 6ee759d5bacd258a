// Sentences that rooms below the windows say (findings of the gate, verdicts, care rules, words of the trade) in the
// language of the windows. Those rooms know no Qt translation and go on speaking English; here their sentence is the
// key. Sentences with figures in them are kept with placeholders (said_sentences.cpp): the figures are taken out, the
// sentence is translated, and they are put back, with the decimal sign of the locale.
#pragma once

#include <QString>
#include <QStringList>
#include <string>
#include <string_view>

namespace kempt::desk {

// What is not known stays as it is; of several sentences each is looked up by itself. Never for what a person wrote.
[[nodiscard]] QString said(const QString& english);
[[nodiscard]] inline QString said(const std::string& english) {
    return said(QString::fromStdString(english));
}
[[nodiscard]] inline QString said(std::string_view english) {
    return said(QString::fromUtf8(english.data(), static_cast<qsizetype>(english.size())));
}
[[nodiscard]] inline QString said(const char* english) {
    return said(QString::fromUtf8(english));
}
[[nodiscard]] QStringList said(const QStringList& english);

// "12.5 mm (11.0-14.0)" with the decimal sign of the locale.
[[nodiscard]] QString in_figures(QString words);

// Whether it was translated in every part; for tests.
[[nodiscard]] bool is_said(const QString& english);

// After another language was put in force.
void forget_said();

// Every sentence and word that said() knows, with placeholders.
[[nodiscard]] const QStringList& known_sayings();

}  // namespace kempt::desk
