#include "book/setting_store.h"

#include "book/store_help.h"

namespace kempt::store {

Status put_setting(Book& book, const QString& key, const QString& value) {
    if (key.trimmed().isEmpty()) return invalid("setting-key", "The setting has no name.", "Give it one.");
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    auto touched =
        sql::change(book.connection(), "UPDATE setting SET value = ? WHERE name = ?", sql::values(value, key));
    if (!touched) return touched.error();
    if (*touched == 0) {
        auto added =
            sql::change(book.connection(), "INSERT INTO setting (name, value) VALUES (?, ?)", sql::values(key, value));
        if (!added) return added.error();
    }
    return transaction->commit();
}

Result<std::optional<QString>> get_setting(Book& book, const QString& key) {
    return sql::first<QString>(
        book.connection(), "SELECT value FROM setting WHERE name = ?", sql::values(key),
        +[](sql::Row& row) { return row.text(); });
}

Result<QMap<QString, QString>> list_settings(Book& book) {
    auto query = sql::select(book.connection(), "SELECT name, value FROM setting");
    if (!query) return query.error();
    QMap<QString, QString> settings;
    while (query->next()) {
        sql::Row row(*query);
        const QString key = row.text();
        settings.insert(key, row.text());
    }
    if (query->lastError().isValid()) return sql::error_of_reading(query->lastError());
    return settings;
}

Status erase_setting(Book& book, const QString& key) {
    auto touched = sql::change(book.connection(), "DELETE FROM setting WHERE name = ?", sql::values(key));
    if (!touched) return touched.error();
    return Done{};
}

}  // namespace kempt::store
