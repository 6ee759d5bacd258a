#include "command/commands.h"
#include "command/options.h"
#include "command/records_json.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> add(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    Visit visit;
    visit.client = arguments.id(q("client"));
    visit.date = arguments.day(q("date"));
    visit.hair = {arguments.has(q("wet")), arguments.has(q("styled")), arguments.has(q("product"))};
    visit.note = arguments.text(q("note"));
    const auto added = work::add_visit(**book, visit);
    if (!added) return added.error();
    return Answer{json_of(added.value()), {line_of(added.value())}, {}};
}

Result<Answer> list(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto visits = work::list_visits(**book, arguments.id(q("client")));
    if (!visits) return visits.error();
    return Answer{{{"visits", array_of(visits.value())}}, lines_of(visits.value()), {}};
}

Result<Answer> show(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("visit"));
    const auto visit = work::visit_of(**book, id);
    if (!visit) return visit.error();
    const auto photos = work::list_photos(**book, id);
    if (!photos) return photos.error();
    const auto grades = work::list_grades(**book, id);
    if (!grades) return grades.error();
    Answer answer;
    answer.json = json_of(visit.value());
    answer.lines = {line_of(visit.value())};
    QJsonArray array;
    for (const work::PhotoRow& row : photos.value()) {
        array.append(json_of(row.photo));
        answer.lines.append(line_of(row.photo));
    }
    answer.json["photos"] = array;
    answer.json["grades"] = array_of(grades.value());
    answer.lines += lines_of(grades.value());
    return answer;
}

Result<Answer> erase(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("visit"));
    if (const Status status = work::erase_visit(**book, id); !status) return status.error();
    return Answer{{{"erased", id}}, {q("Erased visit %1 with its photos and readings.").arg(id)}, {}};
}

}  // namespace

Command visit_command() {
    return {q("visit"),
            q("add, list, show or erase a visit"),
            false,
            {{q("add"),
              q("Visits whose hair state differs are not compared."),
              {book_taken()},
              {client_option(), needed("date", Type::day, "DAY", "day of the visit"), flag("wet", "the hair was wet"),
               flag("styled", "it was styled"), flag("product", "there was product in it"),
               may("note", Type::text, "TEXT", "for the stylist")},
              add},
             {q("list"), q("By date."), {book_taken()}, {client_option()}, list},
             {q("show"), q("With photos and grades."), {book_taken()}, {visit_option()}, show},
             {q("erase"), q("With its photos and readings."), {book_taken()}, {visit_option()}, erase}}};
}

}  // namespace kempt::command
