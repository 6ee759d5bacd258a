#include "combings/summary.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "combings/censored.h"

namespace kempt::combings {
namespace {

// Variances of what a photo's count, and the place of its true median among the lengths that were found, are off by.
// They follow the strands with one end that looks torn off on another's way, those (counted or marked) with two, and
// the doubtful ones. Calibrated on 65 rendered photos of all hair, shapes and five JPEG qualities (seeds 1000-1127):
// the intervals of count, median and share held the truth in 97 %, 98 % and 97 %. On 20 fresh ones they did so in
// fewer, which the part of the shadows was added for. Since the median is estimated with torn ends in mind its places
// are off by less: 0.9 instead of 1.96 of that SD held 97 % of 376 photos (seeds 45000-45375).
struct Doubts {
    double one_torn = 0, two_torn = 0, doubtful = 0;
    double marks = 0;       // unresolved: where a photo has many shadows, some are taken for strands
    double near_noise = 0;  // variance where the strands are hardly clearer than the photo's noise
    [[nodiscard]] double shadows() const { return 0.06 * 0.06 * marks * marks; }
    [[nodiscard]] double half_count() const {
        return std::floor(1.96 * std::sqrt(0.05 + 0.15 * one_torn + 1.5 * two_torn + shadows() + near_noise));
    }
    [[nodiscard]] double half_places() const {
        return 0.9 * std::sqrt(0.05 + 0.3 * doubtful + 0.1 * (one_torn + two_torn) + 0.25 * shadows());
    }
    [[nodiscard]] double half_short() const {
        return 1.96 * std::sqrt(0.05 + 0.15 * one_torn + 0.3 * two_torn + shadows() + near_noise);
    }
};
// Near the noise the counts of nine rendered photos (of seeds 31000-31232) were off by 1.2 strands (root mean square; 7
// to 51 strands, 2 at most) whatever their number. Of 19 such photos that are told (seeds 34000-35618, 45000-45375) the
// interval of the median spans less than this share of it in 17, whose medians were off by 2.8 % (16 % at most).
constexpr double near_noise_variance = 1, most_near_spread = 0.3;
constexpr double length_share = 0.012;  // of the length of a strand traced right, 90 % of photos (the same photos)
// With more torn ends than that the count was off by 30 % and more (3 of the same photos).
constexpr double most_torn_share = 0.25, least_torn = 4;
// Torn ends by the strand. A strand that ends on another's way by nature looks torn too: some 0.3 of dense photos whose
// count is right. Of 110 rendered photos (34000-34144 and 60 of 45 and more wavy strands of seeds 35003-35618) the six
// above 0.6, of 25 and more torn ends each, were counted 13 to 95 % too high and most lay outside their interval; the
// others told 13 % at most but for one of few strands (11 instead of 7), where the interval says as much. So half as
// many torn ends are asked for.
constexpr double most_torn_ends = 0.6, least_torn_ends = 12;
// Smaller chances of a torn end are left out: many of them would move the median of a photo in which every end is one
// by nature. On the photos that the chances were fitted to (torn.cpp), each fifth read with a fit of the others, the
// median erred by 3.4 to 3.5 % with 0.1 to 0.5 here, and by 5.4 % with no end taken for a torn one.
constexpr double least_torn_chance = 0.4;
// One strand in twenty has an end that lies on another's way by nature and looks torn off for it: of 0, 0.05, 0.1, 0.15
// and 0.2 the count of 354 photos (seeds 62000-62363) erred least with it, by 2.0 % instead of 2.6 %, and for each hair
// and shape by itself.
constexpr double by_nature = 0.05;
constexpr size_t most_crumbs = 50;  // without a strand among them: a mat, for a sheet's lint is 25 pieces at most

const Refusal strands_torn{"", "strands-torn",
                           "The strands could not be followed through their crossings. Spread them further apart, or "
                           "take those out that are none, join those that are one and say which are hairs of their "
                           "own."};

// Chance of a torn end as it counts: below the least one it is none.
double that_counts(double chance) {
    return chance < least_torn_chance ? 0 : chance;
}

// Chance that the whole is longer than what was followed. share: of the chances of a torn end that count.
double chance_of_more(const Strand& strand, double share = 1) {
    double whole = strand.cut_off ? 0 : 1;
    if (!strand.whole)
        for (const double chance : strand.torn) whole *= 1 - share * that_counts(chance);
    return 1 - whole;
}

double chances_of(const Strand& strand) {
    return that_counts(strand.torn[0]) + that_counts(strand.torn[1]);
}

// Torn ends of a photo, as many as are to be expected.
struct TornEnds {
    double expected = 0;
    double share = 0;  // of each one's chance, beside those by nature
};
TornEnds torn_ends_of(const std::vector<Strand>& strands) {
    TornEnds out;
    double natural = by_nature * static_cast<double>(strands.size());
    // The ends of strands that she says are whole are some of those by nature.
    for (const Strand& strand : strands)
        if (strand.whole)
            natural -= chances_of(strand);
        else
            out.expected += chances_of(strand);
    natural = std::max(0.0, natural);
    if (out.expected > natural) out.share = 1 - natural / out.expected;
    out.expected *= out.share;
    return out;
}

}  // namespace

bool perhaps_longer(const Strand& strand) {
    return chance_of_more(strand) > 0;
}

bool looks_torn(const Strand& strand) {
    return !strand.whole && (strand.torn_ends > 0 || chances_of(strand) > 0);
}

void summarise(CombingsReadings& found, const CombingsOptions& options) {
    found.readings.clear();
    found.refused.clear();
    found.parts = 0;
    std::vector<SeenLength> lengths;
    const TornEnds torn = torn_ends_of(found.strands);
    double brief = 0;
    Doubts doubts;
    doubts.two_torn = found.torn_parts;
    double look_torn = 0;
    doubts.marks = static_cast<double>(found.unresolved_px.size());
    if (!found.near_noise.code.empty()) doubts.near_noise = near_noise_variance;
    for (const Strand& strand : found.strands) {
        lengths.push_back({strand.length_mm, chance_of_more(strand)});
        if (strand.length_mm < options.short_mm) brief += strand.cut_off ? 1 : 1 - chance_of_more(strand, torn.share);
        doubts.doubtful += strand.doubtful;
        if (strand.whole) continue;
        look_torn += strand.torn_ends;
        doubts.one_torn += strand.torn_ends == 1;
        doubts.two_torn += strand.torn_ends == 2;
    }
    const double n = static_cast<double>(lengths.size());
    Refusal against = found.against;
    if (against.code.empty() && ((doubts.two_torn >= least_torn && doubts.two_torn > most_torn_share * n) ||
                                 (look_torn >= least_torn_ends && look_torn > most_torn_ends * n) ||
                                 (lengths.empty() && found.unresolved_px.size() > most_crumbs)))
        against = strands_torn;
    if (against.code.empty() && lengths.empty()) against = {"", "no-strands", "No strands were found on the sheet."};
    if (!against.code.empty()) {
        for (const char* name : {"strands", "strand_median", "short_share"})
            found.refused.push_back({name, against.code, against.text});
        return;
    }
    // A strand that was cut shows two torn ends, one at either part.
    found.parts = std::min(static_cast<int>(std::lround(torn.expected / 2)), static_cast<int>(lengths.size()) - 1);
    const double count = n - found.parts, share = 100 * std::min(brief, count) / count, half = doubts.half_count();
    found.readings.push_back({"strands", count, "count", std::max(0.0, count - half), count + half});
    std::sort(lengths.begin(), lengths.end(), [](const SeenLength& a, const SeenLength& b) { return a.mm < b.mm; });
    const double median = length_at(lengths, 0.5), places = (doubts.half_places() + 0.5) / n,
                 low = std::min(median, length_at(lengths, 0.5 - places)) * (1 - length_share),
                 high = std::min(lengths.back().mm, length_at(lengths, 0.5 + places)) * (1 + length_share);
    if (!found.near_noise.code.empty() && high - low >= most_near_spread * median)
        found.refused.push_back({"strand_median", found.near_noise.code, found.near_noise.text});
    else if (!std::isfinite(median))
        found.refused.push_back({"strand_median", strands_torn.code, strands_torn.text});
    else
        found.readings.push_back({"strand_median", median, "mm", low, high});
    const double off = 100 * doubts.half_short() / count;
    found.readings.push_back({"short_share", share, "%", std::max(0.0, share - off), std::min(100.0, share + off)});
}

}  // namespace kempt::combings
