#include "work/care_json.h"

#include "domain/questions.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

QJsonValue or_null(const std::optional<double>& value) {
    return value ? QJsonValue(*value) : QJsonValue(QJsonValue::Null);
}
QJsonValue or_null(const std::optional<int>& value) {
    return value ? QJsonValue(*value) : QJsonValue(QJsonValue::Null);
}
QJsonValue or_null(const std::optional<bool>& value) {
    return value ? QJsonValue(*value) : QJsonValue(QJsonValue::Null);
}
QJsonValue or_null(const std::optional<QDate>& day) {
    return day ? QJsonValue(day->toString(Qt::ISODate)) : QJsonValue(QJsonValue::Null);
}
QJsonValue or_null(const QString& text) {
    return text.isEmpty() ? QJsonValue(QJsonValue::Null) : QJsonValue(text);
}

// Reads members; the first that is wrong is told.
class Members {
  public:
    explicit Members(const QJsonObject& json) : json_(json) {}

    QString text(const char* name) {
        const QJsonValue value = member(name);
        if (!value.isNull() && !value.isString()) wrong(name, "a text");
        return value.toString();
    }
    std::optional<double> number(const char* name) {
        const QJsonValue value = member(name);
        if (value.isNull()) return std::nullopt;
        if (!value.isDouble()) wrong(name, "a number");
        return value.toDouble();
    }
    std::optional<int> whole(const char* name) {
        const std::optional<double> value = number(name);
        if (!value) return std::nullopt;
        const int whole = static_cast<int>(*value);
        if (whole != *value) wrong(name, "a whole number");
        return whole;
    }
    std::optional<bool> flag(const char* name) {
        const QJsonValue value = member(name);
        if (value.isNull()) return std::nullopt;
        if (!value.isBool()) wrong(name, "true or false");
        return value.toBool();
    }
    std::optional<QDate> day(const char* name) {
        const QString words = text(name);
        if (words.isEmpty()) return std::nullopt;
        const QDate date = QDate::fromString(words, Qt::ISODate);
        if (!date.isValid()) wrong(name, "a date like 2026-03-14");
        return date;
    }
    std::optional<QJsonArray> list(const char* name) {
        const QJsonValue value = member(name);
        if (value.isNull()) return std::nullopt;
        if (!value.isArray()) wrong(name, "a list");
        return value.toArray();
    }
    [[nodiscard]] QJsonValue member(const char* name) const {
        const QJsonValue value = json_[QLatin1String(name)];
        return value.isUndefined() ? QJsonValue(QJsonValue::Null) : value;
    }
    void wrong(const char* name, const char* what) {
        if (!error_)
            error_ =
                invalid("bad-member", "The member \"" + std::string(name) + "\" is not " + what + ".", "Correct it.");
    }
    template <class Record>
    Result<Record> done(Record record) const {
        if (error_) return *error_;
        return record;
    }

  private:
    QJsonObject json_;
    std::optional<Error> error_;
};

}  // namespace

QJsonObject json_of_service(const Service& s) {
    return {{"id", s.id},
            {"client", s.client},
            {"visit", s.visit ? QJsonValue(*s.visit) : QJsonValue(QJsonValue::Null)},
            {"date", s.date.toString(Qt::ISODate)},
            {"kind", s.kind},
            {"note", s.note},
            {"from_mm", s.from_mm},
            {"to_mm", or_null(s.to_mm)},
            {"sections", QJsonArray::fromStringList(s.sections)},
            {"strength", or_null(s.strength)},
            {"minutes", or_null(s.minutes)},
            {"most_minutes", or_null(s.most_minutes)},
            {"temperature_c", or_null(s.temperature_c)},
            {"passes", or_null(s.passes)},
            {"strand_test", or_null(s.strand_test)},
            {"patch_test", or_null(s.patch_test)},
            {"patch_test_on", or_null(s.patch_test_on)},
            {"patch_test_where", or_null(s.patch_test_where)},
            {"result", or_null(s.result)},
            {"reaction", or_null(s.reaction)},
            {"at_home", or_null(s.at_home)},
            {"line_mm", or_null(s.line_mm)},
            {"line_on", or_null(s.line_on)},
            {"state", s.done ? QStringLiteral("done") : QStringLiteral("planned")}};
}

QJsonObject json_of_profile(const ClientProfile& p) {
    return {{"client", p.client},
            {"born", or_null(p.born)},
            {"age_years", or_null(p.age_years)},
            {"age_on", or_null(p.age_on)},
            {"length_mm", or_null(p.length_mm)},
            {"length_on", or_null(p.length_on)},
            {"texture", or_null(p.texture)},
            {"hair_group", or_null(p.hair_group)},
            {"whole_history", p.whole_history},
            {"history_from", or_null(p.history_from)},
            {"history_told_on", or_null(p.history_told_on)}};
}

