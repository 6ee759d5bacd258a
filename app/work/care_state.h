// What the book knows of a client, as the care rules ask for it: grades, readings with their verdicts, services along
// the hair, daily life, answers, her own rate of growth.
#pragma once

#include <QDate>

#include "care/client_state.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

// The state on that day: what was written down for a later day is left out, and what is too old to count is as if it
// had never been asked (see care_freshness.h). Errors: not_found (client), invalid (today is no date), io.
[[nodiscard]] Result<care::ClientState> care_state(Book& book, Id client, QDate today);

// The same without readings, which compare visits and take the longest: all that care::next_dates asks for.
[[nodiscard]] Result<care::ClientState> care_state_for_dates(Book& book, Id client, QDate today);

// One service of the record as the care rules see it; nullopt: of a kind that they do not know (a later Kempt's).
[[nodiscard]] std::optional<care::PastService> past_service(const Service& service);
// Whether what she told of how far back the record goes still counts on that day (history_days).
[[nodiscard]] bool tells_history(const ClientProfile& profile, QDate today);
// Planned for a day that has passed: was it done? Until somebody says so the rules take it as perhaps done.
[[nodiscard]] bool asks_whether_done(const Service& service, QDate today);
// A day as they count it.
[[nodiscard]] care::Day care_day(QDate date);
[[nodiscard]] QDate date_of(care::Day day);

}  // namespace kempt::work
