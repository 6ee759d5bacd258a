#include "book/visit_store.h"

#include "book/store_help.h"

namespace kempt::store {

namespace {

const QString columns = QStringLiteral("id, client, visited_on, wet, styled, product, note");

Visit visit_of(sql::Row& row) {
    Visit visit;
    visit.id = row.number();
    visit.client = row.number();
    visit.date = row.date();
    visit.hair.wet = row.flag();
    visit.hair.styled = row.flag();
    visit.hair.product = row.flag();
    visit.note = row.text();
    return visit;
}

}  // namespace

Result<Id> add_visit(Book& book, const Visit& v) {
    if (Status dated = need_date(v.date, "visit"); !dated) return dated.error();
    auto id =
        sql::insert(book.connection(),
                    "INSERT INTO visit (client, visited_on, wet, styled, product, note) VALUES (?, ?, ?, ?, ?, ?)",
                    sql::values(v.client, v.date, v.hair.wet, v.hair.styled, v.hair.product, v.note));
    if (!id) return told(id.error(), "missing-link", missing("client", v.client));
    return id;
}

Status update_visit(Book& book, const Visit& v) {
    if (Status dated = need_date(v.date, "visit"); !dated) return dated;
    return change_one(book, "visit", v.id,
                      "UPDATE visit SET visited_on = ?, wet = ?, styled = ?, product = ?, note = ? WHERE id = ?",
                      sql::values(v.date, v.hair.wet, v.hair.styled, v.hair.product, v.note, v.id));
}

Result<Visit> get_visit(Book& book, Id id) {
    return get_one<Visit>(book, "visit", id, "SELECT " + columns + " FROM visit WHERE id = ?", visit_of);
}

Result<QVector<Visit>> visits_of_client(Book& book, Id client) {
    return sql::all<Visit>(book.connection(),
                           "SELECT " + columns + " FROM visit WHERE client = ? ORDER BY visited_on, id",
                           sql::values(client), visit_of);
}

Result<QVector<Visit>> visits_between(Book& book, QDate from, QDate to) {
    return sql::all<Visit>(
        book.connection(),
        "SELECT " + columns + " FROM visit WHERE visited_on >= ? AND visited_on <= ? ORDER BY visited_on, id",
        sql::values(from, to), visit_of);
}

Status erase_visit(Book& book, Id id) {
    return erase_one(book, "visit", "visit", id);
}

}  // namespace kempt::store
