#include "book/due_store.h"

#include "book/store_help.h"

namespace kempt::store {

namespace {

HeatTold heat_from(sql::Row& row) {
    HeatTold heat;
    heat.client = row.number();
    heat.date = row.date();
    heat.asked = row.flag();
    heat.tools = row.small();
    return heat;
}

struct Photographed {
    Id client = 0;
    QDate date;
};

Photographed photographed_from(sql::Row& row) {
    Photographed one;
    one.client = row.number();
    one.date = row.date();
    return one;
}

}  // namespace

Result<QVector<HeatTold>> heat_told(Book& book, QDate until) {
    return sql::all<HeatTold>(
        book.connection(),
        "SELECT d.client, d.told_on, d.heat_asked, (SELECT COUNT(*) FROM heat_tool h WHERE h.daily_life = d.id) "
        "FROM daily_life d JOIN (SELECT client, MAX(told_on) AS newest FROM daily_life WHERE told_on <= ? GROUP BY "
        "client) n ON n.client = d.client AND n.newest = d.told_on ORDER BY d.client",
        sql::values(until), heat_from);
}

Result<QHash<Id, QDate>> last_photographed(Book& book, QDate until) {
    const auto all = sql::all<Photographed>(
        book.connection(),
        "SELECT v.client, MAX(v.visited_on) FROM visit v WHERE v.visited_on <= ? AND EXISTS (SELECT 1 FROM photo p "
        "WHERE p.visit = v.id) GROUP BY v.client",
        sql::values(until), photographed_from);
    if (!all) return all.error();
    QHash<Id, QDate> last;
    for (const Photographed& one : all.value()) last[one.client] = one.date;
    return last;
}

}  // namespace kempt::store
