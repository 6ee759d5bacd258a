// The last visit's marks for a new photo: found, carried by the skin, and proposed.
#pragma once

#include <QDate>

#include "core/progress.h"
#include "core/result.h"
#include "work/book_fwd.h"
#include "work/carry_between.h"

namespace kempt::work {

struct ProposeOptions {
    Id photo = 0;            // the new one
    MeasureOptions measure;  // for finding the cards; the book's printer correction replaces its own
    int shots = 2;           // of the earlier visit that are tried, the best first
};

struct ProposedMarks {
    CarriedMarks carried;  // not stored: id 0, photo set
    Id from_photo = 0, from_visit = 0;
    QDate from_date;
};

// From the best shot (shot_rank.h) with an edge line of the same view at the client's latest earlier visit that has
// one; where that shot cannot be carried, from the next best. Errors: not_found (photo; "no-earlier-marks": no earlier
// visit shows this view with an edge line), those of carry_between (of the best shot), cancelled.
[[nodiscard]] Result<ProposedMarks> propose_marks(Book& book, const ProposeOptions& options,
                                                  const Progress& progress = {});

}  // namespace kempt::work
