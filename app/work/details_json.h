// What a run found besides its readings: tone, lines of demarcation, traced strands, how the light stood. The same
// objects stand in the JSON of `kempt measure` and, kept, beside the readings of a book.
#pragma once

#include <QJsonObject>
#include <optional>

#include "shine/light_signature.h"
#include "work/measure_photo.h"

namespace kempt::work {

// {"root", "mid", "end": [L, a, b] or null, "lines": [{"step", "step_low", "step_high", "at_mm", "at_low", "at_high",
// "width_mm"}]}
[[nodiscard]] QJsonObject json_of_tone(const tone::ToneReadings& tone);
// [{"length_mm", "length_low", "length_high", "doubtful", "cut_off", "perhaps_longer", "path": [[x, y], ...]}]
[[nodiscard]] QJsonArray json_of_strands(const std::vector<combings::Strand>& strands);

// "tone", "strands", "strand_parts" (of the comb-out's strands, likely parts of others: "strands" the reading is less
// by them), "unresolved", "light", "curl", those that there are.
[[nodiscard]] QJsonObject json_of_details(const MeasureResult& result);
// The light of a kept run; nullopt when it measured no shine.
[[nodiscard]] std::optional<shine::LightSignature> light_from_details(const QByteArray& json);

}  // namespace kempt::work
