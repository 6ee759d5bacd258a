#include "command/commands.h"
#include "command/options.h"
#include "work/keep_safe.h"

namespace kempt::command {

namespace {

Result<Answer> restore(const Arguments& arguments, const Progress& progress) {
    const auto restored = work::restore_book(arguments.text(q("from")), arguments.book(), progress);
    if (!restored) return restored.error();
    QStringList lines{q("Restored %1.").arg(restored->book)};
    if (!restored->kept.isEmpty()) lines.append(q("The former book is kept as %1.").arg(restored->kept));
    return Answer{{{"book", restored->book},
                   {"kept", restored->kept.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(restored->kept)}},
                  lines,
                  {}};
}

}  // namespace

Command restore_command() {
    return {q("restore"),
            q("put a backup in the place of the book"),
            false,
            {{q(""),
              q("The backup is checked first; the former book is kept beside it."),
              {book_taken()},
              {needed("from", Type::text, "FILE", "the backup")},
              restore}}};
}

}  // namespace kempt::command
