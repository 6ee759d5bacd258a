// The walk's steps through the pictures of two visits, both temples and all visits, and the pages of a report.
#pragma once

#include "desk/window/walk_plan.h"

namespace kempt::desk {

[[nodiscard]] QVector<PlanStep> compare_steps(MainWindow& window, const Place& compare);
[[nodiscard]] QVector<PlanStep> report_steps(MainWindow& window, const Place& report);

}  // namespace kempt::desk
