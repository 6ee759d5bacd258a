// The JSON of `kempt progress --json` and of exported chart data.
#pragma once

#include <QJsonObject>

#include "work/progress_of.h"

namespace kempt::work {

[[nodiscard]] QJsonObject json_of_progress(const ClientProgress& progress);
// "improved", "worse", "no detectable change", "not comparable"
[[nodiscard]] QString word_of(change::Verdict verdict);

}  // namespace kempt::work
