// Sentences that rooms below the windows say (findings of the gate, verdicts, care rules, words of the trade), in the
// language of the windows: see speech/speech.h.
#pragma once

#include <QString>
#include <QStringList>
#include <string>
#include <string_view>

namespace kempt::speech {
class Speech;
}

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

// "12.5 mm (11.0-14.0)" with the decimal sign of the locale; "18 1/cm" becomes "18 per cm".
[[nodiscard]] QString in_figures(const QString& words);

// Whether it was translated in every part; for tests.
[[nodiscard]] bool is_said(const QString& english);

// How the windows speak now; for charts and pictures.
[[nodiscard]] const speech::Speech& speech_now();

// After another language was put in force.
void forget_said();

}  // namespace kempt::desk
