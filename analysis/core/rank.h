// The value at a rank of a sample.
#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace kempt {

// The value that a share of the sample (0-1) lies below; 0.5: the median, of an even number the upper middle one; 1:
// the largest. Puts the sample in another order. 0 for an empty one.
template <class T>
[[nodiscard]] T at_rank(std::vector<T>& sample, double share) {
    if (sample.empty()) return T{};
    const auto rank = std::min(static_cast<size_t>(share * static_cast<double>(sample.size())), sample.size() - 1);
    const auto at = sample.begin() + static_cast<std::ptrdiff_t>(rank);
    std::nth_element(sample.begin(), at, sample.end());
    return *at;
}

}  // namespace kempt
