// MARKS.json of the command line's contract.
#pragma once

#include <QByteArray>
#include <QJsonObject>

#include "core/result.h"
#include "domain/records.h"

namespace kempt {

// Errors: invalid, naming the member that is wrong.
[[nodiscard]] Result<Marks> marks_from_json(const QByteArray& json);
[[nodiscard]] QJsonObject json_of_marks(const Marks& marks);

}  // namespace kempt
