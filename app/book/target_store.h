// What the client wants to reach: one target for each view and reading. Errors as in client_store.h.
#pragma once

#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// Errors: not_found (no such client), invalid (unknown reading, value not a number or below 0, or code
// "target-already-set": that view and reading have one, update it).
[[nodiscard]] Result<Id> add_target(Book& book, const Target& target);
[[nodiscard]] Status update_target(Book& book, const Target& target);  // the client stays
[[nodiscard]] Result<Target> get_target(Book& book, Id id);
// Adds it, or gives the one that stands for that client, view and reading the new value. Gives its id.
[[nodiscard]] Result<Id> put_target(Book& book, const Target& target);
[[nodiscard]] Result<QVector<Target>> targets_of_client(Book& book, Id client);  // in the order they were added
[[nodiscard]] Status erase_target(Book& book, Id id);

}  // namespace kempt::store
