// What was drawn on a photo. Readings point at the marks they came from, so marks that were measured stay as they are
// and a correction is added as new marks. Errors as in client_store.h.
#pragma once

#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// Errors: not_found (no such photo); invalid (a coordinate that is not a number, one scale point, scale_mm not above 0,
// unknown sheet).
[[nodiscard]] Result<Id> add_marks(Book& book, const Marks& marks);
// invalid with code "marks-measured" once readings were taken from them. The photo stays.
[[nodiscard]] Status update_marks(Book& book, const Marks& marks);
[[nodiscard]] Result<Marks> get_marks(Book& book, Id id);
[[nodiscard]] Result<std::optional<Marks>> latest_marks(Book& book, Id photo);  // nothing when none were drawn
[[nodiscard]] Result<QVector<Marks>> marks_of_photo(Book& book, Id photo);      // oldest first
[[nodiscard]] Status erase_marks(Book& book, Id id);                            // with the readings taken from them

}  // namespace kempt::store
