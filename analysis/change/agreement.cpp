#include "change/agreement.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <limits>

namespace kempt::change {
namespace {

bool square(const std::vector<std::vector<double>>& table, size_t size) {
    return table.size() == size &&
           std::all_of(table.begin(), table.end(), [&](const auto& row) { return row.size() == size; });
}

}  // namespace

Kappa weighted_kappa(const std::vector<std::vector<double>>& counts,
                     const std::vector<std::vector<double>>& disagreement) {
    constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
    const size_t k = counts.size();
    if (k < 2 || !square(counts, k) || !square(disagreement, k)) return {nothing, nothing};
    double total = 0, largest = 0;
    std::vector<double> rows(k, 0.0), columns(k, 0.0);
    for (size_t i = 0; i < k; ++i)
        for (size_t j = 0; j < k; ++j) {
            total += counts[i][j];
            rows[i] += counts[i][j];
            columns[j] += counts[i][j];
            largest = std::max(largest, disagreement[i][j]);
        }
    if (!(total > 0) || !(largest > 0)) return {nothing, nothing};

    // Agreement weights in 0..1; kappa does not depend on the scale.
    const auto weight = [&](size_t i, size_t j) { return 1 - disagreement[i][j] / largest; };
    double observed = 0, by_chance = 0;
    std::vector<double> mean_of_row(k, 0.0), mean_of_column(k, 0.0);
    for (size_t i = 0; i < k; ++i)
        for (size_t j = 0; j < k; ++j) {
            observed += weight(i, j) * counts[i][j] / total;
            by_chance += weight(i, j) * rows[i] * columns[j] / (total * total);
            mean_of_row[i] += weight(i, j) * columns[j] / total;
            mean_of_column[j] += weight(i, j) * rows[i] / total;
        }
    if (1 - by_chance < 1e-12) return {nothing, nothing};

    double sum = 0;
    for (size_t i = 0; i < k; ++i)
        for (size_t j = 0; j < k; ++j) {
            const double term = weight(i, j) * (1 - by_chance) - (mean_of_row[i] + mean_of_column[j]) * (1 - observed);
            sum += counts[i][j] / total * term * term;
        }
    const double centre = observed * by_chance - 2 * by_chance + observed;
    const double variance = std::max(0.0, sum - centre * centre) / (total * std::pow(1 - by_chance, 4));
    return {(observed - by_chance) / (1 - by_chance), std::sqrt(variance)};
}

std::optional<Kappa> grade_agreement(const std::vector<std::pair<int, int>>& pairs) {
    constexpr int steps = 5;
    if (pairs.size() < 2) return std::nullopt;
    std::vector<std::vector<double>> counts(steps, std::vector<double>(steps, 0.0)), linear = counts;
    for (int i = 0; i < steps; ++i)
        for (int j = 0; j < steps; ++j) linear[static_cast<size_t>(i)][static_cast<size_t>(j)] = std::abs(i - j);
    for (const auto& [first, second] : pairs) {
        if (first < 0 || first >= steps || second < 0 || second >= steps) return std::nullopt;
        ++counts[static_cast<size_t>(first)][static_cast<size_t>(second)];
    }
    const Kappa kappa = weighted_kappa(counts, linear);
    return std::isnan(kappa.kappa) ? std::nullopt : std::optional<Kappa>(kappa);
}

}  // namespace kempt::change
