// What a client told of herself, of her days, and before a service. Errors as in client_store.h; a client that is not
// there is not_found.
#pragma once

#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// Without one: an empty profile of that client, whether or not there is such a client.
[[nodiscard]] Result<ClientProfile> profile_of(Book& book, Id client);
[[nodiscard]] Result<QVector<ClientProfile>> all_profiles(Book& book);  // by client, those that have one
// Replaces the whole profile. Errors: invalid (a birthday or day that is none, an age without its day or the other way
// round, an age above 130, a length of 0 or above 6000 mm, a word that is not one of domain/words.h).
[[nodiscard]] Status put_profile(Book& book, const ClientProfile& profile);

// Adds it, or replaces what was told on that day. Gives its id. Errors: invalid (no date, a number that cannot be, a
// heat tool without a name).
[[nodiscard]] Result<Id> put_daily_life(Book& book, const DailyLife& life);
[[nodiscard]] Result<QVector<DailyLife>> daily_life_of_client(Book& book, Id client);  // oldest first
[[nodiscard]] Status erase_daily_life(Book& book, Id id);

// Adds it, or replaces the answer to that question of that day. Gives its id. Errors: invalid (no date; a question that
// is not one of domain/questions.h; a value that is none).
[[nodiscard]] Result<Id> put_answer(Book& book, const ClientAnswer& answer);
[[nodiscard]] Result<QVector<ClientAnswer>> answers_of_client(Book& book, Id client);  // oldest first, then by question
[[nodiscard]] Status erase_answer(Book& book, Id id);

}  // namespace kempt::store
