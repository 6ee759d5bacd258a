// Measures a photo of the book with its newest marks and keeps the readings with what they came from.
#pragma once

#include <vector>

#include "core/progress.h"
#include "core/result.h"
#include "domain/clock.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/measure_photo.h"

namespace kempt::work {

struct MeasureInBookOptions {
    MeasureOptions measure;
    bool use_book_printer_scale = true;  // the printer correction stored in the book replaces measure.printer_scale
    Clock clock;                         // stamps the readings
    bool again = false;  // false: readings of the same photo, marks, version and options stand and are given back
    int at_a_time = 0;   // photos that measure_all measures at a time; 0: one for each core that the process may use
};

struct MeasuredPhoto {
    PhotoRecord photo;
    Marks marks;
    MeasureResult result;             // empty when `kept_as_they_were`
    QVector<ReadingRecord> readings;  // as they are now in the book, refused ones too
    bool kept_as_they_were = false;
};

// One transaction: quality level, findings and readings together, or nothing. Errors: not_found (photo, marks),
// damaged, invalid, cancelled (nothing was kept).
[[nodiscard]] Result<MeasuredPhoto> measure_in_book(Book& book, Id photo, const MeasureInBookOptions& options = {},
                                                    const Progress& progress = {});

struct BatchReport {
    int measured = 0, kept = 0, without_marks = 0;
    std::vector<std::pair<Id, Error>> failed;
};
// Every photo with marks: of a client, or of the whole book when client is 0, several at a time on threads of their own
// (only the calling thread touches the book and calls `progress`). Kept in the order of the photos, one transaction a
// photo; goes on after errors. Errors: not_found (client), cancelled.
[[nodiscard]] Result<BatchReport> measure_all(Book& book, Id client, const MeasureInBookOptions& options = {},
                                              const Progress& progress = {});

}  // namespace kempt::work
