// The steps of measuring a photo of the book, so that one thread can read and keep while others measure.
#pragma once

#include "work/measure_in_book.h"

namespace kempt::work {

struct ReadyPhoto {
    MeasuredPhoto measured;  // photo and marks; complete when its kept_as_they_were is set
    MeasureOptions how;
    QString how_json;
    QByteArray bytes;  // empty when kept_as_they_were
};
// Errors: not_found (photo, marks), those of the book.
[[nodiscard]] Result<ReadyPhoto> make_ready(Book& book, Id photo, const MeasureInBookOptions& options);
// One transaction. Errors: damaged (other bytes than the book's), those of the book.
[[nodiscard]] Status keep_result(Book& book, ReadyPhoto& ready, MeasureResult result, const Clock& clock);

}  // namespace kempt::work
