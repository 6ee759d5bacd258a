#include "book/service_store.h"

#include "book/store_help.h"

namespace kempt::store {

namespace {

const QString columns = QStringLiteral("id, client, visit, done_on, kind, note");

Service service_of(sql::Row& row) {
    Service service;
    service.id = row.number();
    service.client = row.number();
    service.visit = row.number_or_null();
    service.date = row.date();
    service.kind = row.text();
    service.note = row.text();
    return service;
}

// A visit, when named, is one of the same client.
Status sensible(Book& book, const Service& s, Id client) {
    if (s.kind.trimmed().isEmpty())
        return invalid("service-kind", "The service does not say what was done.", "Choose its kind.");
    if (Status dated = need_date(s.date, "service"); !dated) return dated;
    if (!s.visit) return Done{};
    auto visit = sql::first<qint64>(
        book.connection(), "SELECT id FROM visit WHERE id = ? AND client = ?", sql::values(*s.visit, client),
        +[](sql::Row& row) { return row.number(); });
    if (!visit) return visit.error();
    if (!visit->has_value()) return missing("visit", *s.visit);
    return Done{};
}

}  // namespace

Result<Id> add_service(Book& book, const Service& s) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    if (Status good = sensible(book, s, s.client); !good) return good.error();
    auto id = sql::insert(book.connection(),
                          "INSERT INTO service (client, visit, done_on, kind, note) VALUES (?, ?, ?, ?, ?)",
                          sql::values(s.client, s.visit, s.date, s.kind, s.note));
    if (!id) return told(id.error(), "missing-link", missing("client", s.client));
    if (Status done = transaction->commit(); !done) return done.error();
    return id;
}

Status update_service(Book& book, const Service& s) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    auto before = get_service(book, s.id);
    if (!before) return before.error();
    if (Status good = sensible(book, s, before->client); !good) return good;
    Status done =
        change_one(book, "service", s.id, "UPDATE service SET visit = ?, done_on = ?, kind = ?, note = ? WHERE id = ?",
                   sql::values(s.visit, s.date, s.kind, s.note, s.id));
    if (!done) return done;
    return transaction->commit();
}

Result<Service> get_service(Book& book, Id id) {
    return get_one<Service>(book, "service", id, "SELECT " + columns + " FROM service WHERE id = ?", service_of);
}

Result<QVector<Service>> services_of_client(Book& book, Id client) {
    return sql::all<Service>(book.connection(),
                             "SELECT " + columns + " FROM service WHERE client = ? ORDER BY done_on, id",
                             sql::values(client), service_of);
}

Result<QVector<Service>> services_between(Book& book, QDate from, QDate to) {
    return sql::all<Service>(
        book.connection(),
        "SELECT " + columns + " FROM service WHERE done_on >= ? AND done_on <= ? ORDER BY done_on, id",
        sql::values(from, to), service_of);
}

Result<std::optional<Service>> last_service(Book& book, Id client, const QString& kind) {
    return sql::first<Service>(
        book.connection(),
        "SELECT " + columns + " FROM service WHERE client = ? AND kind = ? ORDER BY done_on DESC, id DESC LIMIT 1",
        sql::values(client, kind), service_of);
}

Status erase_service(Book& book, Id id) {
    return erase_one(book, "service", "service", id);
}

}  // namespace kempt::store
