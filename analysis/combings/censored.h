// Quantiles of lengths of which some are only known to be more than was seen.
#pragma once

#include <vector>

namespace kempt::combings {

struct SeenLength {
    double mm = 0;
    double at_least = 0;  // 0-1: the chance that the whole is longer
};

// The product-limit estimate of the share of wholes that are longer than each of the lengths (E. L. Kaplan and P.
// Meier, Nonparametric estimation from incomplete observations, J. Am. Stat. Assoc. 53, 1958), a length that may be a
// least one counted as an end by the chance that it is none. `seen` is sorted by length; one value for each.
[[nodiscard]] std::vector<double> share_longer(const std::vector<SeenLength>& seen);

// The length that a share (0-1) of the wholes is shorter than; between two lengths, it lies between them by the middles
// of their steps, so that 0.5 of whole lengths is their median. Below the first step the first length; where so few
// ends were seen that the share is not reached, infinity. `seen` is sorted by length and not empty.
[[nodiscard]] double length_at(const std::vector<SeenLength>& seen, double share);

}  // namespace kempt::combings
