// What a file says it is, read from its first 100 bytes without opening it as a database and without touching it.
// Source of the offsets: sqlite.org/fileformat2.html, section 1.3.
#pragma once

#include <QString>

#include "core/result.h"

namespace kempt::sql {

// Gives the version of the book. Errors: not_found, io (cannot be read), unsupported (not a book), damaged (cut short).
[[nodiscard]] Result<int> version_in_file(const QString& path);

// As above, and refuses a book of a later version than `newest` (version; names the Kempt it needs).
[[nodiscard]] Result<int> usable_version_in_file(const QString& path, int newest);

}  // namespace kempt::sql
