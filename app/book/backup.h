// Copies of a book: out of it, and back.
#pragma once

#include "book/book.h"

namespace kempt {

// Writes a complete, compact copy of the book as it is now (other programs may keep using it) under a temporary name,
// reads it back, then gives it its name. Errors: invalid (the name is taken, or a transaction is open), io, damaged.
[[nodiscard]] Status backup(Book& book, const QString& path);

// Puts the book in the file `from` in the place of `to`. `from` is read through and must be a sound book of this or an
// older version; it is never changed. A file that stands at `to`, damaged or not, is kept aside beside it.
// Gives the name of the file kept aside, empty when there was none.
// Errors: not_found, unsupported, damaged, version (all of `from`), busy (either one is in use), io.
[[nodiscard]] Result<QString> restore(const QString& from, const QString& to);

}  // namespace kempt
