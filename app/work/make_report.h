// The condition report of a client as PDF.
#pragma once

#include <QString>
#include <optional>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/measure_photo.h"

namespace kempt::work {

struct ReportOptions {
    Id client = 0;
    std::optional<Id> from_visit, to_visit;  // of the before/after pairs; default: first and last comparable visit
    QString path;                            // of the PDF, replaced atomically
    QString stylist;                         // printed at the top; may be empty
    bool inches = false;
    bool with_pictures = true;
    MeasureOptions measure;
};
struct WrittenReport {
    QString path;
    int pages = 0;
};
// Needs a QGuiApplication. Errors: not_found (client, no measured photos), io, cancelled.
[[nodiscard]] Result<WrittenReport> make_report(Book& book, const ReportOptions& options,
                                                const Progress& progress = {});

}  // namespace kempt::work
