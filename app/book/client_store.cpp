#include "book/client_store.h"

#include "book/dialect.h"
#include "book/fold.h"
#include "book/store_help.h"

namespace kempt::store {

namespace {

Status sensible(const Client& client) {
    bool letter = false;
    for (const QChar c : client.name) letter = letter || c.isLetterOrNumber() || c.isSurrogate();
    if (!letter || sql::folded(client.name).isEmpty())
        return invalid("name-missing", "The client has no name.", "Give a name with at least one letter.");
    if (Status dated = need_date(client.since, "client's first day"); !dated) return dated;
    if (client.consent_on) return need_date(*client.consent_on, "photo consent");
    return Done{};
}

Client client_of(sql::Row& row) {
    Client client;
    client.id = row.number();
    client.name = row.text();
    client.note = row.text();
    client.since = row.date();
    client.photo_consent = row.flag();
    client.consent_on = row.date_or_null();
    return client;
}

ClientRow row_of(sql::Row& row) {
    ClientRow listed;
    listed.client = client_of(row);
    listed.last_visit = row.date_or_null();
    listed.visits = row.small();
    listed.photos = row.small();
    return listed;
}

const QString columns = QStringLiteral("c.id, c.name, c.note, c.since, c.photo_consent, c.consent_on");

}  // namespace

Result<Id> add_client(Book& book, const Client& c) {
    if (Status good = sensible(c); !good) return good.error();
    return sql::insert(book.connection(),
                       "INSERT INTO client (name, folded_name, note, since, photo_consent, consent_on) "
                       "VALUES (?, ?, ?, ?, ?, ?)",
                       sql::values(c.name, sql::folded(c.name), c.note, c.since, c.photo_consent, c.consent_on));
}

Status update_client(Book& book, const Client& c) {
    if (Status good = sensible(c); !good) return good;
    return change_one(book, "client", c.id,
                      "UPDATE client SET name = ?, folded_name = ?, note = ?, since = ?, photo_consent = ?, consent_on "
                      "= ? WHERE id = ?",
                      sql::values(c.name, sql::folded(c.name), c.note, c.since, c.photo_consent, c.consent_on, c.id));
}

Result<Client> get_client(Book& book, Id id) {
    return get_one<Client>(book, "client", id, "SELECT " + columns + " FROM client c WHERE c.id = ?", client_of);
}

Result<QVector<ClientRow>> list_clients(Book& book, const QString& letters) {
    QString statement = "SELECT " + columns +
                        ", (SELECT MAX(v.visited_on) FROM visit v WHERE v.client = c.id)"
                        ", (SELECT COUNT(*) FROM visit v WHERE v.client = c.id)"
                        ", (SELECT COUNT(*) FROM photo p JOIN visit v ON v.id = p.visit WHERE v.client = c.id)"
                        " FROM client c";
    QVariantList values;
    for (const QString& pattern : sql::patterns_of(letters)) {
        statement += values.isEmpty() ? " WHERE " : " AND ";
        statement += "c.folded_name LIKE ? ESCAPE '!'";
        values << pattern;
    }
    return sql::all<ClientRow>(book.connection(), statement + " ORDER BY c.folded_name, c.id", values, row_of);
}

Status erase_client(Book& book, Id id) {
    return erase_one(book, "client", "client", id);
}

Status scrub(Book& book) {
    return sql::dialect::clear_log(book.connection());
}

}  // namespace kempt::store
