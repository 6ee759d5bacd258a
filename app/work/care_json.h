// The JSON of what was done to the hair and what a client told: as commands print it, an export keeps it and the demo's
// scenario says it. null: not written down, not asked.
#pragma once

#include <QJsonArray>
#include <QJsonObject>

#include "core/result.h"
#include "domain/records.h"

namespace kempt::work {

// id, client, visit, date, kind, note, from_mm, to_mm, sections, strength, minutes, most_minutes, temperature_c,
// passes, strand_test, patch_test, patch_test_on, patch_test_where, result, reaction, at_home, line_mm, line_on, state:
// "planned" or "done" (left out: done)
[[nodiscard]] QJsonObject json_of_service(const Service& service);
// client, born, age_years, age_on, length_mm, length_on, texture, hair_group, whole_history, history_from,
// history_told_on
[[nodiscard]] QJsonObject json_of_profile(const ClientProfile& profile);
// id, client, date (null: nothing was told yet), minutes_a_day, heat: [{name, temperature_c, times_a_week,
// on_wet_hair}], swims_a_week, washes_a_week, hard_water, covers_hair, tight_headwear, covers_at_night, tight_styles,
// style_hurts, added_hair, style_weeks
[[nodiscard]] QJsonObject json_of_daily_life(const DailyLife& life);
// id, client, date, question, value: true, false or hairs
[[nodiscard]] QJsonObject json_of_answer(const ClientAnswer& answer);

// The other way round; members that are left out are not set. Errors: invalid, naming the member that is of another
// type or no date. Whether the values can be, the book says.
[[nodiscard]] Result<Service> service_from_json(const QJsonObject& json);
[[nodiscard]] Result<ClientProfile> profile_from_json(const QJsonObject& json);
[[nodiscard]] Result<DailyLife> daily_life_from_json(const QJsonObject& json);
[[nodiscard]] Result<ClientAnswer> answer_from_json(const QJsonObject& json);

}  // namespace kempt::work
