// All that is peculiar to the database behind the book: SQLite here. The stores know nothing of it.
#pragma once

#include <QSqlError>
#include <QString>
#include <QStringList>

#include "book/sql.h"
#include "core/result.h"

namespace kempt::sql::dialect {

inline constexpr quint32 application_id = 0x4B6D7074;  // "Kmpt" in the file's header: our own number

[[nodiscard]] QString driver();
[[nodiscard]] QString connect_options(Access access);
[[nodiscard]] QString database_name(const QString& path, Access access);
// Durability, links between records, erasing for good, waiting for others: for each connection anew.
[[nodiscard]] Status settle(Connection& connection, Access access);

// A schema step with {identity}, {blob} and {today} (the day of the upgrade, 2026-03-14) put in.
[[nodiscard]] QString spelled(QString step);

[[nodiscard]] Result<int> version(Connection& connection);
[[nodiscard]] Status stamp(Connection& connection, int version);      // inside a transaction: goes with it
[[nodiscard]] Status enforce_links(Connection& connection, bool on);  // only outside a transaction
[[nodiscard]] QString begin_writing();

[[nodiscard]] Result<QStringList> structure_problems(Connection& connection);
[[nodiscard]] Result<QStringList> link_problems(Connection& connection);

[[nodiscard]] Status copy_into(Connection& connection, const QString& path);  // a compact copy in a new file
[[nodiscard]] Status clear_log(Connection& connection);  // everything into the main file, write-ahead file emptied
[[nodiscard]] Status fold_to_one_file(Connection& connection);  // busy when any other connection is open
[[nodiscard]] QStringList side_files(const QString& path);      // that may stand beside the main file

// code: "book-busy", "book-damaged", "disk-full", "book-write-protected", "disk-trouble", "already-there" (unique),
// "missing-link" (foreign key), "out-of-range" (check), "database-trouble".
[[nodiscard]] Error error_of(const QSqlError& error, const std::string& kept);

}  // namespace kempt::sql::dialect
