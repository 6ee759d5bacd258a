// What the plan page reads and works out, on workers.
#pragma once

#include <QVector>
#include <optional>
#include <vector>

#include "care/history.h"
#include "core/progress.h"
#include "work/keep_care.h"
#include "work/plan_care.h"
#include "work/plan_draft.h"

namespace kempt::desk {

struct PlanData {
    Client client;
    QDate today;
    care::ClientState state;
    work::PlanRequest base;  // without services: the last photographs, the next dye
    QVector<work::CurrentAnswer> answers;
    ClientProfile profile;
    std::optional<DailyLife> life;  // what was told last
    std::optional<work::PlanDraft> draft;
    Id visit_today = 0;  // 0: none was opened
};
[[nodiscard]] Result<PlanData> plan_data(Book& book, Id client, QDate today);

struct WorkedOut {
    work::CarePlan plan;
    std::vector<care::Carried> carried;  // where each service of the record lies on today's hair
};
[[nodiscard]] Result<WorkedOut> worked_out(const care::ClientState& state, const work::PlanRequest& request,
                                           const Progress& progress);

// What was planned on another day, to be taken over today: tests, their minutes and the state of the hair that day are
// left behind.
[[nodiscard]] std::vector<work::DraftItem> without_that_day(std::vector<work::DraftItem> items);

}  // namespace kempt::desk
