// The report's parts on care, filled from a care plan.
#pragma once

#include "report/report_model.h"
#include "work/plan_care.h"

namespace kempt::work {

// hair, growth, planned, home_care, next_dates, and of the findings about the client alone the stops and cautions that
// hold, as cautions.
void add_care(const CarePlan& plan, report::Model& model);

}  // namespace kempt::work
