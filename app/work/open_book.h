// Opens or makes the book for the calling thread.
#pragma once

#include <QString>
#include <memory>

#include "core/result.h"
#include "work/book_fwd.h"

namespace kempt::work {

// A Book belongs to the thread that opened it. Errors: not_found, damaged, version (a newer Kempt wrote it), busy, io.
[[nodiscard]] Result<std::shared_ptr<Book>> open_book(const QString& path);
// Errors: invalid (the path exists), io.
[[nodiscard]] Result<std::shared_ptr<Book>> create_book(const QString& path);

// The printer correction kept in the book (1 when none was set), and setting it from the measured check line.
[[nodiscard]] Result<double> printer_scale_of(Book& book);
[[nodiscard]] Status set_printer_scale(Book& book, double scale);

}  // namespace kempt::work
