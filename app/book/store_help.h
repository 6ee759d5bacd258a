// Sentences and small checks that the stores share.
#pragma once

#include "book/sql.h"
#include "book/transaction.h"

namespace kempt::store {

[[nodiscard]] std::string in_quotes(const QString& text);
[[nodiscard]] Error invalid(const std::string& code, const std::string& what, const std::string& remedy);
[[nodiscard]] Error missing(const std::string& what, Id id);  // "There is no visit 7 in the book."
[[nodiscard]] Status need_date(QDate date, const std::string& of);
[[nodiscard]] Status need_finite(double value, const std::string& of);
// Where it is set: from 0 to `most`. what: "minutes".
[[nodiscard]] Status need_up_to(const std::optional<double>& value, double most, const std::string& what);
// Empty or one of these words.
[[nodiscard]] Status need_word(const QString& word, const QStringList& words, const std::string& what);

// An error of the database's own code, told better: already-there, missing-link, out-of-range.
[[nodiscard]] Error told(const Error& error, const std::string& code, const Error& better);

// An UPDATE or DELETE of one record by id: not_found when it touched none.
[[nodiscard]] Status change_one(Book& book, const std::string& what, Id id, const QString& statement,
                                const QVariantList& values);
// Deletes it with all that hangs on it and, outside a transaction, clears the traces.
[[nodiscard]] Status erase_one(Book& book, const std::string& what, const QString& table, Id id);

template <class T>
Result<T> get_one(Book& book, const std::string& what, Id id, const QString& statement, T (*read)(sql::Row&)) {
    auto found = sql::first<T>(book.connection(), statement, sql::values(id), read);
    if (!found) return found.error();
    if (!found->has_value()) return missing(what, id);
    return **found;
}

}  // namespace kempt::store
