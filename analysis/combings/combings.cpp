#include "combings/combings.h"

#include <cmath>

#include "combings/summary.h"
#include "combings/trace.h"

namespace kempt::combings {

Result<CombingsReadings> measure_combings(const Photo& photo, const card::Calibration& calibration,
                                          const std::vector<cv::Point2d>& region_px, const CombingsOptions& options,
                                          const Progress& progress) {
    const auto traced =
        trace_strands(photo, calibration, region_px, {options.least_px_per_mm, options.margin_mm, 2}, progress);
    if (!traced) return traced.error();
    CombingsReadings out;
    for (const TracedStrand& strand : traced->strands) {
        if (strand.length_mm < options.least_strand_mm) {
            out.unresolved_px.push_back(strand.path_px);
            continue;
        }
        const double half = 2 * std::hypot(traced->scale_sd * strand.length_mm, 0.3);
        out.strands.push_back({strand.path_px, strand.length_mm, strand.length_mm - half, strand.length_mm + half,
                               strand.doubts > 0, strand.cut_off});
    }
    summarise(out, options);
    return out;
}

}  // namespace kempt::combings
