// A plan's request from a file.
#pragma once

#include <QString>

#include "work/plan_care.h"

namespace kempt::command {

// Errors: io (not there, or over 1 MiB), invalid as work::request_from_json.
[[nodiscard]] Result<work::PlanRequest> plan_from_file(const QString& path);

}  // namespace kempt::command
