// The parts of a report's plain data, one function a part.
#pragma once

#include "report/report_model.h"
#include "work/progress_of.h"

namespace kempt::work {

// The visits that the report compares in one series: those asked for, else the first and the last comparable one.
struct ReportVisits {
    std::optional<Id> from, to;
};
[[nodiscard]] ReportVisits visits_for(const Series& series, const ReportVisits& asked);

[[nodiscard]] report::Row row_of(const Series& series, const ReportVisits& visits);
[[nodiscard]] report::Chart report_chart_of(const Series& series, const QVector<Service>& services);
[[nodiscard]] std::optional<report::TargetBar> target_bar_of(const Series& series);
[[nodiscard]] report::Outcome outcome_of(change::Verdict verdict);

}  // namespace kempt::work
