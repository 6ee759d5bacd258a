#include "combings/censored.h"

#include <limits>

namespace kempt::combings {

std::vector<double> share_longer(const std::vector<SeenLength>& seen) {
    std::vector<double> out;
    out.reserve(seen.size());
    double longer = 1, left = static_cast<double>(seen.size());
    for (const SeenLength& one : seen) {
        longer *= 1 - (1 - one.at_least) / left;
        left -= 1;
        out.push_back(longer);
    }
    return out;
}

double length_at(const std::vector<SeenLength>& seen, double share) {
    constexpr double least_step = 1e-12;
    const std::vector<double> longer = share_longer(seen);
    double before = 1, last_mm = -1, last_middle = 0;
    for (size_t i = 0; i < seen.size(); ++i) {
        const double step = before - longer[i];
        if (step < least_step) continue;  // no end was seen there
        const double middle = 1 - 0.5 * (before + longer[i]);
        if (middle >= share) {
            if (last_mm < 0) return seen[i].mm;
            return last_mm + (seen[i].mm - last_mm) * (share - last_middle) / (middle - last_middle);
        }
        before = longer[i];
        last_mm = seen[i].mm;
        last_middle = middle;
    }
    return last_mm >= 0 && 1 - before >= share ? last_mm : std::numeric_limits<double>::infinity();
}

}  // namespace kempt::combings