QJsonObject json_of_daily_life(const DailyLife& d) {
    QJsonValue heat(QJsonValue::Null);
    if (d.heat) {
        QJsonArray tools;
        for (const HeatTool& tool : *d.heat)
            tools.append(QJsonObject{{"name", tool.name},
                                     {"temperature_c", or_null(tool.temperature_c)},
                                     {"times_a_week", tool.times_a_week},
                                     {"on_wet_hair", or_null(tool.on_wet_hair)}});
        heat = tools;
    }
    return {{"id", d.id},
            {"client", d.client},
            {"date", or_null(d.date.isValid() ? std::optional(d.date) : std::nullopt)},
            {"minutes_a_day", or_null(d.minutes_a_day)},
            {"heat", heat},
            {"swims_a_week", or_null(d.swims_a_week)},
            {"washes_a_week", or_null(d.washes_a_week)},
            {"hard_water", or_null(d.hard_water)},
            {"covers_hair", or_null(d.covers_hair)},
            {"tight_headwear", or_null(d.tight_headwear)},
            {"covers_at_night", or_null(d.covers_at_night)},
            {"tight_styles", or_null(d.tight_styles)},
            {"style_hurts", or_null(d.style_hurts)},
            {"added_hair", or_null(d.added_hair)},
            {"style_weeks", or_null(d.style_weeks)}};
}

QJsonObject json_of_answer(const ClientAnswer& a) {
    const Question* question = find_question(a.question);
    const bool count = question && question->sort == AnswerSort::count;
    return {{"id", a.id},
            {"client", a.client},
            {"date", a.date.toString(Qt::ISODate)},
            {"question", a.question},
            {"value", count ? QJsonValue(a.value) : QJsonValue(a.value != 0)}};
}

Result<Service> service_from_json(const QJsonObject& json) {
    Members from(json);
    Service s;
    s.date = from.day("date").value_or(QDate());
    s.kind = from.text("kind");
    s.note = from.text("note");
    s.from_mm = from.number("from_mm").value_or(0);
    s.to_mm = from.number("to_mm");
    for (const QJsonValue& section : from.list("sections").value_or(QJsonArray()))
        s.sections.append(section.toString());
    s.strength = from.text("strength");
    s.minutes = from.number("minutes");
    s.most_minutes = from.number("most_minutes");
    s.temperature_c = from.number("temperature_c");
    s.passes = from.whole("passes");
    s.strand_test = from.text("strand_test");
    s.patch_test = from.text("patch_test");
    s.patch_test_on = from.day("patch_test_on");
    s.patch_test_where = from.text("patch_test_where");
    s.result = from.text("result");
    s.reaction = from.flag("reaction");
    s.at_home = from.flag("at_home");
    s.line_mm = from.number("line_mm");
    s.line_on = from.day("line_on");
    const QString state = from.text("state");
    if (!state.isEmpty() && state != u"planned" && state != u"done") from.wrong("state", "planned or done");
    s.done = state != u"planned";
    return from.done(s);
}

Result<ClientProfile> profile_from_json(const QJsonObject& json) {
    Members from(json);
    ClientProfile p;
    p.born = from.day("born");
    p.age_years = from.number("age_years");
    p.age_on = from.day("age_on");
    p.length_mm = from.number("length_mm");
    p.length_on = from.day("length_on");
    p.texture = from.text("texture");
    p.hair_group = from.text("hair_group");
    p.whole_history = from.flag("whole_history").value_or(false);
    p.history_from = from.day("history_from");
    p.history_told_on = from.day("history_told_on");
    return from.done(p);
}

Result<DailyLife> daily_life_from_json(const QJsonObject& json) {
    Members from(json);
    DailyLife d;
    d.date = from.day("date").value_or(QDate());
    d.minutes_a_day = from.number("minutes_a_day");
    if (const auto heat = from.list("heat")) {
        d.heat.emplace();
        for (const QJsonValue& value : *heat) {
            Members tool(value.toObject());
            auto read = tool.done(HeatTool{tool.text("name"), tool.number("temperature_c"),
                                           tool.number("times_a_week").value_or(0), tool.flag("on_wet_hair")});
            if (!read) return read.error();
            d.heat->append(std::move(read).value());
        }
    }
    d.swims_a_week = from.number("swims_a_week");
    d.washes_a_week = from.number("washes_a_week");
    d.hard_water = from.flag("hard_water");
    d.covers_hair = from.flag("covers_hair");
    d.tight_headwear = from.flag("tight_headwear");
    d.covers_at_night = from.flag("covers_at_night");
    d.tight_styles = from.flag("tight_styles");
    d.style_hurts = from.flag("style_hurts");
    d.added_hair = from.flag("added_hair");
    d.style_weeks = from.number("style_weeks");
    return from.done(d);
}

Result<ClientAnswer> answer_from_json(const QJsonObject& json) {
    Members from(json);
    ClientAnswer a;
    a.date = from.day("date").value_or(QDate());
    a.question = from.text("question");
    const QJsonValue value = from.member("value");
    if (value.isBool())
        a.value = value.toBool() ? 1 : 0;
    else if (const auto hairs = from.whole("value"))
        a.value = *hairs;
    else
        from.wrong("value", "true, false or a number of hairs");
    return from.done(a);
}

}  // namespace kempt::work
