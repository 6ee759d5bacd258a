// Grades by zone. Errors as in client_store.h.
#pragma once

#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

struct DatedGrade {
    Grade grade;
    QDate date;  // of the visit
};

// value 0-4, round 1 or more. Errors: not_found (no such visit), invalid with code "already-graded" (the same zone,
// quality and round of that visit).
[[nodiscard]] Result<Id> add_grade(Book& book, const Grade& grade);
[[nodiscard]] Status update_grade(Book& book, const Grade& grade);  // the visit stays
[[nodiscard]] Result<Grade> get_grade(Book& book, Id id);
[[nodiscard]] Result<QVector<Grade>> grades_of_visit(Book& book, Id visit);         // by zone, quality, round
[[nodiscard]] Result<QVector<DatedGrade>> grades_of_client(Book& book, Id client);  // by date, zone, quality, round
// Grades of the hair's own state from visits between two days, both included; by client, date, visit, zone, quality,
// round.
struct ClientGrade {
    Id client = 0;
    DatedGrade dated;
};
[[nodiscard]] Result<QVector<ClientGrade>> grades_between(Book& book, QDate from, QDate to);
[[nodiscard]] Status erase_grade(Book& book, Id id);

}  // namespace kempt::store
