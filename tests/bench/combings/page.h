// The part of docs/accuracy.md about combed-out strands.
#pragma once

#include <ostream>
#include <vector>

#include "bench/support/rows.h"

namespace bench {

void combings_page(std::ostream& out, const std::vector<Row>& rows, const std::vector<Row>& pairs);

}  // namespace bench
