// The targets that are proposed when a client has none yet, one for each reading; kept in the person's own settings.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>

namespace kempt::desk {

// Readings for which a default makes sense: where higher or lower is better for everybody. Nothing is set before she
// sets it: what a client may hope for is the stylist's to say.
[[nodiscard]] const QStringList& readings_with_default();
[[nodiscard]] std::optional<double> default_target(const QString& reading);  // in the reading's own unit
void set_default_target(const QString& reading, const std::optional<double>& value);

}  // namespace kempt::desk
