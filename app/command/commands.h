// One function a command; each lives in the file of its name.
#pragma once

#include "command/command.h"

namespace kempt::command {

[[nodiscard]] Command card_command();
[[nodiscard]] Command measure_command();
[[nodiscard]] Command demo_command();
[[nodiscard]] Command client_command();
[[nodiscard]] Command visit_command();
[[nodiscard]] Command photo_command();
[[nodiscard]] Command marks_command();
[[nodiscard]] Command grade_command();
[[nodiscard]] Command service_command();
[[nodiscard]] Command target_command();
[[nodiscard]] Command progress_command();
[[nodiscard]] Command plan_command();
[[nodiscard]] Command due_command();
[[nodiscard]] Command compare_command();
[[nodiscard]] Command report_command();
[[nodiscard]] Command check_command();
[[nodiscard]] Command backup_command();
[[nodiscard]] Command restore_command();
[[nodiscard]] Command export_command();
[[nodiscard]] Command desk_command();
[[nodiscard]] Command help_command();
[[nodiscard]] Command version_command();

}  // namespace kempt::command
