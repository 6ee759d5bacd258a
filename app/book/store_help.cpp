#include "book/store_help.h"

#include "book/client_store.h"

namespace kempt::store {

std::string in_quotes(const QString& text) {
    return QString('"' + text + '"').toStdString();
}

Error invalid(const std::string& code, const std::string& what, const std::string& remedy) {
    return {ErrorKind::invalid, code, what, sql::nothing_changed, remedy};
}

Error missing(const std::string& what, Id id) {
    return {ErrorKind::not_found, what + "-missing", "There is no " + what + " " + std::to_string(id) + " in the book.",
            sql::nothing_changed, "It may have been erased; look at the list again."};
}

Status need_date(QDate date, const std::string& of) {
    // ISO text has four digits for the year.
    if (date.isValid() && date.year() >= 1 && date.year() <= 9999) return Done{};
    return invalid("date-missing", "The date of the " + of + " is missing or is no date.", "Give it as YYYY-MM-DD.");
}

Status need_finite(double value, const std::string& of) {
    if (std::isfinite(value)) return Done{};
    return invalid("not-a-number", "The " + of + " is not a number.", "Correct it.");
}

Status need_up_to(const std::optional<double>& value, double most, const std::string& what) {
    if (!value || (*value >= 0 && *value <= most)) return Done{};
    return invalid("number-impossible", "The " + what + " cannot be " + QString::number(*value).toStdString() + ".",
                   "Give a number from 0 to " + QString::number(most).toStdString() + ".");
}

Status need_word(const QString& word, const QStringList& words, const std::string& what) {
    if (word.isEmpty() || words.contains(word)) return Done{};
    return invalid("word-unknown", "The " + what + " cannot be " + in_quotes(word) + ".",
                   "Choose one of: " + words.join(", ").toStdString() + ".");
}

Error told(const Error& error, const std::string& code, const Error& better) {
    return error.code == code ? better : error;
}

Status change_one(Book& book, const std::string& what, Id id, const QString& statement, const QVariantList& values) {
    auto touched = sql::change(book.connection(), statement, values);
    if (!touched) return touched.error();
    if (*touched == 0) return missing(what, id);
    return Done{};
}

Status erase_one(Book& book, const std::string& what, const QString& table, Id id) {
    Status done = change_one(book, what, id, "DELETE FROM " + table + " WHERE id = ?", sql::values(id));
    // When somebody is reading, the traces go with the next scrub or when the last one closes the book.
    if (done && book.connection().depth == 0) (void)scrub(book);
    return done;
}

}  // namespace kempt::store
