#include "combings/combings.h"

#include "combings/trace.h"

namespace kempt::combings {

Result<CombingsReadings> measure_combings(const Photo& photo, const card::Calibration& calibration,
                                          const std::vector<cv::Point2d>& region_px, const CombingsOptions& options,
                                          const Progress& progress) {
    const auto traced =
        trace_strands(photo, calibration, region_px, {options.least_px_per_mm, options.margin_mm, 2}, progress);
    if (!traced) return traced.error();
    CombingsReadings out;
    std::vector<double> lengths;
    double brief = 0, doubtful = 0;
    for (const TracedStrand& strand : traced->strands) {
        if (strand.length_mm < options.least_strand_mm) {
            out.unresolved_px.push_back(strand.path_px);
            continue;
        }
        const double half = 2 * std::hypot(traced->scale_sd * strand.length_mm, 0.3);
        out.strands.push_back({strand.path_px, strand.length_mm, strand.length_mm - half, strand.length_mm + half,
                               strand.doubts > 0, strand.cut_off});
        lengths.push_back(strand.length_mm);
        brief += strand.length_mm < options.short_mm;
        doubtful += strand.doubts > 0;
    }
    const double n = static_cast<double>(lengths.size());
    if (lengths.empty()) {
        for (const char* name : {"strands", "strand_median", "short_share"})
            out.refused.push_back({name, "no-strands", "No strands were found on the sheet."});
        return out;
    }
    std::sort(lengths.begin(), lengths.end());
    const double median = lengths[lengths.size() / 2], share = 100 * brief / n;
    out.readings.push_back({"strands", n, "count", n - doubtful, n + doubtful});
    const auto rank = [&](double at) { return lengths[static_cast<size_t>(std::clamp(at, 0.0, n - 1))]; };
    out.readings.push_back({"strand_median", median, "mm", rank(n / 2 - doubtful), rank(n / 2 + doubtful)});
    const double off = 100 * doubtful / n;
    out.readings.push_back({"short_share", share, "%", std::max(0.0, share - off), std::min(100.0, share + off)});
    return out;
}

}  // namespace kempt::combings
