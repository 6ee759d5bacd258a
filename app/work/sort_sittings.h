// New photos put together by sitting, and the client and visit that each sitting is proposed for. Only proposals: what
// goes into a record, she says.
#pragma once

#include <QDate>
#include <QDateTime>
#include <QString>
#include <QVector>

#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

// Photos farther apart than this are of two sittings. Chairs are booked by the quarter of an hour, so that much lies
// between the last photo of one client and the first of the next, while the views of one client follow each other
// within a few minutes (common practice, no source). Photos before and after a service are two sittings; they meet
// again in the visit of that client and day.
inline constexpr int sitting_gap_s = 15 * 60;

// Places of the times, in order of time, a list for each sitting; a new day begins a new one. Times without a zone
// count as of this computer's.
[[nodiscard]] QVector<QVector<int>> sittings_of(const QVector<QDateTime>& taken);

// What is open while they come.
struct SortContext {
    Id client = 0, visit = 0;  // 0: none
    bool dropped = false;      // she dropped or chose the photos there herself: that decides
    QDate today;
};

enum class ProposedBy {
    nothing,       // nothing tells whose they are
    dropped,       // put there by hand
    same_sitting,  // that visit has photos of the same quarter of an hour
    open_visit,    // that visit of the day is open
    open_client,   // her page is open and the photos are of today
    only_visit,    // a guess: the only visit of that day, and it has no photo with a capture time yet
    chosen         // by hand, in the tray
};

struct VisitProposal {
    Id client = 0;  // 0: nothing is proposed
    QString client_name;
    Id visit = 0;  // 0: a new visit of `day`
    QDate day;     // of the visit
    ProposedBy by = ProposedBy::nothing;
};

struct SittingTimes {
    QDateTime from, to;
    QDate day;
    // A time of these is only the file's: a sync gives photos of several clients one time, so it says nothing of whose
    // they are.
    bool of_files = false;
};
// Errors: not_found (client or visit of the context), io.
[[nodiscard]] Result<VisitProposal> propose_visit(Book& book, const SittingTimes& sitting, const SortContext& context);
// For a client that she chose: her visit of that day, or a new one.
[[nodiscard]] Result<VisitProposal> visit_of_day(Book& book, Id client, const QDate& day);

}  // namespace kempt::work
