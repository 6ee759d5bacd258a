#include <algorithm>
#include <cmath>

#include "command/commands.h"
#include "command/options.h"
#include "command/records_json.h"
#include "domain/clock.h"
#include "domain/words.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

// What a service may say of itself; what is not given stays as it is.
QVector<Option> detail_options() {
    return {may_none("visit", Type::id, "N", "the visit it belongs to"),
            may("note", Type::text, "TEXT", "for the stylist"),
            may_none("from-mm", Type::number, "MM", "where it began, from the scalp as the hair was then (0)"),
            may_none("to-mm", Type::number, "MM", "where it ended (the ends); of a cut the length that was left"),
            may_none("sections", Type::text, "LIST", "of the head, with commas (the whole head)"),
            may_none("strength", Type::text, "STRENGTH", "of the product", strengths()),
            may_none("minutes", Type::number, "MIN", "from the first stroke to the rinse"),
            may_none("most-minutes", Type::number, "MIN", "the most that the maker's directions allow"),
            may_none("temperature-c", Type::number, "C", "of the tool"),
            may_none("passes", Type::number, "N", "of the tool over one strand"),
            may_none("strand-test", Type::text, "RESULT", "of the strand test", test_results()),
            may_none("patch-test", Type::text, "RESULT", "of the patch test", test_results()),
            may_none("patch-test-on", Type::day, "DAY", "day on which it was put on"),
            may("patch-test-where", Type::text, "TEXT", "where on the skin"),
            may("result", Type::text, "TEXT", "how it turned out"),
            may_none("reaction", Type::text, "YES", "of scalp or skin", yes_or_no()),
            may_none("at-home", Type::text, "YES", "done at home", yes_or_no()),
            may_none("line-mm", Type::number, "MM", "its line of demarcation by tape, from the scalp"),
            may("line-on", Type::day, "DAY", "day on which the line was measured (today)"),
            flag("planned", "for that day: it changes nothing of the hair until it is done")};
}

Status take_sections(const Arguments& arguments, Service& service) {
    if (!arguments.has(q("sections"))) return Done{};
    service.sections.clear();
    if (arguments.is_none(q("sections"))) return Done{};
    for (const QString& word : arguments.text(q("sections")).split(u',', Qt::SkipEmptyParts)) {
        const auto view = view_from_word(word);
        const QString section = view ? word_of(*view) : word.trimmed();
        if (!head_sections().contains(section))
            return usage_error(
                q("'%1' is no section of the head: %2.").arg(section, head_sections().join(QStringLiteral(", "))));
        if (!service.sections.contains(section)) service.sections.append(section);
    }
    return Done{};
}

Status take(const Arguments& arguments, Service& service) {
    const auto text = [&](const char* name, QString& to) {
        if (arguments.has(q(name))) to = arguments.text(q(name));
    };
    const auto word = [&](const char* name, QString& to) {
        if (arguments.has(q(name))) to = arguments.is_none(q(name)) ? QString() : arguments.text(q(name));
    };
    const auto number = [&](const char* name, std::optional<double>& to) {
        if (arguments.has(q(name))) to = arguments.number_or_none(q(name));
    };
    if (arguments.has(q("visit")))
        service.visit = arguments.is_none(q("visit")) ? std::nullopt : std::optional(arguments.id(q("visit")));
    if (arguments.has(q("date"))) service.date = arguments.day(q("date"));
    text("kind", service.kind);
    text("note", service.note);
    if (arguments.has(q("from-mm"))) service.from_mm = arguments.number_or_none(q("from-mm")).value_or(0);
    number("to-mm", service.to_mm);
    word("strength", service.strength);
    number("minutes", service.minutes);
    number("most-minutes", service.most_minutes);
    number("temperature-c", service.temperature_c);
    if (arguments.has(q("passes"))) {
        const auto passes = arguments.number_or_none(q("passes"));
        if (passes && (*passes != std::floor(*passes) || *passes < 0 || *passes > 1000))
            return usage_error(q("'--passes' must be a whole number from 0 to 1000, or none."));
        service.passes = passes ? std::optional(static_cast<int>(*passes)) : std::nullopt;
    }
    word("strand-test", service.strand_test);
    word("patch-test", service.patch_test);
    if (arguments.has(q("patch-test-on"))) service.patch_test_on = arguments.day_or_none(q("patch-test-on"));
    text("patch-test-where", service.patch_test_where);
    text("result", service.result);
    number("line-mm", service.line_mm);
    if (arguments.has(q("line-on")))
        service.line_on = arguments.day(q("line-on"));
    else if (arguments.has(q("line-mm")))
        service.line_on = service.line_mm ? std::optional(Clock().today()) : std::nullopt;
    take_flag(arguments, "reaction", service.reaction);
    take_flag(arguments, "at-home", service.at_home);
    if (arguments.has(q("planned")) && arguments.has(q("done")))
        return usage_error(q("A service is planned or done, not both."));
    if (arguments.has(q("planned"))) service.done = false;
    if (arguments.has(q("done"))) {
        // On the day for which it was planned, unless another is given or that day is still to come.
        if (!service.done && !arguments.has(q("date"))) service.date = std::min(service.date, Clock().today());
        service.done = true;
    }
    return take_sections(arguments, service);
}

Result<Answer> add(const Arguments& arguments, const Progress&) {
    Service service;
    service.client = arguments.id(q("client"));
    if (const Status good = take(arguments, service); !good) return good.error();
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto added = work::add_service(**book, service);
    if (!added) return said_wrong(added.error());
    return Answer{json_of(added.value()), {line_of(added.value())}, {}};
}

Result<Answer> change(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    auto service = work::service_of(**book, arguments.id(q("service")));
    if (!service) return service.error();
    if (const Status good = take(arguments, service.value()); !good) return good.error();
    if (const Status status = work::change_service(**book, service.value()); !status) return said_wrong(status.error());
    return Answer{json_of(service.value()), {line_of(service.value())}, {}};
}

// All of them; with --planned those that are still to be done or of which nobody has said whether they were.
Result<Answer> list(const Arguments& arguments, const Progress&) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    auto services = work::list_services(**book, arguments.id(q("client")));
    if (!services) return services.error();
    if (arguments.has(q("planned")))
        services->erase(std::remove_if(services->begin(), services->end(), [](const Service& one) { return one.done; }),
                        services->end());
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
    return {q("service"),
            q("add, list, show, change or erase what was done to the hair"),
            false,
            {{q("add"),
              q("A record only: it says nothing about what the hair can take. On a day to come it is planned."),
              {book_taken()},
              QVector<Option>{
                  client_option(), needed("date", Type::day, "DAY", "day of the service"),
                  needed("kind", Type::text, "KIND", "what was done, one of the known kinds", service_kinds())} +
                  detail_options(),
              add},
             {q("list"),
              q("By date."),
              {book_taken()},
              {client_option(), flag("planned", "only those that are planned")},
              list},
             {q("show"), q("One service."), {book_taken()}, {service}, show},
             {q("change"),
              q("Result, reaction or anything else that is known later; none takes back what was written down."),
              {book_taken()},
              QVector<Option>{service, may("date", Type::day, "DAY", "day of the service"),
                              may("kind", Type::text, "KIND", "what was done", service_kinds()),
                              flag("done", "a planned one was done, on its day or on the day given")} +
                  detail_options(),
              change},
             {q("erase"), q("One service."), {book_taken()}, {service}, erase}}};
}

}  // namespace kempt::command
