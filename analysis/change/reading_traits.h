// What the judging of a change must know about each reading: the one table in code.
#pragma once

#include <string>

namespace kempt::change {

// neither: a colour or a shape that is what it is; a change of it is called a change and no more.
enum class Better { higher, lower, neither };
// Which direction is better for a reading; higher for a name that the table does not hold.
[[nodiscard]] Better better_direction(const std::string& reading);

// Documented default within-visit SD of one shot, in the reading's unit (docs/reliability.md), of the logarithm where
// scatters_with_value; 0 when unknown.
[[nodiscard]] double default_within_sd(const std::string& reading);

// Documented default SD between visits that repeat shots cannot show (another day's light, the head turned, the card
// laid elsewhere), in the reading's unit; 0 where none has been measured (docs/reliability.md).
[[nodiscard]] double default_setup_sd(const std::string& reading);

// The scatter grows with the value: the spreads of such a reading, its defaults among them, are SDs of the natural
// logarithm (0.07: 7 %), and a ratio is judged.
[[nodiscard]] bool scatters_with_value(const std::string& reading);

// Such a reading x may scatter with its inverse besides (a nearly straight strand's curvature has a floor of chance): x
// is then judged as x / (1 + x / straight_at), whose logarithm scatters alike for small and large x. Infinity: x
// itself.
[[nodiscard]] double straight_at(const std::string& reading);

// How a sentence begins: "Edge coverage", "Strands at the edge"; the name with spaces when the table does not hold it.
[[nodiscard]] std::string sentence_name(const std::string& reading);

}  // namespace kempt::change
