#include "domain/marks_json.h"

#include "command/commands.h"
#include "command/options.h"
#include "intake/intake.h"
#include "work/carry_marks.h"
#include "work/measure_json.h"
#include "work/open_book.h"
#include "work/set_marks.h"

namespace kempt::command {

namespace {

Answer answer_of(const Marks& marks) {
    QJsonObject object = json_of_marks(marks);
    object["id"] = marks.id > 0 ? QJsonValue(marks.id) : QJsonValue::Null;
    object["photo"] = marks.photo;
    const QString kept = marks.id > 0 ? q("marks %1").arg(marks.id) : q("marks, not kept");
    return {object,
            {q("Photo %1: %2, %3 points on the edge line.").arg(marks.photo).arg(kept).arg(marks.edge_line.size())},
            {}};
}

Result<Answer> add(const Arguments& arguments, const Progress&) {
    const auto json = intake::read_file(arguments.text(q("marks")));
    if (!json) return json.error();
    const auto marks = marks_from_json(json.value());
    if (!marks) return marks.error();
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto kept = work::set_marks(**book, arguments.id(q("photo")), marks.value());
    if (!kept) return kept.error();
    return answer_of(kept.value());
}

Result<Answer> show(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto marks = work::marks_of(**book, arguments.id(q("photo")));
    if (!marks) return marks.error();
    if (!marks.value())
        return Error{ErrorKind::not_found, "no-marks", "Nothing has been drawn on this photo yet.", "",
                     "Draw the edge line in the window, or add marks from a file."};
    return answer_of(*marks.value());
}

Result<Answer> carry(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::CarryOptions options;
    options.from_photo = arguments.id(q("from"));
    options.to_photo = arguments.id(q("to"));
    const auto scale = work::printer_scale_of(**book);
    if (!scale) return scale.error();
    options.measure.printer_scale = scale.value();
    const auto carried = work::carry_marks(**book, options, progress);
    if (!carried) return carried.error();
    Marks marks = carried->marks;
    if (arguments.has(q("keep"))) {
        const auto kept = work::set_marks(**book, options.to_photo, marks);
        if (!kept) return kept.error();
        marks = kept.value();
    }
    Answer answer = answer_of(marks);
    answer.json["carried_by"] = carried->by;
    answer.json["residual_mm"] =
        carried->residual_mm ? QJsonValue(work::rounded(*carried->residual_mm, 3)) : QJsonValue::Null;
    answer.lines.append(carried->told());
    return answer;
}

}  // namespace

Command marks_command() {
    const Option photo = needed("photo", Type::id, "N", "number of the photo");
    return {q("marks"),
            q("add, show or carry what was drawn on a photo"),
            false,
            {{q("add"),
              q("Earlier marks stay with the readings that came from them."),
              {book_taken()},
              {photo, needed("marks", Type::text, "MARKS.json", "edge line and the rest, upright pixels")},
              add},
             {q("show"), q("The newest marks."), {book_taken()}, {photo}, show},
             {q("carry"),
              q("To another shot of the same view: through both gauge cards, or by the skin from one visit to another. "
                "Look "
                "before you keep them."),
              {book_taken()},
              {needed("from", Type::id, "N", "photo with marks"), needed("to", Type::id, "N", "photo without"),
               flag("keep", "keep them")},
              carry}}};
}

}  // namespace kempt::command
