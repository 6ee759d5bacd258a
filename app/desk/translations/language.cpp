#include "desk/translations/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>
#include <memory>
#include <vector>

#include "desk/translations/said.h"
#include "speech/language.h"

// The room is a static library: its compiled-in files must be asked for, outside any namespace.
static void take_translations() {
    Q_INIT_RESOURCE(translations);
}

namespace kempt::desk {
namespace {

struct Spoken {
    Language language = Language::english;
    std::vector<std::unique_ptr<QTranslator>> translators;
};

Spoken& now_spoken() {
    static Spoken spoken;
    return spoken;
}

void add(const QString& name, const QString& folder) {
    auto translator = std::make_unique<QTranslator>();
    if (!translator->load(name, folder)) return;
    QCoreApplication::installTranslator(translator.get());
    now_spoken().translators.push_back(std::move(translator));
}

}  // namespace

QString code_of(Language language) {
    switch (language) {
        case Language::english:
            return QStringLiteral("en");
        case Language::spanish:
            return QStringLiteral("es");
        case Language::system:
            break;
    }
    return {};
}

Language language_from(const QString& code) {
    return code == u"en" ? Language::english : code == u"es" ? Language::spanish : Language::system;
}

Language meant_by(Language language) {
    if (language != Language::system) return language;
    const QStringList asked = QLocale::system().uiLanguages();
    return !asked.isEmpty() && QLocale(asked.first()).language() == QLocale::Spanish ? Language::spanish
                                                                                     : Language::english;
}

QLocale locale_of(Language language) {
    return speech::locale_of(meant_by(language) == Language::spanish ? speech::Language::spanish
                                                                     : speech::Language::english);
}

void speak(Language language) {
    take_translations();
    Spoken& spoken = now_spoken();
    for (const auto& translator : spoken.translators) QCoreApplication::removeTranslator(translator.get());
    spoken.translators.clear();
    spoken.language = meant_by(language);
    QLocale::setDefault(locale_of(language));
    const QString code = code_of(spoken.language);
    // Words of Qt's own dialogs; where that package is not installed they stay English.
    add(QStringLiteral("qtbase_") + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    add(QStringLiteral("kempt_") + code, QStringLiteral(":/desk/translations"));
    forget_said();
}

Language spoken() {
    return now_spoken().language;
}

}  // namespace kempt::desk
