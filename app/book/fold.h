// A name without case and accents, so that a search needs neither. The same on every database.
#pragma once

#include <QString>
#include <QStringList>

namespace kempt::sql {

// "José Niño" -> "jose nino", "Łucja" -> "lucja", "Strauß" -> "strauss"; runs of spaces become one.
[[nodiscard]] QString folded(const QString& name);
// Patterns for LIKE ... ESCAPE '!': one for each word.
[[nodiscard]] QStringList patterns_of(const QString& letters);

}  // namespace kempt::sql
