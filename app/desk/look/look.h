// The look in force: palette, measures, units, language. One for the process; widgets that paint themselves ask look().
#pragma once

#include <QObject>
#include <QString>

#include "desk/look/colours.h"
#include "desk/look/measures.h"
#include "desk/translations/language.h"
#include "domain/measure_units.h"

class QApplication;

namespace kempt::desk {

struct LookChoice {
    bool dark = false;
    double text_scale = 1.0;
    LengthUnit length = LengthUnit::millimetres;
    Language language = Language::english;
};

class Look : public QObject {
    Q_OBJECT
  public:
    [[nodiscard]] const LookChoice& choice() const { return choice_; }
    [[nodiscard]] const Colours& colours() const { return choice_.dark ? dark_colours() : light_colours(); }
    [[nodiscard]] const Measures& measures() const { return measures_; }
    [[nodiscard]] LengthUnit length() const { return choice_.length; }

    // Sets style, palette, font, style sheet and language of the whole application and tells every open widget.
    void apply(const LookChoice& choice);

  signals:
    void changed();

  private:
    LookChoice choice_;
    Measures measures_;
    bool styled_ = false;
};

[[nodiscard]] Look& look();
[[nodiscard]] inline const Colours& colours() {
    return look().colours();
}
[[nodiscard]] inline const Measures& measures() {
    return look().measures();
}

// Kept between runs in the person's own settings (QSettings, "Kempt").
[[nodiscard]] LookChoice stored_look();
void store_look(const LookChoice& choice);

}  // namespace kempt::desk
