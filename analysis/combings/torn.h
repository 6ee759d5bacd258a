// Which ends of strands are ends by nature, and which are places where the way was lost: the strand goes on.
#pragma once

#include <array>
#include <vector>

#include "combings/trace.h"

namespace kempt::combings {

inline constexpr double torn_dark = 0.5;  // TracedStrand::ahead_dark above it: an end looks torn off

// For each strand the chance, 0-1, that its first and its last end are torn off. strands: those that are counted.
// The chances are a logistic model of our own, fitted to rendered photos (torn.cpp).
[[nodiscard]] std::vector<std::array<double, 2>> torn_chances(const std::vector<TracedStrand>& strands);

}  // namespace kempt::combings
