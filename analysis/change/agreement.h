// How steady the eye is: agreement of two gradings of the same photos.
#pragma once

#include <optional>
#include <utility>
#include <vector>

namespace kempt::change {

struct Kappa {
    double kappa = 0;
    double standard_error = 0;  // large-sample, not assuming kappa = 0 (Fleiss, Cohen & Everitt 1969, Psychol Bull 72)
};

// Weighted kappa (Cohen 1968, Psychol Bull 70:213-220) of a square table of counts; weights are disagreement weights
// (0 on the diagonal, >= 0 elsewhere). NaN where the table says nothing: not square, empty, or chance alone would
// already agree fully.
[[nodiscard]] Kappa weighted_kappa(const std::vector<std::vector<double>>& counts,
                                   const std::vector<std::vector<double>>& disagreement);

// Steps 0..4 graded twice: linear weights. nullopt with fewer than two pairs, a step outside 0..4, or every grade
// alike.
[[nodiscard]] std::optional<Kappa> grade_agreement(const std::vector<std::pair<int, int>>& pairs);

}  // namespace kempt::change
