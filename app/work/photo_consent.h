// Her consent that pictures leave the book: asked of the book at the moment when one is to leave.
#pragma once

#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

// Errors: refused ("no-photo-consent").
[[nodiscard]] Status pictures_may_leave(const Client& client);
// The same as the book says now. Errors: not_found (client), refused.
[[nodiscard]] Status pictures_may_leave(Book& book, Id client);

}  // namespace kempt::work
