#include "desk/plan/plan_data.h"

#include "work/keep_records.h"

namespace kempt::desk {

Result<PlanData> plan_data(Book& book, Id client, QDate today) {
    PlanData data;
    data.today = today;
    auto known = work::client_of(book, client);
    if (!known) return known.error();
    data.client = std::move(*known);
    auto state = work::care_state(book, client, today);
    if (!state) return state.error();
    data.state = std::move(*state);
    auto base = work::completed(book, {client, today, {}});
    if (!base) return base.error();
    data.base = std::move(*base);
    auto answers = work::answers_of(book, client, today);
    if (!answers) return answers.error();
    data.answers = std::move(*answers);
    auto profile = work::profile_of(book, client);
    if (!profile) return profile.error();
    data.profile = std::move(*profile);
    auto life = work::daily_life_of(book, client, today);
    if (!life) return life.error();
    data.life = std::move(*life);
    auto draft = work::plan_draft_of(book, client);
    if (!draft) return draft.error();
    data.draft = std::move(*draft);
    const auto visits = work::list_visits(book, client);
    if (!visits) return visits.error();
    for (const Visit& visit : *visits)
        if (visit.date == today) data.visit_today = visit.id;
    return data;
}

Result<WorkedOut> worked_out(const care::ClientState& state, const work::PlanRequest& request,
                             const Progress& progress) {
    auto plan = work::plan_care(state, request, progress);
    if (!plan) return plan.error();
    return WorkedOut{std::move(*plan), care::carry(state.history, state.today, care::rate_of(state), state.length_mm)};
}

std::vector<work::DraftItem> without_that_day(std::vector<work::DraftItem> items) {
    for (work::DraftItem& one : items) {
        care::PlannedService& service = one.item.service;
        service.strand_tested = std::nullopt;
        service.strand_test = std::nullopt;
        service.patch_tested = std::nullopt;
        service.patch_test = std::nullopt;
        service.patch_test_hours = std::nullopt;
        service.hair_is_wet = std::nullopt;
        one.in_rounds = false;
        if (!one.item.setting) continue;
        one.item.setting->strand_minutes = 0;
        one.item.setting->roots_minutes = std::nullopt;
        one.item.setting->ends_minutes = std::nullopt;
        one.item.setting->ends_porosity = std::nullopt;
    }
    return items;
}

}  // namespace kempt::desk
