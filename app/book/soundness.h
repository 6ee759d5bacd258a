// What check() and restore() both ask of a book.
#pragma once

#include "book/check.h"
#include "book/sql.h"

namespace kempt::sql {

[[nodiscard]] Result<CheckReport> soundness(Connection& connection, const Progress& progress);

}  // namespace kempt::sql
