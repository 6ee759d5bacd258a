// Distribution functions. NaN comes back for arguments outside the stated ranges.
#pragma once

namespace kempt::change {

// Quantile of Student's t: P(T <= t) = p, 0 <= p <= 1, df > 0 (need not be whole, may be infinite).
// Relative error below 1e-10.
[[nodiscard]] double student_t_quantile(double p, double df);
[[nodiscard]] double normal_quantile(double p);
[[nodiscard]] double normal_cdf(double z);

// P(F > f) of Fisher's F; f >= 0, both df > 0 and finite.
[[nodiscard]] double f_upper_tail(double f, double df1, double df2);

// Two-sided p of Mann-Kendall's S for n values without ties, from the exact distribution of the number of inversions;
// 2 <= n <= 10 (Kendall 1975, Rank Correlation Methods, appendix table 1).
[[nodiscard]] double mann_kendall_exact_p(int S, int n);
// Largest k with 2 P(fewer than k inversions) <= 1 - confidence: the k-th smallest and k-th largest pairwise slope are
// then an interval of at least that confidence. 0 where n (2..10) is too small for any.
[[nodiscard]] int exact_slope_rank(int n, double confidence);

}  // namespace kempt::change
