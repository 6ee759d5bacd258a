// A care plan as JSON: what `kempt plan --json` prints, and the request that `kempt plan --request` reads.
#pragma once

#include <QByteArray>
#include <QJsonObject>

#include "work/plan_care.h"

namespace kempt::work {

// {"today", "stopped", "findings", "questions", "services", "hair", "growth", "dates", "home_care", "was_it_done",
// "ask_history_again", "cautions"}; the command adds "client" and "state" (care_state_json.h). Days
// as 2026-03-14, lengths in mm from the scalp; "to_mm" null: to the ends.
[[nodiscard]] QJsonObject json_of_plan(const CarePlan& plan);
[[nodiscard]] QJsonObject json_of_date(const care::DateRange& range);

// {"services": [{"kind": "gloss", "from_mm": , "to_mm": , "new_growth_only": , "sections": ["nape"], "strength":
// "mild",
//   "minutes": , "most_minutes": , "temperature_c": , "passes": , "strand_tested": , "strand_test": "passed|failed",
//   "patch_tested": , "patch_test": , "patch_test_hours": , "at_home": , "touches_scalp": , "releases_formaldehyde": ,
//   "data_sheet": , "hair_is_wet": , "heat_protectant": , "tight": , "adds_hair": ,
//   "timeline": {"strand_minutes": , "most_minutes": , "hands": , "roots_minutes": , "ends_minutes": , "ends_porosity":
//   ,
//     "sections": [{"name": "nape", "roots": , "mid_shaft": , "ends": }]}}],
//  "photographed": "2026-03-14", "dye_day": "2026-03-20"}
// All but "kind" may be left out or null: nobody knows yet. Errors: invalid (no JSON, an unknown or wrong member, which
// the sentence names).
[[nodiscard]] Result<PlanRequest> request_from_json(const QByteArray& json);

}  // namespace kempt::work
