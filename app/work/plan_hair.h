// What is known of today's hair: what each part has been through, and how far it has grown since. Parts of a CarePlan.
#pragma once

#include "work/plan_care.h"

namespace kempt::work {

// Without a length there are no ends to tell from the mid-shaft, which then reaches on.
[[nodiscard]] std::vector<PartRecord> hair_of(const care::ClientState& state);
[[nodiscard]] std::vector<GrowthNow> growth_of(const care::ClientState& state);
[[nodiscard]] std::string rate_sentence(const care::ClientState& state);

}  // namespace kempt::work
