// Data files of this room, made into bytes by app/cmake/embed.cmake.
#pragma once

#include <cstddef>

namespace kempt::care {
extern const unsigned char care_rules_bytes[];
extern const std::size_t care_rules_size;
extern const unsigned char home_rules_bytes[];
extern const std::size_t home_rules_size;
}  // namespace kempt::care
