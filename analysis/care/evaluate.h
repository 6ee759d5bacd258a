// What speaks against the planned services, and what to check first. Every rule is asked by itself, so no rule can take
// another one's stop away; a rule that needs what nobody knows asks for it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "care/rules.h"

namespace kempt::care {

enum class FindingSort {
    speaks_against,  // the condition holds
    check_first      // it cannot be told until the questions are answered
};

struct Place {
    std::optional<Kind> service;
    std::optional<Part> part;
    std::string section;
    bool operator==(const Place&) const = default;
};
[[nodiscard]] std::string phrase_of(const Place& place);  // "permanent colour, ends"; empty: the client as a whole

// One rule that holds, or one that cannot be told; over all the places where that is so.
struct Finding {
    std::string rule;
    RuleLevel level = RuleLevel::note;
    FindingSort sort = FindingSort::speaks_against;
    std::string reason, remedy, source;
    std::vector<Place> where;            // never empty
    std::vector<std::string> questions;  // of check_first, each once: "Ask ..."
    std::optional<Day> wait_until;       // the first day on which the wait is over, from the last recorded service
    std::optional<Kind> choose;
};
// One line: "Check first: ..." with its questions, or the reason and the remedy.
[[nodiscard]] std::string sentence_of(const Finding& finding);

struct Advice {
    std::vector<Finding> findings;  // stops first, within a level what holds before what has to be checked
    std::vector<Caution> always;    // shown whatever the findings are
    bool stopped = false;           // at least one stop holds; nothing lifts it but another state or plan
};

// The rules' word on this state and plan. An empty plan asks the rules about the client only. Errors: invalid, as
// checked().
[[nodiscard]] Result<Advice> evaluate(const Rules& rules, const ClientState& state, const Plan& plan);

// The questions of all findings that have to be checked, each once, those of stops first.
[[nodiscard]] std::vector<std::string> questions_of(const Advice& advice);

}  // namespace kempt::care
