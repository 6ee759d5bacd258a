// Words that are longer than a column: names and notes may hold them.
#pragma once

#include <QString>

namespace kempt::desk {

// The same text with places inside words of more than 24 letters at which a line may break (U+200B, which is not seen).
// For showing only: what is kept or compared has none.
[[nodiscard]] QString breakable(const QString& text);

// The beginning of a name that is longer than a press has room for, with a sign that it goes on; the whole name belongs
// into its tooltip and its accessible name. One that is written from the right keeps its order.
[[nodiscard]] QString shortened(const QString& name);
// A name inside a sentence or beside figures: breakable(), and speech::set_apart().
[[nodiscard]] QString name_within(const QString& name);
// The words of a press that does not fit on one line, broken at the space nearest to their middle.
[[nodiscard]] QString in_two_lines(QString words);

}  // namespace kempt::desk
