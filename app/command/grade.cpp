#include "command/commands.h"
#include "command/options.h"
#include "command/records_json.h"
#include "domain/words.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> add(const Arguments& arguments, const Progress&) {
    const double value = arguments.number(q("value")), round = arguments.number(q("round"), 1);
    if (value != static_cast<int>(value) || value < 0 || value > 4)
        return usage_error(q("'--value' must be 0, 1, 2, 3 or 4."));
    if (round != 1 && round != 2) return usage_error(q("'--round' must be 1 or 2."));
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto added =
        work::add_grade(**book, {0, arguments.id(q("visit")), arguments.text(q("zone")), arguments.text(q("quality")),
                                 static_cast<int>(value), static_cast<int>(round)});
    if (!added) return said_wrong(added.error());
    return Answer{json_of(added.value()), {line_of(added.value())}, {}};
}

Result<Answer> list(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto grades = work::list_grades(**book, arguments.id(q("visit")));
    if (!grades) return grades.error();
    return Answer{{{"grades", array_of(grades.value())}}, lines_of(grades.value()), {}};
}

Result<Answer> show(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto grade = work::grade_of(**book, arguments.id(q("grade")));
    if (!grade) return grade.error();
    return Answer{json_of(grade.value()), {line_of(grade.value())}, {}};
}

Result<Answer> erase(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("grade"));
    if (const Status status = work::erase_grade(**book, id); !status) return status.error();
    return Answer{{{"erased", id}}, {q("Erased grade %1.").arg(id)}, {}};
}

}  // namespace

Command grade_command() {
    const Option grade = needed("grade", Type::id, "N", "number of the grade");
    return {q("grade"),
            q("add, list, show or erase a stylist's grades"),
            false,
            {{q("add"),
              q("0 is worst, 4 best; a second round shows how steady the eye is."),
              {book_taken()},
              {visit_option(), needed("zone", Type::text, "ZONE", qPrintable(grade_zones().join(q(", ")))),
               needed("quality", Type::text, "QUALITY", "what is graded", grade_qualities()),
               needed("value", Type::number, "0-4", "the step"),
               may("round", Type::number, "1|2", "first or second grading (1)")},
              add},
             {q("list"), q("Of one visit."), {book_taken()}, {visit_option()}, list},
             {q("show"), q("One grade with its written anchor."), {book_taken()}, {grade}, show},
             {q("erase"), q("One grade."), {book_taken()}, {grade}, erase}}};
}

}  // namespace kempt::command
