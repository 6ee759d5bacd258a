// A value with its unit that no line breaks apart.
#pragma once

#include <QString>

namespace kempt::desk {

// half: half the width of its interval, which sets how finely it is told. unit: "mm" is shown as the settings say.
[[nodiscard]] QString whole_figure(double value, double half, const QString& unit = QStringLiteral("mm"));

}  // namespace kempt::desk
