// Stores what the stylist drew on a photo. Marks are never changed in place: readings point at the marks they came
// from, so a new drawing is kept as a new row and the newest one counts.
#pragma once

#include <optional>

#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

// Marks that equal the newest ones give those back, no new row. Errors: not_found (photo), invalid (a point outside
// the photo, fewer than two points, an edge line without a hair side, a scale without its length).
[[nodiscard]] Result<Marks> set_marks(Book& book, Id photo, const Marks& marks);

// The newest marks; nullopt when none have been drawn. Errors: not_found (photo).
[[nodiscard]] Result<std::optional<Marks>> marks_of(Book& book, Id photo);

// Whether marks make sense for a photo of this size (without asking the book).
[[nodiscard]] Status check_marks(const Marks& marks, QSize photo);

}  // namespace kempt::work
