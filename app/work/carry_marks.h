// Carries the marks of one shot to another of the same view, of the same visit or of a later one, so that repeat shots
// and returning clients need not be drawn again. A proposal: the stylist looks at it and may adjust it before it is
// stored.
#pragma once

#include "core/progress.h"
#include "core/result.h"
#include "work/book_fwd.h"
#include "work/carry_between.h"

namespace kempt::work {

struct CarryOptions {
    Id from_photo = 0, to_photo = 0;
    MeasureOptions measure;  // for finding the cards
};
// The carried marks, not yet stored (id 0, photo set). Errors: not_found (photo, marks), invalid (different views,
// different clients), those of carry_between.
[[nodiscard]] Result<CarriedMarks> carry_marks(Book& book, const CarryOptions& options, const Progress& progress = {});

}  // namespace kempt::work
