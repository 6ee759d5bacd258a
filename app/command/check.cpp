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
    answer.json = {{"sound", report->sound},
                   {"clients", report->clients},
                   {"visits", report->visits},
                   {"photos", report->photos},
                   {"readings", report->readings},
                   {"problems", QJsonArray::fromStringList(report->problems)},
                   {"unknown_words", QJsonArray::fromStringList(report->unknown_words)}};
    answer.lines = report->problems;
    if (report->sound)
        answer.lines = {q("The book is sound: %1, %2, %3, %4.")
                            .arg(counted(report->clients, "client"), counted(report->visits, "visit"),
                                 counted(report->photos, "photo"), counted(report->readings, "reading"))};
    else
        answer.failure =
            q("The book has %1; restore it from a backup.").arg(counted(report->problems.size(), "problem"));
    for (const QString& word : report->unknown_words)
        answer.lines.append(word + q(" It is kept, and the care rules do not count on it."));
    return answer;
}

}  // namespace

Command check_command() {
    return {q("check"),
            q("is the book sound?"),
            false,
            {{q(""),
              q("Structure, links, every photo's bytes against its hash, the words of the record."),
              {book_taken()},
              {},
              check}}};
}

}  // namespace kempt::command
