// How long ago a line of demarcation left the scalp, by how far it has grown out.
#pragma once

#include <optional>

#include "care/growth.h"
#include "tone/tone.h"

namespace kempt::work {

// Weeks with their 95 % range, at the published rates over all groups of hair (care::expected_rate of unknown); nullopt
// when the line lies too close to the scalp to tell.
[[nodiscard]] std::optional<care::GrowthRange> weeks_of_line(const tone::Demarcation& line);

}  // namespace kempt::work
