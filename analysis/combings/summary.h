// From strands to readings: how many, how long, how many of them short.
#pragma once

#include "combings/combings.h"

namespace kempt::combings {

// Whether the strand is counted as one that may be longer than what was followed: it is cut off or likely torn off.
[[nodiscard]] bool perhaps_longer(const Strand& strand);

// Whether an end of it looks torn off enough to move a reading, unless she says that it is whole.
[[nodiscard]] bool looks_torn(const Strand& strand);

// Readings and refusals of `found` anew from its strands; what they were is forgotten. For the strands as they were
// traced, and again for those that a person corrected.
void summarise(CombingsReadings& found, const CombingsOptions& options = {});

}  // namespace kempt::combings
