#include "work/plan_care.h"

#include <algorithm>

#include "work/errors.h"
#include "work/plan_hair.h"

namespace kempt::work {

namespace {

// Stops that hold and concern this service: its own, and those about the client as a whole.
bool is_stopped(const care::Advice& advice, care::Kind kind) {
    return std::any_of(advice.findings.begin(), advice.findings.end(), [&](const care::Finding& finding) {
        if (finding.level != care::RuleLevel::stop || finding.sort != care::FindingSort::speaks_against) return false;
        return std::any_of(finding.where.begin(), finding.where.end(),
                           [&](const care::Place& place) { return !place.service || *place.service == kind; });
    });
}

// What is put on, processes and is rinsed off.
bool has_timeline(care::Kind kind) {
    return kind != care::Kind::cut && kind != care::Kind::heat_styling && kind != care::Kind::protective_style;
}

// The ends' own grade, else that of the whole strand.
std::optional<int> porosity_of_ends(const care::ClientState& state) {
    std::optional<int> ends, whole;
    for (const care::Graded& grade : state.grades) {
        if (grade.quality != "porosity") continue;
        std::optional<int>* into =
            grade.zone == word_of(care::Part::ends) ? &ends : (grade.zone.empty() ? &whole : nullptr);
        if (into) *into = std::min(into->value_or(4), grade.value);
    }
    return ends ? ends : whole;
}

std::string missing_in(const care::Setting& setting, const care::Coverage& coverage) {
    if (coverage.put_on.empty()) return "There is no hair that it may be put on.";
    if (setting.sections.empty()) return "Name the head sections and the minutes that each takes to apply.";
    if (setting.strand_minutes == 0) return "Do a strand test and enter its minutes first.";
    if (setting.most_minutes == 0) return "Enter the longest time that the maker's directions allow.";
    return {};
}

Result<PlannedTimeline> solved(const care::Application& application) {
    const auto timeline = care::solve(application);
    if (!timeline) return timeline.error();
    PlannedTimeline planned{application, *timeline, {}};
    if (timeline->works) return planned;
    for (const care::Remedy& remedy : care::what_would_help(application)) {
        ProvenRemedy proven{remedy, {}};
        for (const care::Application& round : remedy.rounds) {
            auto order = care::solve(round);
            if (!order) return order.error();
            proven.rounds.push_back(std::move(*order));
        }
        planned.would_help.push_back(std::move(proven));
    }
    return planned;
}

ServicePlan plan_service(const PlannedItem& item, const care::ClientState& state, const care::Advice& advice,
                         const PlanRequest& request) {
    ServicePlan plan{item.service, care::coverage_of(item.service, state), {}, {}, false};
    plan.stopped = is_stopped(advice, item.service.kind);
    if (!item.setting) return plan;
    care::Setting setting = *item.setting;
    if (setting.most_minutes == 0) setting.most_minutes = item.service.most_minutes.value_or(0);
    if (!setting.ends_porosity) setting.ends_porosity = porosity_of_ends(state);
    if (!has_timeline(item.service.kind))
        plan.no_timeline = "A " + std::string(word_of(item.service.kind)) + " has no application timeline.";
    else if (plan.stopped)
        plan.no_timeline = "A stop speaks against this service, so no order of work is given.";
    else
        plan.no_timeline = missing_in(setting, plan.coverage);
    if (!plan.no_timeline.empty()) return plan;
    auto application = care::application_of(setting, plan.coverage);
    if (!application) {
        plan.no_timeline = application.error().sentence();
        return plan;
    }
    application->under = request.under;
    application->over = request.over;
    if (auto timeline = solved(*application))
        plan.timeline = std::move(*timeline);
    else
        plan.no_timeline = timeline.error().sentence();
    return plan;
}

std::optional<care::Day> day_of(const std::optional<QDate>& date) {
    return date && date->isValid() ? std::optional(care_day(*date)) : std::nullopt;
}

Result<CarePlan> plan_of(const care::ClientState& state, const PlanRequest& request, const Progress& progress) {
    const auto& rules = care::built_in_rules();
    if (!rules) return rules.error();
    const auto& tips = care::built_in_home_care();
    if (!tips) return tips.error();
    care::Plan wanted;
    for (const PlannedItem& item : request.services) wanted.services.push_back(item.service);
    auto advice = care::evaluate(*rules, state, wanted);
    if (!advice) return advice.error();

    CarePlan plan;
    plan.today = date_of(state.today);
    plan.advice = std::move(*advice);
    plan.questions = care::questions_of(plan.advice);
    const double count = static_cast<double>(request.services.size());
    for (std::size_t i = 0; i < request.services.size(); ++i) {
        if (tell(progress, static_cast<double>(i) / count, "looking for an order of work") == Go::stop)
            return stopped();
        plan.services.push_back(plan_service(request.services[i], state, plan.advice, request));
    }
    plan.hair = hair_of(state);
    plan.rate = care::rate_of(state);
    plan.rate_from = rate_sentence(state);
    plan.growth = growth_of(state);
    plan.dates = care::next_dates(state, day_of(request.photographed), day_of(request.dye_day), request.dates);
    plan.home_care = care::home_care(*tips, state, request.home_care);
    plan.unanswered = request.unanswered;
    plan.history_told_on = request.history_told_on;
    return plan;
}

}  // namespace

Result<CarePlan> plan_care(const care::ClientState& state, const PlanRequest& request, const Progress& progress) {
    return guarded([&] { return plan_of(state, request, progress); });
}

}  // namespace kempt::work
