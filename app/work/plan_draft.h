// What is being planned for a client, kept while it is entered. It belongs to the day on which it was entered: the
// tests and minutes of another day say nothing of today's hair.
#pragma once

#include <QDate>
#include <optional>
#include <vector>

#include "work/plan_care.h"

namespace kempt::work {

struct DraftItem {
    PlannedItem item;
    bool in_rounds = false;  // the remedy of applying and rinsing some head sections after the others was taken over
};
struct PlanDraft {
    QDate day;
    std::vector<DraftItem> items;
};

// Nothing when nothing is planned, or it was written by a later Kempt. Errors: not_found (client), io.
[[nodiscard]] Result<std::optional<PlanDraft>> plan_draft_of(Book& book, Id client);
// Replaces the one before; one without services is put away. Errors: not_found (client), invalid (day), io.
[[nodiscard]] Status keep_plan_draft(Book& book, Id client, const PlanDraft& draft);
// For the erasure of a client. Errors: io.
[[nodiscard]] Status forget_plan_draft(Book& book, Id client);

}  // namespace kempt::work
