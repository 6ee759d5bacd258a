#pragma once

#include <cstdint>
#include <string>

namespace bench {

int shine_rows(uint64_t first, uint64_t count);
int shine_pairs(uint64_t first, uint64_t count);
int shine_table(const std::string& rows, const std::string& pairs);

}  // namespace bench
