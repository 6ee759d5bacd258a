// Clients. Errors of every store: invalid (a value the book does not hold; says which), not_found (no such id),
// busy, io, damaged. After an error nothing was changed.
#pragma once

#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

struct ClientRow {
    Client client;
    std::optional<QDate> last_visit;
    int visits = 0;
    int photos = 0;
};

// The name must hold a letter or digit; it need not be unique. `since` must be a date.
[[nodiscard]] Result<Id> add_client(Book& book, const Client& client);  // client.id is not looked at
[[nodiscard]] Status update_client(Book& book, const Client& client);
[[nodiscard]] Result<Client> get_client(Book& book, Id id);

// By name. `letters` keeps the clients whose name holds every one of these words, without regard to case and accents
// ("jos ni" finds José Niño); empty keeps all. No match is an empty list.
[[nodiscard]] Result<QVector<ClientRow>> list_clients(Book& book, const QString& letters = {});

// Erasure on request: the client with visits, photos, marks, readings, grades, services and targets. The space they
// took in the file is overwritten with zeros before this returns (inside a Transaction: call scrub() after commit).
// Backups and copies made earlier still hold them.
[[nodiscard]] Status erase_client(Book& book, Id id);

// Clears what erased records left in the write-ahead file. Errors: busy while another connection reads; the erased
// records are gone from the book all the same, and the next scrub or close clears them.
[[nodiscard]] Status scrub(Book& book);

}  // namespace kempt::store
