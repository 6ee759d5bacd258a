// The ways in which head sections can be shared out among appliers. Used by timeline and its remedies.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "care/sequence.h"
#include "care/timeline.h"

namespace kempt::care {

// Names of the head sections, each once, in the order of the tasks.
[[nodiscard]] std::vector<std::string> sections_of(const Application& application);

// Calls once for every sharing (the first section always falls to the first applier), each applier's slots in order of
// needs.
void for_each_sharing(const Application& application,
                      const std::function<void(const std::vector<std::vector<Slot>>&)>& call);

}  // namespace kempt::care
