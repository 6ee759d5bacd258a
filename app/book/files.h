// Names and durability of whole files.
#pragma once

#include <QString>

#include "core/result.h"

namespace kempt::sql::files {

// `wanted`, or `wanted-2`, `wanted-3` ... : one that no file has.
[[nodiscard]] QString free_name(const QString& wanted);
// A name beside `path` that nobody else uses.
[[nodiscard]] QString temporary_name(const QString& path);
// Waits until the file's content and its name are on the disk. Errors: io.
[[nodiscard]] Status sync(const QString& path);
// Gives the file `from` the name `to`, which must be free. Errors: io.
[[nodiscard]] Status rename_to_free(const QString& from, const QString& to);
[[nodiscard]] std::string quoted(const QString& path);

}  // namespace kempt::sql::files
