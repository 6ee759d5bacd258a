#include <QDir>
#include <QFileInfo>
#include <QJsonArray>
#include <cmath>

#include "command/commands.h"
#include "command/options.h"
#include "domain/clock.h"
#include "work/care_json.h"
#include "work/due_list.h"
#include "work/errors.h"
#include "work/open_book.h"
#include "work/plan_json.h"

namespace kempt::command {

namespace {

QJsonObject json_of(const work::DueList& list) {
    QJsonArray due;
    for (const work::DueLine& line : list.lines) {
        QJsonObject one = work::json_of_date(line.range);
        one["client"] = QJsonObject{{"id", line.client}, {"name", line.name}};
        one["overdue"] = line.overdue;
        due.append(one);
    }
    QJsonArray unanswered;
    for (const work::UnansweredLine& line : list.unanswered)
        unanswered.append(QJsonObject{{"client", QJsonObject{{"id", line.client}, {"name", line.name}}},
                                      {"service", work::json_of_service(line.service)}});
    return {{"today", list.today.toString(Qt::ISODate)},
            {"clients", list.clients},
            {"long_overdue", list.long_overdue},
            {"due", due},
            {"was_it_done", unanswered}};
}

Result<Answer> due(const Arguments& arguments, const Progress& progress) {
    const auto book = work::open_book(arguments.book());
    if (!book) return book.error();
    const Clock clock;
    work::DueOptions options;
    options.today = arguments.has(q("today")) ? arguments.day(q("today")) : clock.today();
    for (const auto& [name, days] :
         {std::pair(q("within"), &options.within_days), {q("overdue"), &options.overdue_days}}) {
        const double value = arguments.number(name, *days);
        if (value < 0 || value > 36500 || value != std::floor(value))
            return usage_error(q("'--%1' is a whole number of days from 0 on.").arg(name));
        *days = static_cast<int>(value);
    }
    const auto list = work::due_list(**book, options, progress);
    if (!list) return list.error();
    Answer answer;
    answer.json = json_of(*list);
    for (const work::DueLine& line : list->lines) answer.lines.append(work::line_of(line));
    for (const work::UnansweredLine& line : list->unanswered) answer.lines.append(work::line_of(line));
    if (list->lines.empty()) answer.lines.append(q("Nobody is due in that time."));
    if (list->long_overdue > 0)
        answer.lines.append(q("%1 ended more than %2 days ago and are left out.")
                                .arg(counted(list->long_overdue, "date"))
                                .arg(options.overdue_days));
    if (!arguments.has(q("calendar"))) return answer;
    const QString path = arguments.text(q("calendar"));
    if (!QFileInfo(path).absoluteDir().exists())
        return work::disk(path, q("there is no folder '%1'").arg(QFileInfo(path).absolutePath()));
    const auto calendar = work::calendar_of(**book, *list, {arguments.has(q("names")), clock.now()});
    if (!calendar) return calendar.error();
    if (const Status status = work::write_file(path, *calendar); !status) return status.error();
    answer.json["file"] = path;
    answer.lines.append(q("Wrote %1.").arg(path));
    return answer;
}

}  // namespace

Command due_command() {
    return {q("due"),
            q("who is due: retouch, trim, photographs, patch test"),
            false,
            {{q(""),
              q("Ranges of days over all clients; reminders, no advice to do a service."),
              {book_taken()},
              {may("within", Type::number, "DAYS", "ranges that begin by then (14)"),
               may("overdue", Type::number, "DAYS", "and those that ended no longer ago than this (91)"),
               may("calendar", Type::text, "FILE.ics", "write them as calendar events too"),
               flag("names", "clients' names in the calendar in place of their numbers"),
               may("today", Type::day, "DAY", "the day of the list (today)")},
              due}}};
}

}  // namespace kempt::command
