#include "desk/translations/said.h"

#include <QLocale>
#include <optional>

#include "desk/translations/language.h"
#include "speech/speech.h"

namespace kempt::desk {
namespace {

std::optional<speech::Speech>& now_kept() {
    static std::optional<speech::Speech> now;
    return now;
}

}  // namespace

const speech::Speech& speech_now() {
    std::optional<speech::Speech>& now = now_kept();
    if (!now) now.emplace(spoken() == Language::spanish ? speech::Language::spanish : speech::Language::english);
    return *now;
}

QString in_figures(const QString& words) {
    QString shown = words;
    for (const char* unit : {"cm", "mm", "in"})  // "18 1/cm" reads badly
        shown.replace(QStringLiteral(" 1/") + QLatin1String(unit),
                      QLatin1Char(' ') + said(QStringLiteral("per ") + QLatin1String(unit)));
    return speech::in_figures(shown, QLocale());
}

bool is_said(const QString& english) {
    return speech_now().find(english).has_value();
}

QString said(const QString& english) {
    return speech_now()(english);
}

QStringList said(const QStringList& english) {
    QStringList out;
    for (const QString& one : english) out.append(said(one));
    return out;
}

void forget_said() {
    now_kept().reset();
}

}  // namespace kempt::desk
