#include <QJsonArray>

#include "command/commands.h"
#include "command/options.h"
#include "work/export_book.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> write_out(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::ExportOptions options;
    options.client = arguments.has(q("client")) ? arguments.id(q("client")) : 0;
    options.folder = arguments.text(q("out"));
    options.photos = arguments.has(q("photos"));
    const auto report = work::export_book(**book, options, progress);
    if (!report) return report.error();
    return Answer{{{"folder", options.folder}, {"files", QJsonArray::fromStringList(report->files)}},
                  {q("Wrote %1 files to %2.").arg(report->files.size()).arg(options.folder)},
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
               flag("photos", "the photos' original bytes too")},
              write_out}}};
}

}  // namespace kempt::command
