// What must not be written over: a book, whoever's and whichever version. Both the work and the report write files.
#pragma once

#include <QFile>
#include <QString>

#include "core/result.h"

namespace kempt {

// Done unless a file stands at `path` that begins as a SQLite database does (https://sqlite.org/fileformat.html, 1.3).
// Errors: invalid, "target-is-a-book".
[[nodiscard]] inline Status not_a_book(const QString& path) {
    static const QByteArray magic("SQLite format 3\0", 16);
    QFile standing(path);
    if (!standing.open(QIODevice::ReadOnly) || standing.read(magic.size()) != magic) return Done{};
    return Error{ErrorKind::invalid, "target-is-a-book",
                 "The file " + path.toStdString() + " is a book and is never written over.", "Nothing was written.",
                 "Choose another name."};
}

}  // namespace kempt
