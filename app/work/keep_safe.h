// Keeping the book: check, backup, restore.
#pragma once

#include <QString>
#include <QStringList>

#include "core/progress.h"
#include "core/result.h"
#include "work/book_fwd.h"

namespace kempt::work {

struct CheckReport {
    bool sound = false;
    QStringList problems;       // one sentence each
    QStringList unknown_words;  // of the record; kept as they are, so the book is sound with them
    int clients = 0, visits = 0, photos = 0, readings = 0;
};
// Integrity, foreign keys, every photo's bytes against its hash, the words and days of the record. Errors: cancelled,
// io.
[[nodiscard]] Result<CheckReport> check_book(Book& book, const Progress& progress = {});

// A whole copy made while the book stays open. Never overwrites. Errors: io, invalid (path exists), cancelled.
[[nodiscard]] Status backup_book(Book& book, const QString& to, const Progress& progress = {});

// Puts a backup in the place of a book (which need not exist). The backup is checked first; the present book is kept
// beside it as BOOK.before-restore-N. Errors: not_found, damaged, version, io.
struct Restored {
    QString book;
    QString kept;  // where the former book is; empty when there was none
};
[[nodiscard]] Result<Restored> restore_book(const QString& from, const QString& book, const Progress& progress = {});

}  // namespace kempt::work
