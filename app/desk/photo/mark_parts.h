// Which part of a drawing is whole enough to be measured and kept. No widgets.
#pragma once

#include "domain/records.h"

namespace kempt::desk {

// Whether two sides of a quadrangle cross. Fewer than four corners: never.
[[nodiscard]] bool crosses_itself(const QVector<QPointF>& corners);

// The drawing without what is still half drawn: a line of one point, an edge line that does not know its hair side, a
// region without its four corners or with crossing sides, a ruler without its length, and a sheet whose region is
// missing where it needs one. What is left can be measured as it stands.
[[nodiscard]] Marks finished_part(const Marks& marks);
[[nodiscard]] bool all_finished(const Marks& marks);
// What is half drawn, in words: "the edge line has one point". Empty when all is finished.
[[nodiscard]] QString half_drawn_words(const Marks& marks);
[[nodiscard]] bool nothing_drawn(const Marks& marks);
// Whether the finished part asks for any reading.
[[nodiscard]] bool ready_to_measure(const Marks& marks);

}  // namespace kempt::desk
