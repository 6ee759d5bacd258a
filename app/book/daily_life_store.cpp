// Daily life with its heat tools; declared in profile_store.h.
#include "book/profile_store.h"
#include "book/store_help.h"

namespace kempt::store {

namespace {

// As care::checked.
Status sensible(const DailyLife& d) {
    constexpr double day_minutes = 24 * 60, most_a_week = 100, most_weeks = 5000, hottest_c = 1000, most_uses = 1000;
    for (const Status& status :
         {need_date(d.date, "daily life"), need_up_to(d.minutes_a_day, day_minutes, "minutes a day"),
          need_up_to(d.swims_a_week, most_a_week, "times a week that she swims"),
          need_up_to(d.washes_a_week, most_a_week, "washes a week"),
          need_up_to(d.style_weeks, most_weeks, "weeks of a style")})
        if (!status) return status;
    for (const HeatTool& tool : d.heat.value_or(QVector<HeatTool>())) {
        if (tool.name.trimmed().isEmpty())
            return invalid("heat-tool-name", "A heat tool has no name.", "Name it, or leave it out.");
        if (Status hot = need_up_to(tool.temperature_c, hottest_c, "temperature of a heat tool"); !hot) return hot;
        if (Status times = need_up_to(tool.times_a_week, most_uses, "uses of a heat tool a week"); !times) return times;
    }
    return Done{};
}

DailyLife life_from(sql::Row& row) {
    DailyLife d;
    d.id = row.number();
    d.client = row.number();
    d.date = row.date();
    d.minutes_a_day = row.real_or_null();
    if (row.flag()) d.heat.emplace();
    d.swims_a_week = row.real_or_null();
    d.washes_a_week = row.real_or_null();
    d.hard_water = row.flag_or_null();
    d.covers_hair = row.flag_or_null();
    d.tight_headwear = row.flag_or_null();
    d.covers_at_night = row.flag_or_null();
    d.tight_styles = row.flag_or_null();
    d.style_hurts = row.flag_or_null();
    d.added_hair = row.flag_or_null();
    d.style_weeks = row.real_or_null();
    return d;
}

HeatTool tool_from(sql::Row& row) {
    HeatTool tool;
    tool.name = row.text();
    tool.temperature_c = row.real_or_null();
    tool.times_a_week = row.real();
    tool.on_wet_hair = row.flag_or_null();
    return tool;
}

}  // namespace

Result<Id> put_daily_life(Book& book, const DailyLife& d) {
    if (Status good = sensible(d); !good) return good.error();
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    sql::Connection& connection = book.connection();
    if (auto gone = sql::change(connection, "DELETE FROM daily_life WHERE client = ? AND told_on = ?",
                                sql::values(d.client, d.date));
        !gone)
        return gone.error();
    auto id = sql::insert(
        connection,
        "INSERT INTO daily_life (client, told_on, minutes_a_day, heat_asked, swims_a_week, washes_a_week, hard_water, "
        "covers_hair, tight_headwear, covers_at_night, tight_styles, style_hurts, added_hair, style_weeks) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        sql::values(d.client, d.date, d.minutes_a_day, d.heat.has_value(), d.swims_a_week, d.washes_a_week,
                    d.hard_water, d.covers_hair, d.tight_headwear, d.covers_at_night, d.tight_styles, d.style_hurts,
                    d.added_hair, d.style_weeks));
    if (!id) return told(id.error(), "missing-link", missing("client", d.client));
    for (const HeatTool& tool : d.heat.value_or(QVector<HeatTool>())) {
        auto kept = sql::insert(
            connection,
            "INSERT INTO heat_tool (daily_life, name, temperature_c, times_a_week, on_wet_hair) VALUES (?, ?, ?, ?, ?)",
            sql::values(*id, tool.name, tool.temperature_c, tool.times_a_week, tool.on_wet_hair));
        if (!kept) return kept.error();
    }
    if (Status done = transaction->commit(); !done) return done.error();
    return id;
}

Result<QVector<DailyLife>> daily_life_of_client(Book& book, Id client) {
    auto lives = sql::all<DailyLife>(
        book.connection(),
        "SELECT id, client, told_on, minutes_a_day, heat_asked, swims_a_week, washes_a_week, hard_water, covers_hair, "
        "tight_headwear, covers_at_night, tight_styles, style_hurts, added_hair, style_weeks FROM daily_life "
        "WHERE client = ? ORDER BY told_on",
        sql::values(client), life_from);
    if (!lives) return lives.error();
    for (DailyLife& life : *lives) {
        if (!life.heat) continue;
        auto tools = sql::all<HeatTool>(
            book.connection(),
            "SELECT name, temperature_c, times_a_week, on_wet_hair FROM heat_tool WHERE daily_life = ? ORDER BY id",
            sql::values(life.id), tool_from);
        if (!tools) return tools.error();
        life.heat = std::move(tools).value();
    }
    return lives;
}

Status erase_daily_life(Book& book, Id id) {
    return erase_one(book, "daily life", "daily_life", id);
}

}  // namespace kempt::store
