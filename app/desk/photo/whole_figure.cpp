#include "desk/photo/whole_figure.h"

#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "domain/measure_units.h"

namespace kempt::desk {

QString whole_figure(double value, double half, const QString& unit) {
    return in_figures(plain_value(value, half, unit, look().length())).replace(u' ', QChar(QChar::Nbsp));
}

}  // namespace kempt::desk
