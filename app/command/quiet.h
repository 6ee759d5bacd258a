// Standard error belongs to the one line that says why a command failed.
#pragma once

namespace kempt::command {

// Silences what Qt and OpenCV print on their own: their failures come back as results and are told by the command.
// KEMPT_DEBUG in the environment lets them speak.
void quiet_libraries();

}  // namespace kempt::command
