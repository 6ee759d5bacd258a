// Is the book sound? Reads everything and changes nothing.
#pragma once

#include <QStringList>

#include "book/book.h"
#include "core/progress.h"

namespace kempt {

struct CheckReport {
    int photos = 0;        // whose bytes were compared with their SHA-256
    QStringList problems;  // one sentence each
    // Words of the record that this Kempt does not know, one sentence each (book/check_words.h): kept as they are, so
    // the book is sound with them.
    QStringList unknown;
    [[nodiscard]] bool sound() const { return problems.isEmpty(); }
};

// Structure of the file, links between records, every photo's bytes against its stored SHA-256, the words and days of
// the services, of what clients told and of the grades.
// A damaged book gives problems, not an error. Errors: cancelled, busy, io.
[[nodiscard]] Result<CheckReport> check(Book& book, const Progress& progress = {});

}  // namespace kempt
