// Visits of a client. Errors as in client_store.h.
#pragma once

#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// Several visits may fall on one day (before and after a service).
[[nodiscard]] Result<Id> add_visit(Book& book, const Visit& visit);  // not_found: no such client
[[nodiscard]] Status update_visit(Book& book, const Visit& visit);   // the client stays
[[nodiscard]] Result<Visit> get_visit(Book& book, Id id);
[[nodiscard]] Result<QVector<Visit>> visits_of_client(Book& book, Id client);           // oldest first
[[nodiscard]] Result<QVector<Visit>> visits_between(Book& book, QDate from, QDate to);  // both included; oldest first
// With its photos, readings and grades; services of that visit stay with the client. Overwrites like erase_client.
[[nodiscard]] Status erase_visit(Book& book, Id id);

}  // namespace kempt::store
