#include "desk/settings/target_defaults.h"

#include <QSettings>

namespace kempt::desk {
namespace {

QString key_of(const QString& reading) {
    return QStringLiteral("targets/") + reading;
}

}  // namespace

const QStringList& readings_with_default() {
    static const QStringList readings{QStringLiteral("edge_coverage"),  QStringLiteral("bare_length"),
                                      QStringLiteral("fill_depth"),     QStringLiteral("see_through"),
                                      QStringLiteral("hem_unevenness"), QStringLiteral("short_share")};
    return readings;
}

std::optional<double> default_target(const QString& reading) {
    bool well = false;
    const double value = QSettings().value(key_of(reading)).toDouble(&well);
    return well && value >= 0 ? std::optional(value) : std::nullopt;
}

void set_default_target(const QString& reading, const std::optional<double>& value) {
    if (value)
        QSettings().setValue(key_of(reading), *value);
    else
        QSettings().remove(key_of(reading));
}

}  // namespace kempt::desk
