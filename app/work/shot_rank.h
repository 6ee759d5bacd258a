// Which shot of a view is shown, compared and carried from, when there are several.
#pragma once

#include <QVector>

#include "domain/records.h"

namespace kempt::work {

// Readings that stand count most, then marks, then the gate's word; the first shot of equals.
[[nodiscard]] int rank_of(const PhotoRecord& photo, bool marked, const QVector<ReadingRecord>& readings);

}  // namespace kempt::work
