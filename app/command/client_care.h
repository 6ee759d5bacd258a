// The verbs of `kempt client` about what she told.
#pragma once

#include <QJsonArray>

#include "command/command.h"
#include "work/keep_care.h"

namespace kempt::command {

[[nodiscard]] QVector<Verb> care_verbs();
// As `answers` prints them: each with "counts", whether it still does.
[[nodiscard]] QJsonArray answers_json(const QVector<work::CurrentAnswer>& answers);
[[nodiscard]] QStringList answer_lines(const QVector<work::CurrentAnswer>& answers);

}  // namespace kempt::command
