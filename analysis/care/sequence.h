// One applier's tasks, counted back from the rinse: the order of needs and what it can reach. Used by timeline.
#pragma once

#include <vector>

namespace kempt::care {

struct Slot {
    std::size_t task = 0;
    double apply = 0, need = 0;  // minutes
};

struct Limits {
    double most = 0, under = 0, over = 0;
};

// Least need first, as seen from the rinse.
[[nodiscard]] std::vector<Slot> in_order(std::vector<Slot> slots);

// What holds the sequence back most.
struct Tightest {
    double worst = 0;  // share of the tolerance; infinity: the maximum cannot be kept at any tolerance
    std::size_t nearest = 0, farthest = 0;  // slots of the chain, counted from the rinse
    bool by_maximum = false;
};
// Closed form: for the chain of slots i..j, applied without a pause, with A its minutes of application, both
// max(0, n_i (1 - w under)) + A <= n_j (1 + w over) and the same <= most must hold; w is the largest over all chains.
[[nodiscard]] Tightest tightest(const std::vector<Slot>& slots, const Limits& limits);

// Minutes from each slot's first stroke to the rinse, in the order given, with no deviation above `worst` (which must
// be reachable); within that, each slot's middle hair as near to its need as the others allow.
[[nodiscard]] std::vector<double> leads(const std::vector<Slot>& slots, const Limits& limits, double worst);

// Factors on all needs with which the sequence keeps to the tolerance (worst <= 1); low > high: none.
struct Factors {
    double low = 0, high = 0;
};
[[nodiscard]] Factors factors_that_work(const std::vector<Slot>& slots, const Limits& limits);

}  // namespace kempt::care
