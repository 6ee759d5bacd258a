#include "combings/summary.h"

#include <algorithm>
#include <vector>

namespace kempt::combings {

void summarise(CombingsReadings& found, const CombingsOptions& options) {
    found.readings.clear();
    found.refused.clear();
    std::vector<double> lengths;
    double brief = 0, doubtful = 0;
    for (const Strand& strand : found.strands) {
        lengths.push_back(strand.length_mm);
        brief += strand.length_mm < options.short_mm;
        doubtful += strand.doubtful;
    }
    const double n = static_cast<double>(lengths.size());
    Refusal against = found.against;
    if (against.code.empty() && lengths.empty()) against = {"", "no-strands", "No strands were found on the sheet."};
    if (!against.code.empty()) {
        for (const char* name : {"strands", "strand_median", "short_share"})
            found.refused.push_back({name, against.code, against.text});
        return;
    }
    std::sort(lengths.begin(), lengths.end());
    const double median = 0.5 * (lengths[(lengths.size() - 1) / 2] + lengths[lengths.size() / 2]),
                 share = 100 * brief / n;
    found.readings.push_back({"strands", n, "count", n - doubtful, n + doubtful});
    const auto rank = [&](double at) { return lengths[static_cast<size_t>(std::clamp(at, 0.0, n - 1))]; };
    found.readings.push_back({"strand_median", median, "mm", rank(n / 2 - doubtful), rank(n / 2 + doubtful)});
    const double off = 100 * doubtful / n;
    found.readings.push_back({"short_share", share, "%", std::max(0.0, share - off), std::min(100.0, share + off)});
}

}  // namespace kempt::combings
