#include "book/sql.h"

#include <QUuid>

#include "book/dialect.h"
#include "domain/words.h"

namespace kempt::sql {

Result<std::unique_ptr<Connection>> Connection::open(const QString& path, Access access) {
    std::unique_ptr<Connection> connection(new Connection);
    connection->path = path;
    connection->database = QSqlDatabase::addDatabase(dialect::driver(), QUuid::createUuid().toString(QUuid::Id128));
    connection->database.setConnectOptions(dialect::connect_options(access));
    connection->database.setDatabaseName(dialect::database_name(path, access));
    if (!connection->database.open()) return dialect::error_of(connection->database.lastError(), "");
    if (Status settled = dialect::settle(*connection, access); !settled) return settled.error();
    return connection;
}

Connection::~Connection() {
    const QString name = database.connectionName();
    database.close();
    database = QSqlDatabase();
    QSqlDatabase::removeDatabase(name);
}

QVariant bound(const QString& text) {
    return text.isNull() ? QString("") : text;
}
QVariant bound(const QByteArray& bytes) {
    return bytes.isNull() ? QByteArray("") : bytes;
}
QVariant bound(QDate date) {
    return date.toString(Qt::ISODate);
}
QVariant bound(View view) {
    return word_of(view);
}

QDate Row::date() {
    const QDate date = QDate::fromString(text(), Qt::ISODate);
    if (!date.isValid()) mark_broken();
    return date;
}

View Row::view() {
    const std::optional<View> view = view_from_word(text());
    if (!view) mark_broken();
    return view.value_or(View::front_hairline);
}

std::optional<QString> Row::text_or_null() {
    const QVariant value = next();
    return value.isNull() ? std::nullopt : std::optional<QString>(value.toString());
}

std::optional<QDate> Row::date_or_null() {
    const std::optional<QString> word = text_or_null();
    if (!word) return {};
    const QDate date = QDate::fromString(*word, Qt::ISODate);
    if (!date.isValid()) mark_broken();
    return date;
}

std::optional<qint64> Row::number_or_null() {
    const QVariant value = next();
    return value.isNull() ? std::nullopt : std::optional<qint64>(value.toLongLong());
}

std::optional<int> Row::small_or_null() {
    const QVariant value = next();
    return value.isNull() ? std::nullopt : std::optional<int>(value.toInt());
}

std::optional<bool> Row::flag_or_null() {
    const QVariant value = next();
    return value.isNull() ? std::nullopt : std::optional<bool>(value.toInt() != 0);
}

std::optional<double> Row::real_or_null() {
    const QVariant value = next();
    return value.isNull() ? std::nullopt : std::optional<double>(value.toDouble());
}

namespace {

Result<QSqlQuery> run(Connection& connection, const QString& statement, const QVariantList& values,
                      const std::string& kept) {
    if (!connection.in_own_thread())
        return Error{ErrorKind::invalid, "wrong-thread", "The book was used from a thread that did not open it.", kept,
                     "Open the book again in that thread."};
    QSqlQuery query(connection.database);
    query.setForwardOnly(true);
    if (!query.prepare(statement)) return dialect::error_of(query.lastError(), kept);
    for (const QVariant& value : values) query.addBindValue(value);
    if (!query.exec()) return dialect::error_of(query.lastError(), kept);
    return query;
}

}  // namespace

Result<QSqlQuery> select(Connection& connection, const QString& statement, const QVariantList& values) {
    return run(connection, statement, values, "");
}

Result<qint64> change(Connection& connection, const QString& statement, const QVariantList& values) {
    auto query = run(connection, statement, values, nothing_changed);
    if (!query) return query.error();
    return qint64(query->numRowsAffected());
}

Result<Id> insert(Connection& connection, const QString& statement, const QVariantList& values) {
    auto query = run(connection, statement, values, nothing_changed);
    if (!query) return query.error();
    return Id(query->lastInsertId().toLongLong());
}

Error error_of_reading(const QSqlError& error) {
    return dialect::error_of(error, "");
}

Error broken_row() {
    return {ErrorKind::damaged, "book-damaged", "A record in the book holds what Kempt never writes there.", "",
            "Keep the file as it is and bring back the latest backup."};
}

}  // namespace kempt::sql
