// What was done to the hair. Errors as in client_store.h.
#pragma once

#include <QVector>
#include <functional>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// A service may stand alone (done elsewhere, before the first visit) or belong to a visit of the same client.
// Errors: not_found (client, or that client has no such visit), invalid (no kind, no date; a number that cannot be, a
// word that is not one of domain/words.h, an end before the beginning, a patch test after the service, a line before
// it).
[[nodiscard]] Result<Id> add_service(Book& book, const Service& service);
[[nodiscard]] Status update_service(Book& book, const Service& service);  // the client stays
[[nodiscard]] Result<Service> get_service(Book& book, Id id);
[[nodiscard]] Result<QVector<Service>> services_of_client(Book& book, Id client);  // oldest first
// All of the book, in no order: as they lie in the file, several times quicker than by date.
[[nodiscard]] Status each_service(Book& book, const std::function<void(Service&&)>& take);
[[nodiscard]] Result<std::optional<Service>> last_service(Book& book, Id client, const QString& kind);  // or nothing
[[nodiscard]] Status erase_service(Book& book, Id id);

}  // namespace kempt::store
