// Backup, check and restore as the safe-keeping window asks for them, on a worker. Files are made whole or not at all,
// and the open book is never written to.
#pragma once

#include <QString>

#include "core/progress.h"
#include "core/result.h"
#include "work/book_fwd.h"

namespace kempt::desk {

struct CheckedBackup {
    bool sound = false;
    QString first_problem;  // as the check says it
    qsizetype problems = 0;
    int clients = 0, visits = 0, photos = 0, readings = 0;
};

// A whole copy of the book beside others in `folder`. Gives the file. Stopped meanwhile: the copy is removed again.
// Errors: as work::backup_book; cancelled.
struct CopyOptions {
    QString book;  // its path, for how far the copy is
    QString folder, name;
};
[[nodiscard]] Result<QString> make_backup(Book& book, const CopyOptions& options, const Progress& progress);

// Reads a backup through: structure, links, every photo against its hash, without touching it. A copy of it is opened,
// in the system's folder for passing files, and removed again. Errors: not_found, unsupported, version, busy, io,
// cancelled; a damaged one gives problems, or `damaged` where it cannot even be opened.
[[nodiscard]] Result<CheckedBackup> check_backup(const QString& file, const Progress& progress);

// Puts a backup into the new file `to`. Errors: as work::restore_book; invalid (`to` exists: nothing is ever replaced
// here).
[[nodiscard]] Result<QString> restore_backup(const QString& file, const QString& to, const Progress& progress);

}  // namespace kempt::desk
