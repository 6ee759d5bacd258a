#include <QJsonArray>

#include "command/commands.h"
#include "command/options.h"
#include "domain/words.h"
#include "work/compare_pictures.h"
#include "work/measure_json.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> compare(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::CompareOptions options;
    options.client = arguments.id(q("client"));
    options.view = arguments.view(q("view"));
    options.from_visit = arguments.id(q("from"));
    options.to_visit = arguments.id(q("to"));
    const QString out = arguments.text(q("out"));
    const auto pictures = work::write_pair(**book, options, out, progress);
    if (!pictures) return pictures.error();
    const work::AlignedPair& pair = pictures->pair;
    return Answer{{{"file", out},
                   {"view", word_of(options.view)},
                   {"before_photo", pictures->before_photo},
                   {"after_photo", pictures->after_photo},
                   {"px_per_mm", pair.px_per_mm > 0 ? QJsonValue(work::rounded(pair.px_per_mm)) : QJsonValue::Null},
                   {"light_matched", pair.light_matched},
                   {"lines_apart_mm", work::rounded(pair.rms_mm, 3)},
                   {"verdict", pictures->verdict},
                   {"notes", QJsonArray::fromStringList(pair.notes)}},
                  QStringList{q("Wrote %1.").arg(out), pictures->verdict} + pair.notes,
                  {}};
}

}  // namespace

Command compare_command() {
    return {
        q("compare"),
        q("aligned before/after picture"),
        true,
        {{q(""),
          q("Both photos at one scale, laid over each other at the edge line, one tone mapping for both; only with the "
            "client's photo consent."),
          {book_taken()},
          {client_option(), needed("view", Type::view, "VIEW", "camera position"),
           needed("from", Type::id, "VISIT", "the earlier visit"), needed("to", Type::id, "VISIT", "the later visit"),
           needed("out", Type::text, "FILE.png", "where to write")},
          compare}}};
}

}  // namespace kempt::command
