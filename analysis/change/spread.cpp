#include "change/spread.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "change/distributions.h"
#include "change/reading_traits.h"

namespace kempt::change {
namespace {

// From 30 df on Student's t is within 4.2 % of the normal's 1.96: a client's own repeats then need no help.
constexpr double enough_df = 30;
// One-sided level at which a client's own spread counts as wider than expected. Chosen by simulation: see
// docs/reliability.md, 'A client whose hair scatters more'.
constexpr double clearly_wider = 0.10;

bool known(const Spread& spread) {
    return spread.df > 0 && std::isfinite(spread.sd) && spread.sd >= 0;
}

}  // namespace

Spread pooled_within_sd(const std::vector<std::vector<double>>& groups) {
    double squares = 0, df = 0;
    for (const auto& group : groups) {
        double mean = 0, m2 = 0;
        int n = 0;
        for (const double value : group) {  // Welford 1962
            if (!std::isfinite(value)) continue;
            const double from_old = value - mean;
            mean += from_old / ++n;
            m2 += from_old * (value - mean);
        }
        if (n < 2) continue;
        squares += m2;
        df += n - 1;
    }
    return df > 0 ? Spread{std::sqrt(squares / df), df} : Spread{};
}

Spread pooled_for(const std::string& reading, std::vector<std::vector<double>> groups) {
    const Scale scale = scale_of(reading);
    for (auto& group : groups)
        for (double& value : group) value = scale.of(value);
    Spread spread = pooled_within_sd(groups);
    spread.scale = scale;
    return spread;
}

Spread combine_spread(const Spread& client, const Spread& book, double default_sd, double default_df) {
    const double setup = std::max(client.setup_sd, book.setup_sd);
    const double own_df = known(client) ? client.df : 0;
    if (own_df >= enough_df) return {client.sd, own_df, setup};

    const double book_df = known(book) ? std::min(book.df, default_df) : 0;
    const double default_share = default_sd > 0 ? std::max(0.0, default_df - book_df) : 0;
    const double expected_df = book_df + default_share;
    if (expected_df <= 0) return own_df > 0 ? Spread{client.sd, own_df, setup} : Spread{0, 0, setup};
    const double book_squares = book_df > 0 ? book_df * book.sd * book.sd : 0;
    const double expected = (book_squares + default_share * default_sd * default_sd) / expected_df;
    if (own_df <= 0) return {std::sqrt(expected), expected_df, setup};

    const double own = client.sd * client.sd;
    if (expected > 0 && f_upper_tail(own / expected, own_df, expected_df) < clearly_wider)
        return {client.sd, own_df, setup};
    const double df = own_df + expected_df;
    return {std::sqrt((own_df * own + expected_df * expected) / df), df, setup};
}

double stated_sd(const std::string& reading, const std::vector<Stated>& shots) {
    const Scale scale = scale_of(reading);
    double squares = 0;
    int count = 0;
    for (const Stated& shot : shots) {
        const double value = scale.of(shot.value),
                     half = std::max(scale.of(shot.high) - value, value - scale.of(shot.low));
        if (!std::isfinite(half)) continue;
        squares += half * half;
        ++count;
    }
    return count > 0 ? std::sqrt(squares / count) / normal_quantile(0.975) : 0;
}

Spread spread_for(const std::string& reading, const Spread& client, const Spread& book) {
    Spread spread = combine_spread(client, book, default_within_sd(reading));
    spread.setup_sd = std::max(spread.setup_sd, default_setup_sd(reading));
    spread.scale = scale_of(reading);
    return spread;
}

Spread allowing_for(double stated, const std::string& reading, const Spread& spread) {
    Spread out = spread;
    if (const double same = same_sd(reading); stated > same)
        out.setup_sd = std::max(out.setup_sd, std::sqrt(stated * stated - same * same));
    return out;
}

double smallest_detectable_change(const Spread& spread, int n1, int n2) {
    if (n1 < 1 || n2 < 1 || !known(spread)) return std::numeric_limits<double>::quiet_NaN();
    const double variance = spread.sd * spread.sd * (1.0 / n1 + 1.0 / n2) + 2 * spread.setup_sd * spread.setup_sd;
    return student_t_quantile(0.975, spread.df) * std::sqrt(variance);
}

}  // namespace kempt::change
