#include "command/commands.h"
#include "command/options.h"
#include "command/plan_file.h"
#include "domain/clock.h"
#include "work/make_report.h"
#include "work/open_book.h"
#include "work/report_language.h"

namespace kempt::command {

namespace {

Result<Answer> make(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    work::ReportOptions options;
    options.client = arguments.id(q("client"));
    if (arguments.has(q("from"))) options.from_visit = arguments.id(q("from"));
    if (arguments.has(q("to"))) options.to_visit = arguments.id(q("to"));
    options.path = arguments.text(q("out"));
    options.salon = arguments.text(q("salon"));
    options.look.copy = arguments.has(q("record")) ? report::Copy::record : report::Copy::client;
    options.look.paper = arguments.text(q("paper")) == u"a4" ? report::Paper::a4 : report::Paper::letter;
    options.look.length = arguments.has(q("inches")) ? LengthUnit::inches : LengthUnit::millimetres;
    auto language = work::report_language_of(**book, options.client);
    if (!language) return language.error();
    if (arguments.has(q("language"))) *language = speech::language_of(arguments.text(q("language")));
    if (*language) options.look.speech = speech::Speech(**language);
    options.with_pictures = !arguments.has(q("no-pictures"));
    if (arguments.has(q("plan"))) {
        auto plan = plan_from_file(arguments.text(q("plan")));
        if (!plan) return plan.error();
        options.plan = std::move(*plan);
    }
    const QDate today = arguments.has(q("today")) ? arguments.day(q("today")) : Clock().today();
    if (const Status status = work::make_report(**book, options, today, progress); !status) return status.error();
    return Answer{{{"file", options.path}}, {q("Wrote %1.").arg(options.path)}, {}};
}

}  // namespace

Command report_command() {
    return {
        q("report"),
        q("condition report of a client as PDF"),
        true,
        {{q(""),
          q("Pictures only with the client's photo consent."),
          {book_taken()},
          {client_option(), needed("out", Type::text, "FILE.pdf", "where to write"),
           may("from", Type::id, "VISIT", "visit to compare from (the first)"),
           may("to", Type::id, "VISIT", "visit to compare with (the last)"),
           flag("record", "the salon's own copy, with every reading"),
           may("paper", Type::text, "PAPER", "page size (letter)", {q("letter"), q("a4")}),
           may("language", Type::text, "LANGUAGE", "of the report (that kept for her, else en)", {q("en"), q("es")}),
           flag("inches", "lengths in inches"), may("salon", Type::text, "NAME", "prepared by"),
           may("plan", Type::text, "FILE.json", "services planned for that day, as for kempt plan --request"),
           flag("no-pictures", "leave the pictures out"), may("today", Type::day, "DAY", "date of the report (today)")},
          make}}};
}

}  // namespace kempt::command
