#include "work/weeks_of_line.h"

namespace kempt::work {

std::optional<care::GrowthRange> weeks_of_line(const tone::Demarcation& line) {
    const care::GrowthRange grown{line.at_mm, std::max(0.0, line.at_low), line.at_high};
    const auto weeks = care::weeks_of_growth(grown, care::expected_rate(care::HairGroup::unknown));
    if (!weeks) return std::nullopt;
    return weeks.value();
}

}  // namespace kempt::work
