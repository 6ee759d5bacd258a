// Keeping what a client told: her profile, her daily life, her answers. Every function is one transaction. Errors are
// always among not_found (the client or id), invalid (the sentence names the field) and io. Nothing was told, measured
// or answered after `today`: such a day is refused (invalid, day-to-come).
#pragma once

#include <QDate>
#include <QStringList>
#include <QVector>
#include <optional>

#include "core/result.h"
#include "domain/clock.h"
#include "domain/questions.h"
#include "domain/records.h"
#include "work/book_fwd.h"

namespace kempt::work {

// ---- profile -------------------------------------------------------------------------------------------------------
[[nodiscard]] Result<ClientProfile> profile_of(Book& book, Id client);  // an empty one when nothing was told
[[nodiscard]] Status set_profile(Book& book, const ClientProfile& profile, QDate today = Clock().today());

// What she told before of how far back the record goes is told again on that day. Errors: also invalid (history-untold:
// nothing was told yet).
[[nodiscard]] Status confirm_history(Book& book, Id client, QDate today);

// ---- daily life ----------------------------------------------------------------------------------------------------
[[nodiscard]] Result<QVector<DailyLife>> list_daily_life(Book& book, Id client);  // oldest first
// The newest that was told until that day, however old; nothing when nothing was.
[[nodiscard]] Result<std::optional<DailyLife>> daily_life_of(Book& book, Id client, QDate today);
// What was told while it still counts (daily_life_days), else nothing: only that is carried on when more is told.
[[nodiscard]] std::optional<DailyLife> fresh_life(const std::optional<DailyLife>& life, QDate today);
// Replaces what was told on the same day.
[[nodiscard]] Result<DailyLife> set_daily_life(Book& book, DailyLife life, QDate today = Clock().today());
[[nodiscard]] Status erase_daily_life(Book& book, Id life);

// ---- answers -------------------------------------------------------------------------------------------------------
[[nodiscard]] Result<QVector<ClientAnswer>> list_answers(Book& book, Id client);  // oldest first
// Of every question the newest answer until that day, in the order of questions(); fresh: whether it still counts. Of
// what once happened (Lasting::yes_for_good) a yes stays before a later no.
struct CurrentAnswer {
    ClientAnswer answer;
    bool fresh = false;
};
[[nodiscard]] Result<QVector<CurrentAnswer>> answers_of(Book& book, Id client, QDate today);
// All in one transaction; each replaces the answer to the same question of the same day, except that a no never
// replaces a yes of what once happened (invalid, yes-for-good): that one is erased, or corrected where it is seen.
[[nodiscard]] Result<QVector<ClientAnswer>> set_answers(Book& book, QVector<ClientAnswer> answers,
                                                        QDate today = Clock().today());
// The same for a form that shows the answer of the day and takes it back by hand, a yes of what once happened included.
[[nodiscard]] Result<ClientAnswer> correct_answer(Book& book, ClientAnswer answer, QDate today = Clock().today());
[[nodiscard]] Status erase_answer(Book& book, Id answer);

// The sentence that asks, from the care rules: "Ask whether the client is pregnant or breastfeeding."
[[nodiscard]] QString sentence_of(const Question& question);
// "yes", "no", "12 hairs"
[[nodiscard]] QString words_of(const ClientAnswer& answer);

}  // namespace kempt::work
