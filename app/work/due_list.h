// Who is due, over all clients: retouch, trim, photographs, patch test.
#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <vector>

#include "care/dates.h"
#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "speech/speech.h"
#include "work/book_fwd.h"

namespace kempt::work {

struct DueOptions {
    QDate today;
    int within_days =
        14;  // ranges that begin by then; a fortnight ahead is what a chair's diary is planned by (own choice)
    // Ranges that ended longer ago are not listed, only counted: she has gone elsewhere, or nobody wrote it down (own
    // choice: a quarter).
    int overdue_days = 91;
    care::DateOptions dates;
};

struct DueLine {
    Id client = 0;
    QString name;
    care::DateRange range;
    bool overdue = false;  // its last day has passed
};

// Planned for a day that has passed, and nobody has said whether it was done.
struct UnansweredLine {
    Id client = 0;
    QString name;
    Service service;
};

struct DueList {
    QDate today;
    std::vector<DueLine> lines;              // by first day of the range, then name
    std::vector<UnansweredLine> unanswered;  // by date, however long ago
    int clients = 0;                         // looked at
    int long_overdue = 0;                    // ranges that ended more than overdue_days ago
};

// Errors: invalid (days that are none), cancelled, io. Reads the book in a few queries, not a few for each client.
[[nodiscard]] Result<DueList> due_list(Book& book, const DueOptions& options, const Progress& progress = {});

struct CalendarOptions {
    bool names = true;           // else "Client 12": the file leaves the book
    QDateTime stamp;             // when it is written
    speech::Speech speech = {};  // of its words
};
// The list as an iCalendar file. Each event keeps its UID from export to export (client and sort of date), so that a
// calendar moves the event; the first export puts a random seed into the book for that. Errors: io.
[[nodiscard]] Result<QByteArray> calendar_of(Book& book, const DueList& list, const CalendarOptions& options);
// The same for one client's dates.
[[nodiscard]] Result<QByteArray> calendar_of(Book& book, const Client& client,
                                             const std::vector<care::DateRange>& dates, const CalendarOptions& options);

// "retouch  1 Mar 2026 to ...  Ada Lindqvist (1), overdue"
[[nodiscard]] QString line_of(const DueLine& line);
// "was it done?  cut of 3 Nov 2026  Ada Lindqvist (1): kempt service change BOOK --service 7 --done"
[[nodiscard]] QString line_of(const UnansweredLine& line);

}  // namespace kempt::work
