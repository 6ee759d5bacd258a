// How the files of this room talk to the database: one connection, values in, rows out, errors as values.
// Not for other rooms.
#pragma once

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QThread>
#include <QVariant>
#include <QVector>
#include <cmath>
#include <optional>
#include <utility>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::sql {

inline constexpr const char* nothing_changed = "Nothing in the book was changed.";

enum class Access {
    write,  // an existing file
    make,   // a new file
    frozen  // read only, and nobody else may be writing: takes no locks and leaves no trace
};

class Connection {
  public:
    // Opens and settles a uniquely named connection for the calling thread. path is absolute.
    static Result<std::unique_ptr<Connection>> open(const QString& path, Access access);
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;
    ~Connection();

    QSqlDatabase database;
    QString path;
    int depth = 0;  // of open transactions

    [[nodiscard]] bool in_own_thread() const { return thread_ == QThread::currentThread(); }

  private:
    Connection() = default;
    QThread* thread_ = QThread::currentThread();
};

// What one database value becomes; null text and bytes are kept as empty ones, an empty optional as NULL.
QVariant bound(const QString& text);
QVariant bound(const QByteArray& bytes);
QVariant bound(QDate date);
QVariant bound(View view);
inline QVariant bound(const char* text) {
    return bound(QString::fromUtf8(text));
}
inline QVariant bound(bool flag) {
    return flag ? 1 : 0;
}
inline QVariant bound(int number) {
    return number;
}
inline QVariant bound(qint64 number) {
    return number;
}
inline QVariant bound(double number) {
    return number;
}
template <class T>
QVariant bound(const std::optional<T>& value) {
    return value ? bound(*value) : QVariant();
}
template <class... A>
QVariantList values(const A&... a) {
    return {bound(a)...};
}

// Reads the columns of a row from left to right. A column that holds what it should not sets broken().
class Row {
  public:
    explicit Row(const QSqlQuery& query) : query_(query) {}
    qint64 number() { return next().toLongLong(); }
    int small() { return next().toInt(); }
    bool flag() { return next().toInt() != 0; }
    double real() { return next().toDouble(); }
    QString text() { return next().toString(); }
    QByteArray bytes() { return next().toByteArray(); }
    QDate date();
    View view();
    std::optional<QDate> date_or_null();
    std::optional<qint64> number_or_null();
    std::optional<int> small_or_null();
    std::optional<bool> flag_or_null();
    std::optional<double> real_or_null();
    std::optional<QString> text_or_null();
    void mark_broken() { broken_ = true; }
    [[nodiscard]] bool broken() const { return broken_; }

  private:
    QVariant next() { return query_.value(column_++); }
    const QSqlQuery& query_;
    int column_ = 0;
    bool broken_ = false;
};

// A statement that gives rows, already executed.
Result<QSqlQuery> select(Connection& connection, const QString& statement, const QVariantList& values = {});
// A statement that changes rows; gives how many.
Result<qint64> change(Connection& connection, const QString& statement, const QVariantList& values = {});
// An INSERT; gives the new id.
Result<Id> insert(Connection& connection, const QString& statement, const QVariantList& values);
Error error_of_reading(const QSqlError& error);
Error broken_row();

// Hands each row to `take` as it is read; a broken one ends it with an error.
template <class T, class Take>
Status each(Connection& connection, const QString& statement, const QVariantList& values, T (*read)(Row&),
            const Take& take) {
    auto query = select(connection, statement, values);
    if (!query) return query.error();
    while (query->next()) {
        Row row(*query);
        T one = read(row);
        if (row.broken()) return broken_row();
        take(std::move(one));
    }
    if (query->lastError().isValid()) return error_of_reading(query->lastError());
    return Done{};
}

template <class T>
Result<QVector<T>> all(Connection& connection, const QString& statement, const QVariantList& values, T (*read)(Row&)) {
    QVector<T> list;
    const Status read_through =
        each(connection, statement, values, read, [&](T&& one) { list.append(std::move(one)); });
    if (!read_through) return read_through.error();
    return list;
}

template <class T>
Result<std::optional<T>> first(Connection& connection, const QString& statement, const QVariantList& values,
                               T (*read)(Row&)) {
    auto list = all(connection, statement, values, read);
    if (!list) return list.error();
    return list->isEmpty() ? std::optional<T>() : std::optional<T>(list->first());
}

}  // namespace kempt::sql
