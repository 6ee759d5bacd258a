// The parts of care_state, each from the records that it needs.
#pragma once

#include <QDate>

#include "work/care_state.h"

namespace kempt::work {

// Of every zone and quality the newest grade that still counts, of its latest round. Needs state.history.services.
[[nodiscard]] Status add_grades(Book& book, Id client, QDate today, care::ClientState& state);
// Of every view and reading the mean of the newest visit that has one, its noise band, and the verdict since the visit
// before.
[[nodiscard]] Status add_readings(Book& book, Id client, QDate today, care::ClientState& state);

}  // namespace kempt::work
