#include "command/commands.h"
#include "command/options.h"
#include "work/keep_safe.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> backup(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const QString out = arguments.text(q("out"));
    if (const Status status = work::backup_book(**book, out, progress); !status) return status.error();
    return Answer{{{"file", out}}, {q("Wrote a complete copy to %1.").arg(out)}, {}};
}

}  // namespace

Command backup_command() {
    return {q("backup"),
            q("a complete copy of the book"),
            false,
            {{q(""),
              q("The book may stay open elsewhere; a file that exists is never replaced."),
              {book_taken()},
              {needed("out", Type::text, "FILE", "where to write the copy")},
              backup}}};
}

}  // namespace kempt::command
