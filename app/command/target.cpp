#include "command/commands.h"
#include "command/options.h"
#include "command/records_json.h"
#include "domain/words.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> add(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto kept = work::set_target(**book, {0, arguments.id(q("client")), arguments.view(q("view")),
                                                arguments.text(q("reading")), arguments.number(q("value"))});
    if (!kept) return said_wrong(kept.error());
    return Answer{json_of(kept.value()), {line_of(kept.value())}, {}};
}

Result<Answer> list(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto targets = work::list_targets(**book, arguments.id(q("client")));
    if (!targets) return targets.error();
    return Answer{{{"targets", array_of(targets.value())}}, lines_of(targets.value()), {}};
}

Result<Answer> show(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto target = work::target_of(**book, arguments.id(q("target")));
    if (!target) return target.error();
    return Answer{json_of(target.value()), {line_of(target.value())}, {}};
}

Result<Answer> erase(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("target"));
    if (const Status status = work::erase_target(**book, id); !status) return status.error();
    return Answer{{{"erased", id}}, {q("Erased target %1.").arg(id)}, {}};
}

}  // namespace

Command target_command() {
    const Option target = needed("target", Type::id, "N", "number of the target");
    return {q("target"),
            q("add, list, show or erase what the client wants to reach"),
            false,
            {{q("add"),
              q("One for each view and reading: a second one replaces the first."),
              {book_taken()},
              {client_option(), needed("view", Type::view, "VIEW", "camera position"),
               needed("reading", Type::text, "READING", "what is measured", all_reading_names()),
               needed("value", Type::number, "VALUE", "in the reading's unit")},
              add},
             {q("list"), q("Of one client."), {book_taken()}, {client_option()}, list},
             {q("show"), q("One target."), {book_taken()}, {target}, show},
             {q("erase"), q("One target."), {book_taken()}, {target}, erase}}};
}

}  // namespace kempt::command
