// The page's part on alignment.
#pragma once

#include <ostream>

#include "bench/support/rows.h"

namespace bench {

void alignment_table(std::ostream& out, const std::vector<Row>& rows);

}  // namespace bench
