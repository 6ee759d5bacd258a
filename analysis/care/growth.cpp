#include "care/growth.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace kempt::care {
namespace {

constexpr double z95 = 1.959964;  // of the normal distribution, two-sided 95 %
constexpr double days_a_week = 7, um_a_mm = 1000;
// Range printed by the 2001 study for its African group, and how many SD it reaches from the mean: (363 - 256) / 44.
constexpr RateWindow printed_range{150, 363};
constexpr double reach_sd = (363.0 - 256.0) / 44.0;
constexpr double least_spread = 0.05;
// Under four weeks a line drawn half a millimetre off (SD) would shift the rate by more than people differ (7 mm at 250
// um/day: 7 %, two such lines 10 %, people 15-20 %). Over two years the line has grown out of most lengths.
constexpr double shortest_weeks = 4, longest_weeks = 104;
constexpr double most_weeks = 520;

bool sensible(const GrowthRange& mm) {
    return std::isfinite(mm.low) && std::isfinite(mm.high) && std::isfinite(mm.value) && mm.low >= 0 &&
           mm.low <= mm.value && mm.value <= mm.high;
}

bool sensible(const GrowthRate& rate) {
    return std::isfinite(rate.um_per_day) && std::isfinite(rate.sd_um_per_day) && rate.sd_um_per_day >= 0 &&
           rate.um_per_day > z95 * rate.sd_um_per_day && rate.um_per_day > 0;
}

double sd_of(const GrowthRange& range) {
    return (range.high - range.low) / (2 * z95);
}

Error bad_length() {
    return {ErrorKind::invalid, "growth-invalid", "The new growth is not a length with its range.", "",
            "Give millimetres from the scalp, 0 or more."};
}
Error bad_rate() {
    return {ErrorKind::invalid, "rate-invalid", "The growth rate is not above zero, or too uncertain to use.", "",
            "Use the published rate of the client's group."};
}

}  // namespace

const std::vector<PublishedRate>& published_rates() {
    static const std::vector<PublishedRate> rates{
        {HairGroup::african, 256, 44, "Loussouarn 2001"},
        {HairGroup::caucasian, 396, 55, "Loussouarn 2001"},
        {HairGroup::african, 280, 50, "Loussouarn, El Rawadi & Genain 2005"},
        {HairGroup::caucasian, 367, 56, "Loussouarn, El Rawadi & Genain 2005"},
        {HairGroup::asian, 411, 53, "Loussouarn, El Rawadi & Genain 2005"},
    };
    return rates;
}

GrowthRate expected_rate(HairGroup group) {
    // The last three rows are the 2005 study.
    const std::vector<PublishedRate>& rows = published_rates();
    double sum = 0, squares = 0, count = 0;
    for (size_t i = 2; i < rows.size(); ++i) {
        const PublishedRate& row = rows[i];
        if (row.group == group) return {row.um_per_day, row.sd_um_per_day, row.study};
        sum += row.um_per_day;
        squares += row.um_per_day * row.um_per_day + row.sd_um_per_day * row.sd_um_per_day;
        ++count;
    }
    const double mean = sum / count;
    return {mean, std::sqrt(squares / count - mean * mean),
            "Loussouarn, El Rawadi & Genain 2005, three groups in equal parts"};
}

RateWindow plausible_rates(HairGroup group) {
    if (group == HairGroup::african) return printed_range;
    RateWindow window{printed_range.most, printed_range.least};
    for (const PublishedRate& row : published_rates()) {
        if (group != HairGroup::unknown && row.group != group) continue;
        window.least = std::min(window.least, row.um_per_day - reach_sd * row.sd_um_per_day);
        window.most = std::max(window.most, row.um_per_day + reach_sd * row.sd_um_per_day);
    }
    if (group == HairGroup::unknown) window.least = printed_range.least;
    return window;
}

Result<GrowthRange> weeks_of_growth(const GrowthRange& new_growth_mm, const GrowthRate& rate) {
    if (!sensible(new_growth_mm)) return bad_length();
    if (!sensible(rate)) return bad_rate();
    const double x = new_growth_mm.value, r = rate.um_per_day * days_a_week / um_a_mm;  // mm a week
    const double vx = std::pow(z95 * sd_of(new_growth_mm), 2),
                 vr = std::pow(z95 * rate.sd_um_per_day * days_a_week / um_a_mm, 2);
    // (x - w r)^2 = z^2 (sd_x^2 + w^2 sd_r^2)
    const double a = r * r - vr, b = x * r, c = x * x - vx;
    const double root = std::sqrt(std::max(0.0, b * b - a * c));
    return GrowthRange{x / r, std::max(0.0, (b - root) / a), (b + root) / a};
}

Result<GrowthRange> growth_of_weeks(double weeks, const GrowthRate& rate) {
    if (!std::isfinite(weeks) || weeks < 0 || weeks > most_weeks)
        return Error{ErrorKind::invalid, "weeks-invalid", "The time is not between 0 and 520 weeks.", "",
                     "Give the weeks since the service."};
    if (!sensible(rate)) return bad_rate();
    const double mm_per_um_day = weeks * days_a_week / um_a_mm;
    const double half = z95 * rate.sd_um_per_day;
    return GrowthRange{rate.um_per_day * mm_per_um_day, (rate.um_per_day - half) * mm_per_um_day,
                       (rate.um_per_day + half) * mm_per_um_day};
}

Result<GrowthRate> own_rate(const GrowthRange& new_growth_mm, double weeks, HairGroup group) {
    if (!sensible(new_growth_mm)) return bad_length();
    if (!(weeks >= shortest_weeks && weeks <= longest_weeks))
        return Error{ErrorKind::invalid, "weeks-invalid", "A client's own rate needs 4 to 104 weeks of growth.", "",
                     "Measure again when more has grown."};
    const double um_per_day = um_a_mm / (days_a_week * weeks);
    const GrowthRate own{new_growth_mm.value * um_per_day, sd_of(new_growth_mm) * um_per_day,
                         "measured on this client"};
    const RateWindow window = plausible_rates(group);
    const double half = z95 * own.sd_um_per_day;
    if (own.um_per_day + half < window.least || own.um_per_day - half > window.most)
        return Error{
            ErrorKind::refused, "rate-implausible",
            own.um_per_day < window.least ? "Hair does not grow that slowly." : "Hair does not grow that fast.",
            "The measured line is kept.", "Check that the line is the one of that service and that its date is right."};
    return own;
}

GrowthRate with_own_rates(const GrowthRate& expected, const std::vector<GrowthRate>& own) {
    double weight = 0, sum = 0;
    int used = 0;
    const auto add = [&](const GrowthRate& rate) {
        // A measurement cannot be surer than the floor either: one head grows unevenly.
        const double sd = std::max(rate.sd_um_per_day, least_spread * rate.um_per_day);
        if (!(rate.um_per_day > 0) || !(sd > 0)) return;
        weight += 1 / (sd * sd);
        sum += rate.um_per_day / (sd * sd);
        ++used;
    };
    add(expected);
    for (const GrowthRate& rate : own) add(rate);
    if (used == 0) return expected;
    const double mean = sum / weight;
    return {mean, std::max(std::sqrt(1 / weight), least_spread * mean),
            own.empty() ? expected.source : "measured on this client, with " + expected.source};
}

}  // namespace kempt::care
