#include "card/least_squares.h"

#include <opencv2/core.hpp>

namespace kempt::card {

Fit least_squares(const Residuals& residuals, std::vector<double> start, const std::vector<double>& steps,
                  int most_rounds) {
    const int n = static_cast<int>(start.size());
    std::vector<double> here, there;
    const auto sum_of = [](const std::vector<double>& r) {
        double sum = 0;
        for (const double v : r) sum += v * v;
        return sum;
    };
    residuals(start, here);
    const int m = static_cast<int>(here.size());
    double sum = sum_of(here), damping = 1e-3;
    cv::Mat1d jacobian(m, n), step;
    for (int round = 0; round < most_rounds; ++round) {
        for (int j = 0; j < n; ++j) {
            std::vector<double> moved = start;
            moved[static_cast<size_t>(j)] += steps[static_cast<size_t>(j)];
            residuals(moved, there);
            for (int i = 0; i < m; ++i)
                jacobian(i, j) =
                    (there[static_cast<size_t>(i)] - here[static_cast<size_t>(i)]) / steps[static_cast<size_t>(j)];
        }
        const cv::Mat1d normal(cv::Mat(jacobian.t() * jacobian));
        const cv::Mat1d gradient(cv::Mat(jacobian.t() * cv::Mat1d(m, 1, here.data())));
        bool better = false;
        for (int attempt = 0; attempt < 8 && !better; ++attempt) {
            cv::Mat1d damped = normal.clone();
            for (int j = 0; j < n; ++j) damped(j, j) += damping * std::max(normal(j, j), 1e-12);
            if (!cv::solve(damped, -gradient, step, cv::DECOMP_CHOLESKY)) {
                damping *= 10;
                continue;
            }
            std::vector<double> moved = start;
            for (int j = 0; j < n; ++j) moved[static_cast<size_t>(j)] += step(j);
            residuals(moved, there);
            const double moved_sum = sum_of(there);
            if (moved_sum < sum) {
                better = true;
                const bool settled = sum - moved_sum < 1e-9 * sum;
                start = moved, here = there, sum = moved_sum;
                damping = std::max(damping / 10, 1e-9);
                if (settled) return {start, sum};
            } else {
                damping *= 10;
            }
        }
        if (!better) break;
    }
    return {start, sum};
}

}  // namespace kempt::card
