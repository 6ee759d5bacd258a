#include "work/care_tables.h"

#include <QLocale>

#include "report/export_csv.h"
#include "work/care_json.h"

namespace kempt::work {

namespace {

QStringList names(const char* words) {
    return QString::fromLatin1(words).split(u' ');
}

const QStringList& service_names() {
    static const QStringList all = names(
        "id client visit date kind note from_mm to_mm sections strength minutes most_minutes temperature_c "
        "passes strand_test patch_test patch_test_on patch_test_where result reaction at_home line_mm line_on state");
    return all;
}
const QStringList& profile_names() {
    static const QStringList all = names(
        "client born age_years age_on length_mm length_on texture hair_group whole_history "
        "history_from history_told_on");
    return all;
}
const QStringList& daily_names() {
    static const QStringList all = names(
        "id client date minutes_a_day heat swims_a_week washes_a_week hard_water covers_hair tight_headwear "
        "covers_at_night tight_styles style_hurts added_hair style_weeks");
    return all;
}
const QStringList& answer_names() {
    static const QStringList all = names("id client date question value");
    return all;
}

// "flat iron, 180 C, 3 a week, dry"
QString text_of_tool(const QJsonObject& tool) {
    QStringList words{tool["name"].toString()};
    if (tool["temperature_c"].isDouble()) words.append(QStringLiteral("%1 C").arg(tool["temperature_c"].toDouble()));
    words.append(QStringLiteral("%1 a week").arg(tool["times_a_week"].toDouble()));
    if (tool["on_wet_hair"].isBool())
        words.append(tool["on_wet_hair"].toBool() ? QStringLiteral("wet") : QStringLiteral("dry"));
    return words.join(QStringLiteral(", "));
}

// An empty field: not written down. An empty list: "none".
QString field_of(const QJsonValue& value) {
    if (value.isBool()) return value.toBool() ? QStringLiteral("yes") : QStringLiteral("no");
    if (value.isDouble()) return QString::number(value.toDouble(), 'g', QLocale::FloatingPointShortest);
    if (!value.isArray()) return value.toString();
    QStringList words;
    for (const QJsonValue& one : value.toArray())
        words.append(one.isObject() ? text_of_tool(one.toObject()) : one.toString());
    return words.isEmpty() ? QStringLiteral("none") : words.join(QStringLiteral("; "));
}

QByteArray row_of(const QStringList& columns, const QJsonObject& json) {
    QStringList fields;
    for (const QString& name : columns) fields.append(field_of(json[name]));
    return report::csv_line(fields);
}

}  // namespace

CareTables::CareTables()
    : services_(report::csv_line(service_names())),
      profiles_(report::csv_line(profile_names())),
      daily_life_(report::csv_line(daily_names())),
      answers_(report::csv_line(answer_names())) {}

void CareTables::add(const Service& service) {
    QJsonObject json = json_of_service(service);
    // No section named is the whole head.
    if (service.sections.isEmpty()) json["sections"] = QJsonValue(QJsonValue::Null);
    services_ += row_of(service_names(), json);
}
void CareTables::add(const ClientProfile& profile) {
    profiles_ += row_of(profile_names(), json_of_profile(profile));
}
void CareTables::add(const DailyLife& life) {
    daily_life_ += row_of(daily_names(), json_of_daily_life(life));
}
void CareTables::add(const ClientAnswer& answer) {
    answers_ += row_of(answer_names(), json_of_answer(answer));
}

}  // namespace kempt::work
