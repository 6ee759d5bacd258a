// docs/care-rules.md: every rule, caution and tip with its source, made from the data.
#pragma once

#include <string>

#include "care/home_care.h"
#include "care/rules.h"

namespace kempt::care {

[[nodiscard]] std::string rules_document(const Rules& rules, const HomeCareRules& home);

}  // namespace kempt::care
