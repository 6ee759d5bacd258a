// What the client can do at home: short sentences from the state of her hair and her day, each with its source.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "care/rules.h"

namespace kempt::care {

struct Tip {
    std::string id, group;  // "wash", "moisture", "heat", "night", "style", "water", "edges", "scalp"
    int priority = 1;       // 1 first .. 9
    double minutes_a_week = 0;
    std::string text, source;
    std::string condition;
    Expression when;
};

struct HomeCareRules {
    std::vector<Source> sources;
    std::vector<Tip> tips;
};
// Errors: invalid, with the line; as load_rules. A tip asks about the client, never about a planned service.
[[nodiscard]] Result<HomeCareRules> load_home_care(std::string_view text);
[[nodiscard]] const Result<HomeCareRules>& built_in_home_care();

struct HomeCareOptions {
    std::size_t most_tips = 8;  // what fits on a hand's breadth of the report and is still read (own choice)
};

struct HomeCarePlan {
    std::vector<Tip> tips;      // most important first
    std::vector<Tip> left_out;  // they fit her hair, not her minutes or the page
    double minutes_a_week = 0;  // of tips
    std::optional<double> minutes_there_are;
    std::vector<std::string> questions;  // what would tell whether more tips belong here, each once
};
// Tips in order of priority as long as her minutes last; those that cost no time always fit.
[[nodiscard]] HomeCarePlan home_care(const HomeCareRules& rules, const ClientState& state,
                                     const HomeCareOptions& options = {});

}  // namespace kempt::care
