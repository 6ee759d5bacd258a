// "## Pattern and stretch" of docs/accuracy.md.
#pragma once

#include <ostream>
#include <vector>

#include "bench/support/rows.h"

namespace bench {

void pattern_page(std::ostream& out, const std::vector<Row>& rows, const std::vector<Row>& pairs);

}  // namespace bench
