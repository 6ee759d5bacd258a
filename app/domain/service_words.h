// A service of the record in words, for lists, windows and the report.
#pragma once

#include <QString>
#include <QStringList>

#include "domain/measure_units.h"
#include "domain/records.h"

namespace kempt {

// "from the scalp to 20 mm, nape and crown"; of a cut "left 250 mm"; empty: all of the hair of the whole head.
[[nodiscard]] QString place_of(const Service& service, LengthUnit length = LengthUnit::millimetres);
// What was written down besides day, kind and note, a few words each: place, strength, minutes, tests, result...
[[nodiscard]] QStringList details_of(const Service& service, LengthUnit length = LengthUnit::millimetres);
// "fine", "african", "250 mm on 2026-03-14", "every service since 2020-01-01"...
[[nodiscard]] QStringList details_of(const ClientProfile& profile, LengthUnit length = LengthUnit::millimetres);
[[nodiscard]] QStringList details_of(const DailyLife& life);

}  // namespace kempt
