#include <QJsonArray>

#include "command/commands.h"
#include "command/options.h"
#include "work/keep_safe.h"
#include "work/open_book.h"

namespace kempt::command {

namespace {

Result<Answer> check(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const auto report = work::check_book(**book, progress);
    if (!report) return report.error();
    Answer answer;
    answer.json = {{"sound", report->sound},       {"clients", report->clients},
                   {"visits", report->visits},     {"photos", report->photos},
                   {"readings", report->readings}, {"problems", QJsonArray::fromStringList(report->problems)}};
    answer.lines = report->problems;
    if (report->sound)
        answer.lines = {q("The book is sound: %1 clients, %2 visits, %3 photos, %4 readings.")
                            .arg(report->clients)
                            .arg(report->visits)
                            .arg(report->photos)
                            .arg(report->readings)};
    else
        answer.failure = q("The book has %1 problems; restore it from a backup.").arg(report->problems.size());
    return answer;
}

}  // namespace

Command check_command() {
    return {q("check"),
            q("is the book sound?"),
            false,
            {{q(""), q("Structure, links, and every photo's bytes against its hash."), {book_taken()}, {}, check}}};
}

}  // namespace kempt::command
