// Takes files, folders or bytes into one view of a visit. Original bytes are kept untouched; a photo that is already
// in the book is recognised by its hash; one bad file does not stop the rest.
#pragma once

#include <QHash>
#include <QStringList>
#include <vector>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "intake/intake.h"
#include "work/book_fwd.h"

namespace kempt::work {

// What was known of a file when it was looked at.
struct AsSeen {
    QString sha256;                  // when the bytes are others by now, the file is not taken; empty: not asked
    std::optional<QDateTime> taken;  // kept where the file itself names no capture time
};

struct ImportOptions {
    Id visit = 0;
    View view = View::front_hairline;
    QStringList paths;         // files, and folders (their picture files, by name; not the folders below them)
    bool check_pixels = true;  // decode each photo once, so that a damaged one is told now and not at measuring
    intake::Limits limits;
    QHash<QString, AsSeen> as_seen = {};  // by path
};

struct ImportedFile {
    enum class What { imported, duplicate, failed };
    QString path;
    What what = What::failed;
    Id photo = 0;  // the new photo, or the one that the book already had
    Id visit = 0;  // the visit that photo belongs to
    int shot = 0;
    Error error;  // when failed
};

struct ImportReport {
    std::vector<ImportedFile> files;  // in the order they were taken
    int imported = 0, duplicates = 0, failed = 0;
};

// Endings of picture files ("*.jpg"), for choosing among the files of a folder.
[[nodiscard]] const QStringList& picture_endings();
// The files named, and the picture files of the folders named (not of those below them), these by name with shot 2
// before shot 10.
[[nodiscard]] QStringList picture_files_of(const QStringList& paths);

// Each photo is its own transaction: what was imported before a stop or a failure stays. Shot numbers continue those
// of the view; files are ordered by capture time, then by name. Progress: one step a file. Errors: not_found (visit,
// or no picture in the paths), cancelled (the sentence says how many were kept).
[[nodiscard]] Result<ImportReport> import_photos(Book& book, const ImportOptions& options,
                                                 const Progress& progress = {});

}  // namespace kempt::work
