// Words that are longer than a column: names and notes may hold them.
#pragma once

#include <QString>

namespace kempt::desk {

// The same text with places inside words of more than 24 letters at which a line may break (U+200B, which is not seen).
// For showing only: what is kept or compared has none.
[[nodiscard]] QString breakable(const QString& text);

}  // namespace kempt::desk
