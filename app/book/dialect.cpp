#include "book/dialect.h"

#include <QUrl>

#include "domain/clock.h"

namespace kempt::sql::dialect {

namespace {

constexpr int wait_ms = 5000;  // another window saving a 200 MB photo takes seconds, not minutes: common practice
constexpr int page_bytes =
    8192;  // best for large blobs by SQLite's own measurements (sqlite.org/intern-v-extern-blob.html)

Status pragma(Connection& connection, const QString& text) {
    auto query = select(connection, "PRAGMA " + text);
    if (!query) return query.error();
    while (query->next()) {
    }
    return Done{};
}

QString text_of(Row& row) {
    return row.text();
}

}  // namespace

QString driver() {
    return QStringLiteral("QSQLITE");
}

QString connect_options(Access access) {
    const QString wait = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(wait_ms);
    return access == Access::frozen ? wait + ";QSQLITE_OPEN_READONLY;QSQLITE_OPEN_URI" : wait;
}

QString database_name(const QString& path, Access access) {
    if (access != Access::frozen) return path;
    return QString::fromLatin1(QUrl::fromLocalFile(path).toEncoded(QUrl::FullyEncoded)) + "?immutable=1";
}

Status settle(Connection& connection, Access access) {
    QStringList pragmas{"foreign_keys=ON", "trusted_schema=OFF", "cell_size_check=ON", "temp_store=MEMORY"};
    if (access == Access::make) pragmas << QStringLiteral("page_size=%1").arg(page_bytes);
    // WAL: readers go on while a photo is stored. FULL: what was committed survives a power cut.
    // secure_delete: erased records are overwritten with zeros.
    if (access != Access::frozen)
        pragmas << "secure_delete=ON"
                << "journal_mode=WAL"
                << "synchronous=FULL";
    for (const QString& text : pragmas)
        if (Status done = pragma(connection, text); !done) return done.error();
    return Done{};
}

QString spelled(QString step) {
    // AUTOINCREMENT: the number of an erased client is never given to another, as with a PostgreSQL identity.
    return step.replace("{identity}", "INTEGER PRIMARY KEY AUTOINCREMENT")
        .replace("{blob}", "BLOB")
        .replace("{today}", Clock().today().toString(Qt::ISODate));
}

Result<int> version(Connection& connection) {
    auto text = first<QString>(connection, "PRAGMA user_version", {}, text_of);
    if (!text) return text.error();
    return text->value_or("0").toInt();
}

Status stamp(Connection& connection, int version) {
    if (Status done = pragma(connection, QStringLiteral("application_id=%1").arg(application_id)); !done) return done;
    return pragma(connection, QStringLiteral("user_version=%1").arg(version));
}

Status enforce_links(Connection& connection, bool on) {
    return pragma(connection, on ? QStringLiteral("foreign_keys=ON") : QStringLiteral("foreign_keys=OFF"));
}

// The writer's lock is taken at the start: a transaction that reads first cannot fail half-way for want of it.
QString begin_writing() {
    return QStringLiteral("BEGIN IMMEDIATE");
}

Result<QStringList> structure_problems(Connection& connection) {
    auto lines = all<QString>(connection, "PRAGMA integrity_check", {}, text_of);
    if (!lines) return lines.error();
    QStringList problems;
    for (const QString& line : *lines)
        if (line != "ok") problems << "The book's file is damaged: " + line + ".";
    return problems;
}

Result<QStringList> link_problems(Connection& connection) {
    auto lines = all<QString>(
        connection, "PRAGMA foreign_key_check", {}, +[](Row& row) {
            const QString table = row.text();
            const std::optional<qint64> id = row.number_or_null();
            return QStringLiteral("Record %1 of %2 points at a record of %3 that is not there.")
                .arg(id.value_or(0))
                .arg(table, row.text());
        });
    if (!lines) return lines.error();
    return QStringList(*lines);
}

Status copy_into(Connection& connection, const QString& path) {
    auto copied = change(connection, "VACUUM INTO ?", values(path));
    if (!copied) return copied.error();
    return Done{};
}

Status clear_log(Connection& connection) {
    auto blocked = first<int>(
        connection, "PRAGMA wal_checkpoint(TRUNCATE)", {}, +[](Row& row) { return row.small(); });
    if (!blocked) return blocked.error();
    if (blocked->value_or(0) != 0)
        return Error{ErrorKind::busy, "book-busy", "Another window is reading the book.", "",
                     "It is cleared as soon as nobody reads."};
    return Done{};
}

Status fold_to_one_file(Connection& connection) {
    return pragma(connection, "journal_mode=DELETE");
}

QStringList side_files(const QString& path) {
    return {path + "-wal", path + "-shm", path + "-journal"};
}

Error error_of(const QSqlError& error, const std::string& kept) {
    const std::string detail = error.databaseText().toStdString();
    const int code = error.nativeErrorCode().toInt() & 0xFF;  // the primary code: sqlite.org/rescode.html
    switch (code) {
        case 5:
        case 6:
            return {ErrorKind::busy, "book-busy", "Another program or window is writing in the book.", kept,
                    "Try again in a moment."};
        case 8:
            return {ErrorKind::io, "book-write-protected", "The book can be read but not written.", kept,
                    "Take away the write protection of the file and its folder, or copy the book to another place."};
        case 10:
            return {ErrorKind::io, "disk-trouble", "The disk could not be read or written (" + detail + ").", kept,
                    "Check the disk, its connection and the free space."};
        case 13:
            return {ErrorKind::io, "disk-full", "There is no room left for the book.", kept,
                    "Make room on the disk and try again."};
        case 14:
            return {ErrorKind::io, "book-cannot-open", "The book could not be opened (" + detail + ").", kept,
                    "Check that the file and its folder may be read and written."};
        case 11:
        case 26:
            return {ErrorKind::damaged, "book-damaged", "The book's file is damaged (" + detail + ").", kept,
                    "Keep the file as it is and bring back the latest backup."};
        case 19: {
            const QString text = error.databaseText();
            const std::string kind = text.contains("UNIQUE")        ? "already-there"
                                     : text.contains("FOREIGN KEY") ? "missing-link"
                                                                    : "out-of-range";
            return {ErrorKind::invalid, kind, "The book does not take this entry (" + detail + ").", kept,
                    "Correct the entry."};
        }
        default:
            return {ErrorKind::io, "database-trouble", "The database could not do its work (" + detail + ").", kept,
                    "Try again; if it stays, check the book."};
    }
}

}  // namespace kempt::sql::dialect
