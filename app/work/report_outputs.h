// What leaves the book besides the report's PDF: its pictures, and the readings behind it.
#pragma once

#include <QString>
#include <QStringList>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "report/report_model.h"
#include "work/book_fwd.h"

namespace kempt::work {

// A pair of the report as a picture of its own. Errors: those of report::pair_png.
[[nodiscard]] Result<QByteArray> png_of(const report::Pair& pair, LengthUnit length, const speech::Speech& say = {});

// Every before/after picture of the report as PNG, lettered and named in its language by view and dates, in a folder
// that is made when missing. What lies there stays: another client's pictures may have the same dates, and a number is
// then put after the name. Returns the names. Errors: refused ("pictures-withheld": no consent, or none can be shown;
// the sentence says why), io.
[[nodiscard]] Result<QStringList> write_report_pictures(const report::Model& model, const report::Options& look,
                                                        const QString& folder);

// The newest reading of every photo of a client (report/export_csv.h). Holds her name, no photos. Errors: not_found,
// io, cancelled.
[[nodiscard]] Status write_readings_csv(Book& book, Id client, const QString& path, const Progress& progress = {});

}  // namespace kempt::work
