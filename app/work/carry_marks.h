// Carries the marks of one shot to another of the same view through both cards' planes, so that repeat shots need
// not be drawn again. A proposal: the stylist looks at it and may adjust it before it is stored.
#pragma once

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/measure_photo.h"

namespace kempt::work {

// Points of `marks` from one photo to the other: to_px_from_mm(from_mm_from_px(p)). Both calibrations need a card or
// sheet lying the same way on the head; right when the card was not moved between the shots, else off by as much as
// the card moved. Points that fall outside `to_size` are clipped to its border. Errors: refused (no card in one).
[[nodiscard]] Result<Marks> map_marks(const Marks& marks, const card::Calibration& from, const card::Calibration& to,
                                      QSize to_size);

struct CarryOptions {
    Id from_photo = 0, to_photo = 0;
    MeasureOptions measure;  // for finding the cards
};
// The carried marks, not yet stored (id 0). Errors: not_found (photo, marks), invalid (different views), refused.
[[nodiscard]] Result<Marks> carry_marks(Book& book, const CarryOptions& options, const Progress& progress = {});

}  // namespace kempt::work
