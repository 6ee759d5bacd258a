// The language of the windows: which one, how it is kept, and putting it in force.
#pragma once

#include <QLocale>
#include <QString>

namespace kempt::desk {

enum class Language { system, english, spanish };

// "", "en", "es": as it is kept in the person's own settings.
[[nodiscard]] QString code_of(Language language);
[[nodiscard]] Language language_from(const QString& code);

// What `system` comes to: Spanish where the person's system asks for it first, else English.
[[nodiscard]] Language meant_by(Language language);

// Numbers and dates of that language: of the person's own country where the system speaks the same language, else of
// Britain or of the system's country in Spanish. Without signs between thousands.
[[nodiscard]] QLocale locale_of(Language language);

// Puts translations and the default locale in force for the whole application. Windows made before keep their words
// until they are made anew.
void speak(Language language);
[[nodiscard]] Language spoken();  // never `system`

}  // namespace kempt::desk
