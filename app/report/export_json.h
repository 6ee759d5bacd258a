// Readings as JSON, with everything that explains them later.
#pragma once

#include <QJsonArray>

#include "report/export_csv.h"

namespace kempt::report {

// One object a reading, the members named as the columns of readings_csv, with "options" and "card" as objects besides.
// Values of a refused reading are null.
[[nodiscard]] QJsonArray readings_json(const QVector<ExportedReading>& readings);

}  // namespace kempt::report
