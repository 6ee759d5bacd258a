// A client's state as JSON: what `kempt plan --json` prints as "state" and `kempt plan --state` reads, so that a plan can
// be asked for without a book.
#pragma once

#include <QByteArray>
#include <QJsonObject>

#include "care/client_state.h"
#include "core/result.h"

namespace kempt::work {

// {"today": "2026-11-25", "age_years": , "length_mm": , "texture": "fine", "hair_group": "african",
//  "own_rate": {"um_per_day": , "sd_um_per_day": , "source": }, "pull_test_hairs": , "comb_count": ,
//  "grades": [{"quality": "porosity", "zone": "ends", "value": 0-4}],           zone left out: the whole head
//  "readings": [{"name": "edge_coverage", "zone": "left temple", "value": , "low": , "high": ,
//                "verdict": "improved|worse|no detectable change|not comparable"}],
//  "services": [{"kind": "gloss", "date": "2026-09-01", "from_mm": , "to_mm": , "sections": ["nape"], "strength": ,
//                "minutes": , "temperature_c": , "passes": , "strand_test": "passed|failed", "patch_test": ,
//                "patch_test_on": , "result": , "reaction": , "at_home": ,
//                "line": {"mm": , "low": , "high": , "on": "2026-10-01", "by_tape": }, "state": "done|perhaps"}],
//  "record_from": "whole" or "2021-01-01": every service since then is in "services"; null: there may be others,
//  "daily": {"minutes_a_day": , "heat": [{"name": , "temperature_c": , "times_a_week": , "on_wet_hair": }],
//            "swims_a_week": , "washes_a_week": , "hard_water": , "covers_hair": , "tight_headwear": ,
//            "covers_at_night": , "tight_styles": , "style_hurts": , "added_hair": , "style_weeks": },
//  "answers": {"scalp_wound": false, ...}}
// Whatever is left out or null is not known, and is asked. Everything in it counts: how old it is was looked at before.
[[nodiscard]] QJsonObject json_of_state(const care::ClientState& state);

// Errors: invalid (no JSON, a member that is unknown or wrong, which the sentence names; a state that cannot be, as
// care::checked). Without "today": `today`.
[[nodiscard]] Result<care::ClientState> state_from_json(const QByteArray& json, care::Day today);

}  // namespace kempt::work
