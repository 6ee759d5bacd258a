#include "care/evaluate.h"

#include <algorithm>

namespace kempt::care {
namespace {

bool is_part(const std::string& zone) {
    return zone == word_of(Part::roots) || zone == word_of(Part::mid_shaft) || zone == word_of(Part::ends);
}

// The whole head first (empty name), then every section that carries a grade or a reading.
std::vector<std::string> sections_of(const ClientState& state) {
    std::vector<std::string> names = {""};
    const auto add = [&](const std::string& zone) {
        if (!is_part(zone) && std::find(names.begin(), names.end(), zone) == names.end()) names.push_back(zone);
    };
    for (const Graded& grade : state.grades) add(grade.zone);
    for (const Measured& reading : state.readings) add(reading.zone);
    return names;
}

struct Asked {
    Context context;
    Place place;
};

std::vector<Asked> contexts_of(const Rule& rule, const ClientState& state, const Plan& plan) {
    std::vector<Asked> all;
    Context base;
    base.state = &state;
    base.plan = &plan;
    base.scope = rule.scope;
    const auto over_sections = [&](Context context, Place place) {
        for (const std::string& name : sections_of(state)) {
            context.section = place.section = name;
            all.push_back({context, place});
        }
    };
    if (rule.scope == Scope::client) {
        all.push_back({base, {}});
    } else if (rule.scope == Scope::section && !rule.when.needs_service()) {
        over_sections(base, {});
    } else {
        for (const PlannedService& service : plan.services) {
            Context context = base;
            context.service = &service;
            Place place{service.kind, {}, {}};
            if (rule.scope == Scope::service) all.push_back({context, place});
            if (rule.scope == Scope::section) over_sections(context, place);
            if (rule.scope != Scope::part) continue;
            for (const Part part : {Part::roots, Part::mid_shaft, Part::ends}) {
                context.part = place.part = part;
                if (!span_of(context).empty()) all.push_back({context, place});
            }
        }
    }
    return all;
}

void add_once(std::vector<std::string>& list, const std::string& text) {
    if (!text.empty() && std::find(list.begin(), list.end(), text) == list.end()) list.push_back(text);
}

Finding finding_of(const Rule& rule, FindingSort sort, const ClientState& state) {
    Finding finding{rule.id, rule.level, sort, rule.reason, rule.remedy, rule.source, {}, {}, {}, rule.choose};
    if (rule.wait_days && sort == FindingSort::speaks_against)
        if (const PastService* last = last_of(state, *rule.wait_after); last)
            if (const Day until = last->day + *rule.wait_days; until > state.today) finding.wait_until = until;
    return finding;
}

void ask(const Rule& rule, const ClientState& state, const Plan& plan, std::vector<Finding>& findings) {
    Finding against = finding_of(rule, FindingSort::speaks_against, state),
            check = finding_of(rule, FindingSort::check_first, state);
    for (const Asked& asked : contexts_of(rule, state, plan)) {
        const Outcome outcome = rule.when.evaluate(asked.context);
        if (outcome.truth == Truth::no) continue;
        Finding& finding = outcome.truth == Truth::yes ? against : check;
        if (std::find(finding.where.begin(), finding.where.end(), asked.place) == finding.where.end())
            finding.where.push_back(asked.place);
        for (const Named& named : outcome.unknown) add_once(finding.questions, question_of(*named.fact, named.family));
    }
    for (Finding* finding : {&against, &check})
        if (!finding->where.empty()) findings.push_back(std::move(*finding));
}

}  // namespace

std::string phrase_of(const Place& place) {
    std::string text;
    const auto add = [&](std::string_view part) { text += (text.empty() ? "" : ", ") + std::string(part); };
    if (place.service) add(word_of(*place.service));
    if (place.part) add(word_of(*place.part));
    if (!place.section.empty()) add(place.section);
    return text;
}

std::string sentence_of(const Finding& finding) {
    if (finding.sort == FindingSort::speaks_against) return finding.reason + " " + finding.remedy;
    std::string text = "Check first:";
    for (const std::string& question : finding.questions) text += " " + question;
    return text + " If so: " + finding.reason;
}

Result<Advice> evaluate(const Rules& rules, const ClientState& state, const Plan& plan) {
    if (const Status status = checked(state, plan); !status) return status.error();
    Advice advice;
    for (const Rule& rule : rules.rules) ask(rule, state, plan, advice.findings);
    std::stable_sort(advice.findings.begin(), advice.findings.end(), [](const Finding& a, const Finding& b) {
        return std::pair(a.level, a.sort) < std::pair(b.level, b.sort);
    });
    advice.always = rules.always;
    advice.stopped = std::any_of(advice.findings.begin(), advice.findings.end(), [](const Finding& finding) {
        return finding.level == RuleLevel::stop && finding.sort == FindingSort::speaks_against;
    });
    return advice;
}

std::vector<std::string> questions_of(const Advice& advice) {
    std::vector<std::string> questions;
    for (const Finding& finding : advice.findings)
        for (const std::string& question : finding.questions) add_once(questions, question);
    return questions;
}

}  // namespace kempt::care
