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
    Service service;
    service.client = arguments.id(q("client"));
    if (arguments.has(q("visit"))) service.visit = arguments.id(q("visit"));
    service.date = arguments.day(q("date"));
    service.kind = arguments.text(q("kind"));
    service.note = arguments.text(q("note"));
    const auto added = work::add_service(**book, service);
    if (!added) return added.error();
    return Answer{json_of(added.value()), {line_of(added.value())}, {}};
}

Result<Answer> list(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto services = work::list_services(**book, arguments.id(q("client")));
    if (!services) return services.error();
    return Answer{{{"services", array_of(services.value())}}, lines_of(services.value()), {}};
}

Result<Answer> show(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto service = work::service_of(**book, arguments.id(q("service")));
    if (!service) return service.error();
    return Answer{json_of(service.value()), {line_of(service.value())}, {}};
}

Result<Answer> erase(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Id id = arguments.id(q("service"));
    if (const Status status = work::erase_service(**book, id); !status) return status.error();
    return Answer{{{"erased", id}}, {q("Erased service %1.").arg(id)}, {}};
}

}  // namespace

Command service_command() {
    const Option service = needed("service", Type::id, "N", "number of the service");
    return {
        q("service"),
        q("add, list, show or erase what was done to the hair"),
        false,
        {{q("add"),
          q("A record only: it says nothing about what the hair can take."),
          {book_taken()},
          {client_option(), needed("date", Type::day, "DAY", "day of the service"),
           needed("kind", Type::text, "KIND", "what was done, one of the known kinds", service_kinds()),
           may("visit", Type::id, "N", "the visit it belongs to"), may("note", Type::text, "TEXT", "for the stylist")},
          add},
         {q("list"), q("By date."), {book_taken()}, {client_option()}, list},
         {q("show"), q("One service."), {book_taken()}, {service}, show},
         {q("erase"), q("One service."), {book_taken()}, {service}, erase}}};
}

}  // namespace kempt::command
