// A client or the whole book as CSV and JSON, with the photos' original bytes when asked for.
#pragma once

#include <QString>
#include <QStringList>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

struct ExportOptions {
    Id client = 0;        // 0: the whole book
    QString folder;       // made when missing
    bool photos = false;  // original bytes too, under photos/
};
struct ExportReport {
    QStringList files;  // relative to the folder
};
// book.json, clients.csv, profiles.csv, daily_life.csv, answers.csv, visits.csv, photos.csv, readings.csv, grades.csv,
// services.csv, targets.csv (UTF-8, comma, quoted where needed, first line the names). Errors: not_found (client), io,
// cancelled.
[[nodiscard]] Result<ExportReport> export_book(Book& book, const ExportOptions& options, const Progress& progress = {});

}  // namespace kempt::work
