#include "work/care_state_json.h"

#include <QJsonDocument>
#include <map>

#include "work/care_put.h"
#include "work/care_state.h"
#include "work/plan_reader.h"

namespace kempt::work {

namespace {

using care::Answers;
using care::ClientState;

QString text(std::string_view words) {
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

QString day(care::Day day) {
    return date_of(day).toString(Qt::ISODate);
}

template <class T>
QJsonValue maybe(const std::optional<T>& value) {
    return value ? QJsonValue(*value) : QJsonValue(QJsonValue::Null);
}
QJsonValue maybe(const std::string& words) {
    return words.empty() ? QJsonValue(QJsonValue::Null) : QJsonValue(text(words));
}
QJsonValue maybe(const std::optional<care::TestResult>& result) {
    if (!result) return QJsonValue::Null;
    return *result == care::TestResult::passed ? QStringLiteral("passed") : QStringLiteral("failed");
}

constexpr std::pair<care::Direction, const char*> verdict_words[] = {
    {care::Direction::improved, "improved"},
    {care::Direction::worse, "worse"},
    {care::Direction::no_detectable_change, "no detectable change"},
    {care::Direction::not_comparable, "not comparable"}};
constexpr std::pair<care::HairGroup, const char*> group_words[] = {{care::HairGroup::african, "african"},
                                                                   {care::HairGroup::asian, "asian"},
                                                                   {care::HairGroup::caucasian, "caucasian"}};

using Flag = std::optional<bool> care::DailyLife::*;
constexpr std::pair<const char*, Flag> day_flags[] = {
    {"hard_water", &care::DailyLife::hard_water},         {"covers_hair", &care::DailyLife::covers_hair},
    {"tight_headwear", &care::DailyLife::tight_headwear}, {"covers_at_night", &care::DailyLife::covers_at_night},
    {"tight_styles", &care::DailyLife::tight_styles},     {"style_hurts", &care::DailyLife::style_hurts},
    {"added_hair", &care::DailyLife::added_hair}};
using Amount = std::optional<double> care::DailyLife::*;
constexpr std::pair<const char*, Amount> day_amounts[] = {{"minutes_a_day", &care::DailyLife::minutes_a_day},
                                                          {"swims_a_week", &care::DailyLife::swims_a_week},
                                                          {"washes_a_week", &care::DailyLife::washes_a_week},
                                                          {"style_weeks", &care::DailyLife::style_weeks}};

QJsonObject json_of(const care::PastService& s) {
    QJsonArray sections;
    for (const std::string& section : s.sections) sections.append(text(section));
    QJsonValue line(QJsonValue::Null);
    if (s.line_mm)
        line = QJsonObject{{"mm", s.line_mm->value},
                           {"low", s.line_mm->low},
                           {"high", s.line_mm->high},
                           {"on", day(s.line_day)},
                           {"by_tape", s.line_by_tape}};
    return {{"kind", text(word_of(s.kind))},
            {"date", day(s.day)},
            {"from_mm", s.from_mm},
            {"to_mm", maybe(s.to_mm)},
            {"sections", sections},
            {"strength", s.strength ? QJsonValue(text(word_of(*s.strength))) : QJsonValue::Null},
            {"minutes", maybe(s.minutes)},
            {"temperature_c", maybe(s.temperature_c)},
            {"passes", maybe(s.passes)},
            {"strand_test", maybe(s.strand_test)},
            {"patch_test", maybe(s.patch_test)},
            {"patch_test_on", s.patch_test_day ? QJsonValue(day(*s.patch_test_day)) : QJsonValue::Null},
            {"result", maybe(s.result)},
            {"reaction", maybe(s.reaction)},
            {"at_home", maybe(s.at_home)},
            {"line", line},
            {"state", s.unsure ? QStringLiteral("perhaps") : QStringLiteral("done")}};
}

QJsonObject json_of(const care::DailyLife& d) {
    QJsonObject json;
    for (const auto& [name, member] : day_amounts) json[QLatin1String(name)] = maybe(d.*member);
    for (const auto& [name, member] : day_flags) json[QLatin1String(name)] = maybe(d.*member);
    QJsonValue heat(QJsonValue::Null);
    if (d.heat) {
        QJsonArray tools;
        for (const care::HeatTool& tool : *d.heat)
            tools.append(QJsonObject{{"name", text(tool.name)},
                                     {"temperature_c", maybe(tool.temperature_c)},
                                     {"times_a_week", tool.times_a_week},
                                     {"on_wet_hair", maybe(tool.on_wet_hair)}});
        heat = tools;
    }
    json["heat"] = heat;
    return json;
}

// A day that has to be there.
care::Day needed_day(Reader& reader, const char* name) {
    std::optional<QDate> date;
    reader.read(name, date);
    if (!date) reader.fail(QString::fromLatin1(name), QStringLiteral("is missing"));
    return date ? care_day(*date) : 0;
}

// A word of a list, or nothing.
template <class T, std::size_t n>
std::optional<T> one_of(Reader& reader, const char* name, const std::pair<T, const char*> (&words)[n]) {
    const QString word = reader.word(name);
    if (word.isEmpty()) return std::nullopt;
    for (const auto& [value, known] : words)
        if (word == QLatin1String(known)) return value;
    reader.fail(QString::fromLatin1(name), QStringLiteral("is no known word: '%1'").arg(word));
    return std::nullopt;
}

care::PastService service_of(const QJsonObject& json, std::optional<Error>& problem) {
    const QString where = QStringLiteral("services.");
    care::PastService s;
    Reader reader(json, where, problem);
    const QString word = reader.word("kind");
    if (const auto kind = care::kind_from_word(word.toStdString()))
        s.kind = *kind;
    else
        reader.fail(QStringLiteral("kind"), QStringLiteral("is no known kind of service: '%1'").arg(word));
    s.day = needed_day(reader, "date");
    reader.read("from_mm", s.from_mm);
    reader.read("to_mm", s.to_mm);
    reader.read_sections("sections", s.sections);
    reader.read("strength", s.strength);
    reader.read("minutes", s.minutes);
    reader.read("temperature_c", s.temperature_c);
    reader.read("passes", s.passes);
    reader.read("strand_test", s.strand_test);
    reader.read("patch_test", s.patch_test);
    std::optional<QDate> put_on;
    reader.read("patch_test_on", put_on);
    if (put_on) s.patch_test_day = care_day(*put_on);
    reader.read("result", s.result);
    reader.read("reaction", s.reaction);
    reader.read("at_home", s.at_home);
    if (const auto line = reader.object("line")) {
        Reader within(*line, where + QStringLiteral("line."), problem);
        care::GrowthRange mm;
        within.read("mm", mm.value);
        mm.low = mm.high = mm.value;
        within.read("low", mm.low);
        within.read("high", mm.high);
        s.line_mm = mm;
        s.line_day = needed_day(within, "on");
        within.read("by_tape", s.line_by_tape);
    }
    const QString state = reader.word("state");
    if (!state.isEmpty() && state != u"done" && state != u"perhaps")
        reader.fail(QStringLiteral("state"), QStringLiteral("is neither \"done\" nor \"perhaps\""));
    s.unsure = state == u"perhaps";
    return s;
}

void read_daily(const QJsonObject& json, care::DailyLife& daily, std::optional<Error>& problem) {
    Reader reader(json, QStringLiteral("daily."), problem);
    for (const auto& [name, member] : day_amounts) reader.read(name, daily.*member);
    for (const auto& [name, member] : day_flags) reader.read(name, daily.*member);
    if (!json["heat"].isArray()) {
        (void)reader.list("heat");  // null: not asked
        return;
    }
    daily.heat.emplace();
    for (const QJsonValue& value : reader.list("heat")) {
        care::HeatTool tool;
        Reader within(reader.object(value, QStringLiteral("heat")), QStringLiteral("daily.heat."), problem);
        within.read("name", tool.name);
        within.read("temperature_c", tool.temperature_c);
        within.read("times_a_week", tool.times_a_week);
        within.read("on_wet_hair", tool.on_wet_hair);
        daily.heat->push_back(tool);
    }
}

void read_state(Reader& reader, ClientState& state, std::optional<Error>& problem) {
    std::optional<QDate> today;
    reader.read("today", today);
    if (today) state.today = care_day(*today);
    reader.read("age_years", state.age_years);
    reader.read("length_mm", state.length_mm);
    const QString texture = reader.word("texture");
    for (const auto one : {care::Texture::fine, care::Texture::medium, care::Texture::coarse})
        if (texture.toStdString() == word_of(one)) state.texture = one;
    if (!texture.isEmpty() && !state.texture)
        reader.fail(QStringLiteral("texture"), QStringLiteral("is no known word: '%1'").arg(texture));
    state.group = one_of(reader, "hair_group", group_words).value_or(care::HairGroup::unknown);
    if (const auto rate = reader.object("own_rate")) {
        Reader within(*rate, QStringLiteral("own_rate."), problem);
        care::GrowthRate own;
        within.read("um_per_day", own.um_per_day);
        within.read("sd_um_per_day", own.sd_um_per_day);
        within.read("source", own.source);
        state.own_rate = own;
    }
    reader.read("pull_test_hairs", state.pull_test_hairs);
    reader.read("comb_count", state.comb_count);
    for (const QJsonValue& value : reader.list("grades")) {
        care::Graded grade;
        Reader within(reader.object(value, QStringLiteral("grades")), QStringLiteral("grades."), problem);
        within.read("quality", grade.quality);
        const QString zone = within.word("zone");
        const auto known = grade_zone_from_word(zone);
        if (!zone.isEmpty() && !known)
            within.fail(QStringLiteral("zone"),
                        QStringLiteral("is none of: ") + grade_zones().join(QStringLiteral(", ")));
        if (known && *known != u"whole head") grade.zone = known->toStdString();
        within.read("value", grade.value);
        state.grades.push_back(grade);
    }
    for (const QJsonValue& value : reader.list("readings")) {
        care::Measured reading;
        Reader within(reader.object(value, QStringLiteral("readings")), QStringLiteral("readings."), problem);
        within.read("name", reading.name);
        within.read("zone", reading.zone);
        within.read("value", reading.value);
        reading.low = reading.high = reading.value;
        within.read("low", reading.low);
        within.read("high", reading.high);
        reading.verdict = one_of(within, "verdict", verdict_words);
        state.readings.push_back(reading);
    }
    for (const QJsonValue& value : reader.list("services"))
        state.history.services.push_back(service_of(reader.object(value, QStringLiteral("services")), problem));
    const QString from = reader.word("record_from");
    const QDate since = QDate::fromString(from, Qt::ISODate);
    if (from == u"whole")
        state.history.complete_since = care::whole_life;
    else if (since.isValid())
        state.history.complete_since = care_day(since);
    else if (!from.isEmpty())
        reader.fail(QStringLiteral("record_from"), QStringLiteral("is neither \"whole\" nor a day like 2026-03-14"));
    if (const auto daily = reader.object("daily")) read_daily(*daily, state.daily, problem);
    if (const auto answers = reader.object("answers")) {
        Reader within(*answers, QStringLiteral("answers."), problem);
        for (const auto& [name, member] : answer_members()) within.read(qPrintable(name), state.answers.*member);
    }
}

}  // namespace

QJsonObject json_of_state(const ClientState& state) {
    QJsonArray grades, readings, services;
    for (const care::Graded& grade : state.grades)
        grades.append(
            QJsonObject{{"quality", text(grade.quality)}, {"zone", maybe(grade.zone)}, {"value", grade.value}});
    for (const care::Measured& reading : state.readings) {
        QJsonValue verdict(QJsonValue::Null);
        for (const auto& [value, word] : verdict_words)
            if (reading.verdict == value) verdict = QLatin1String(word);
        readings.append(QJsonObject{{"name", text(reading.name)},
                                    {"zone", maybe(reading.zone)},
                                    {"value", reading.value},
                                    {"low", reading.low},
                                    {"high", reading.high},
                                    {"verdict", verdict}});
    }
    for (const care::PastService& service : state.history.services) services.append(json_of(service));
    QJsonObject answers;
    for (const auto& [name, member] : answer_members()) answers[name] = maybe(state.answers.*member);
    QJsonValue group(QJsonValue::Null), rate(QJsonValue::Null), from(QJsonValue::Null);
    for (const auto& [value, word] : group_words)
        if (state.group == value) group = QLatin1String(word);
    if (state.own_rate)
        rate = QJsonObject{{"um_per_day", state.own_rate->um_per_day},
                           {"sd_um_per_day", state.own_rate->sd_um_per_day},
                           {"source", text(state.own_rate->source)}};
    if (const auto& since = state.history.complete_since)
        from = *since <= care::whole_life ? QStringLiteral("whole") : day(*since);
    return {{"today", day(state.today)},
            {"age_years", maybe(state.age_years)},
            {"length_mm", maybe(state.length_mm)},
            {"texture", state.texture ? QJsonValue(text(word_of(*state.texture))) : QJsonValue::Null},
            {"hair_group", group},
            {"own_rate", rate},
            {"pull_test_hairs", maybe(state.pull_test_hairs)},
            {"comb_count", maybe(state.comb_count)},
            {"grades", grades},
            {"readings", readings},
            {"services", services},
            {"record_from", from},
            {"daily", json_of(state.daily)},
            {"answers", answers}};
}

Result<ClientState> state_from_json(const QByteArray& json, care::Day today) {
    QJsonParseError parsing;
    const QJsonDocument document = QJsonDocument::fromJson(json, &parsing);
    if (parsing.error != QJsonParseError::NoError || !document.isObject())
        return invalid("state-no-json",
                       QStringLiteral("The state is no JSON object (%1).").arg(parsing.errorString()).toStdString(),
                       "Correct the file and try again.");
    ClientState state;
    state.today = today;
    std::optional<Error> problem;
    {
        Reader reader(document.object(), QString(), problem);
        read_state(reader, state, problem);
    }
    if (problem) return *problem;
    if (const Status possible = care::checked(state, {}); !possible) return possible.error();
    return state;
}

}  // namespace kempt::work
