#include "book/due_store.h"

#include "book/store_help.h"

namespace kempt::store {

namespace {

ClientProfile profile_from(sql::Row& row) {
    ClientProfile p;
    p.client = row.number();
    p.born = row.date_or_null();
    p.age_years = row.real_or_null();
    p.age_on = row.date_or_null();
    p.length_mm = row.real_or_null();
    p.length_on = row.date_or_null();
    p.texture = row.text();
    p.hair_group = row.text();
    p.whole_history = row.flag();
    p.history_from = row.date_or_null();
    return p;
}

HeatTold heat_from(sql::Row& row) {
    HeatTold heat;
    heat.client = row.number();
    heat.date = row.date();
    heat.asked = row.flag();
    heat.tools = row.small();
    return heat;
}

ClientGrade grade_from(sql::Row& row) {
    ClientGrade grade;
    grade.client = row.number();
    grade.dated.date = row.date();
    grade.dated.grade.id = row.number();
    grade.dated.grade.visit = row.number();
    grade.dated.grade.zone = row.text();
    grade.dated.grade.quality = row.text();
    grade.dated.grade.value = row.small();
    grade.dated.grade.round = row.small();
    return grade;
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

Result<QVector<ClientProfile>> all_profiles(Book& book) {
    return sql::all<ClientProfile>(
        book.connection(),
        "SELECT client, born, age_years, age_on, length_mm, length_on, texture, hair_group, whole_history, "
        "history_from FROM client_profile ORDER BY client",
        {}, profile_from);
}

Result<QVector<HeatTold>> heat_told(Book& book, QDate until) {
    return sql::all<HeatTold>(
        book.connection(),
        "SELECT d.client, d.told_on, d.heat_asked, (SELECT COUNT(*) FROM heat_tool h WHERE h.daily_life = d.id) "
        "FROM daily_life d JOIN (SELECT client, MAX(told_on) AS newest FROM daily_life WHERE told_on <= ? GROUP BY "
        "client) n ON n.client = d.client AND n.newest = d.told_on ORDER BY d.client",
        sql::values(until), heat_from);
}

Result<QVector<ClientGrade>> grades_between(Book& book, QDate from, QDate to) {
    return sql::all<ClientGrade>(
        book.connection(),
        "SELECT v.client, v.visited_on, g.id, g.visit, g.zone, g.quality, g.value, g.round FROM grade g JOIN visit v "
        "ON v.id = g.visit WHERE v.visited_on >= ? AND v.visited_on <= ? AND g.quality IN ('breakage', 'porosity', "
        "'elasticity') ORDER BY v.client, v.visited_on, v.id, g.zone, g.quality, g.round",
        sql::values(from, to), grade_from);
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
