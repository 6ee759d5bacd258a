// From strands to readings: how many, how long, how many of them short.
#pragma once

#include "combings/combings.h"

namespace kempt::combings {

// Readings and refusals of `found` anew from its strands; what they were is forgotten. For the strands as they were
// traced, and again for those that a person corrected.
void summarise(CombingsReadings& found, const CombingsOptions& options = {});

}  // namespace kempt::combings
