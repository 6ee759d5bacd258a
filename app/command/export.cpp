#include <QJsonArray>

#include "command/commands.h"
#include "command/options.h"
#include "work/export_book.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

const QString originals =
    q("The photos are the originals, with faces and eyes open, also of clients who have not agreed "
      "that pictures leave the book: give each client no other's, and nobody else any.");

Result<Answer> write_out(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::ExportOptions options;
    options.client = arguments.has(q("client")) ? arguments.id(q("client")) : 0;
    options.folder = arguments.text(q("out"));
    options.photos = arguments.has(q("photos"));
    const auto report = work::export_book(**book, options, progress);
    if (!report) return report.error();
    QStringList lines{q("Wrote %1 files to %2.").arg(report->files.size()).arg(options.folder)};
    QJsonArray notes;
    if (options.photos) {
        notes.append(originals);
        lines.append(originals);
    }
    return Answer{{{"folder", options.folder}, {"files", QJsonArray::fromStringList(report->files)}, {"notes", notes}},
                  lines,
                  {}};
}

}  // namespace

Command export_command() {
    return {q("export"),
            q("a client or the whole book as CSV and JSON"),
            false,
            {{q(""),
              q("Tables as CSV, everything as JSON."),
              {book_taken()},
              {needed("out", Type::text, "DIR", "folder to fill"), may("client", Type::id, "N", "this client only"),
               flag("photos", "the photos' original bytes too: faces are seen, whatever was agreed")},
              write_out}}};
}

}  // namespace kempt::command
