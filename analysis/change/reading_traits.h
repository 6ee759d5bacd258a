// What the judging of a change must know about each reading: the one table in code.
#pragma once

#include <string>

#include "change/scale.h"

namespace kempt::change {

// neither: a colour or a shape that is what it is; a change of it is called a change and no more.
enum class Better { higher, lower, neither };
// Which direction is better for a reading; higher for a name that the table does not hold.
[[nodiscard]] Better better_direction(const std::string& reading);

// Documented default within-visit SD of one shot, on the reading's scale (docs/reliability.md);
// 0 when unknown.
[[nodiscard]] double default_within_sd(const std::string& reading);

// Documented default SD between visits that repeat shots cannot show (another day's light, the head turned, the card
// laid elsewhere), on the reading's scale; 0 where none has been measured (docs/reliability.md).
[[nodiscard]] double default_setup_sd(const std::string& reading);

// What of the SD that a photo's own interval states is the same at every visit of the same hair, on the reading's
// scale; infinity for readings whose intervals have no part in verdicts (docs/reliability.md).
[[nodiscard]] double same_sd(const std::string& reading);

// The scale on which its spreads are told and its changes judged: the value itself, or a logarithm where the scatter
// grows with the value (docs/reliability.md).
[[nodiscard]] Scale scale_of(const std::string& reading);

// How a sentence begins: "Edge coverage", "Strands at the edge"; the name with spaces when the table does not hold it.
[[nodiscard]] std::string sentence_name(const std::string& reading);

}  // namespace kempt::change
