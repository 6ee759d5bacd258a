#include "desk/settings/paper_choice.h"

#include <QLocale>
#include <QSettings>

namespace kempt::desk {
namespace {

constexpr auto key = "report/letter";  // as the report page keeps it

}  // namespace

bool letter_paper() {
    return QSettings().value(key, QLocale::system().measurementSystem() == QLocale::ImperialUSSystem).toBool();
}

void set_letter_paper(bool letter) {
    QSettings().setValue(key, letter);
}

}  // namespace kempt::desk
