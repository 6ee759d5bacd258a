#include "care/home_care.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "care/rules_bytes.h"

namespace kempt::care {
namespace {

constexpr std::array<std::string_view, 8> groups = {"wash",  "moisture", "heat",  "night",
                                                    "style", "water",    "edges", "scalp"};

Result<double> number_of(const Record& record, std::string_view key, double least, double most) {
    const Field* field = record.find(key);
    if (!field) return record_error(record.line, in_quotes(key) + " is missing");
    double value = 0;
    const char* end = field->value.data() + field->value.size();
    const auto read = std::from_chars(field->value.data(), end, value);
    if (read.ec != std::errc() || read.ptr != end || !(value >= least && value <= most))
        return record_error(field->line, in_quotes(key) + " is no number in its range");
    return value;
}

Result<Tip> read_tip(const Record& record, const std::vector<Source>& sources) {
    if (const Status keys = only_keys(record, {"group", "priority", "minutes_a_week", "when", "say", "source"}); !keys)
        return keys.error();
    Tip tip;
    tip.id = record.id;
    const Field *group = record.find("group"), *when = record.find("when");
    if (!group || std::find(groups.begin(), groups.end(), group->value) == groups.end())
        return record_error(group ? group->line : record.line, "'group' is missing or unknown");
    tip.group = group->value;
    const auto priority = number_of(record, "priority", 1, 9), minutes = number_of(record, "minutes_a_week", 0, 600);
    if (!priority) return priority.error();
    if (!minutes) return minutes.error();
    tip.priority = static_cast<int>(*priority);
    tip.minutes_a_week = *minutes;
    if (!when) return record_error(record.line, "'when' is missing");
    auto expression = Expression::parse(when->value);
    if (!expression) return record_error(when->line, "condition: " + without_stop(expression.error().what));
    if (expression->needs_service()) return record_error(when->line, "a tip cannot ask about a planned service");
    tip.condition = when->value;
    tip.when = std::move(*expression);
    const auto say = sentence_of(record, "say");
    if (!say) return say.error();
    const auto source = source_text(record, sources);
    if (!source) return source.error();
    tip.text = *say;
    tip.source = source->text;
    return tip;
}

}  // namespace

Result<HomeCareRules> load_home_care(std::string_view text) {
    const auto records = read_records(text);
    if (!records) return records.error();
    auto sources = read_sources(*records);
    if (!sources) return sources.error();
    HomeCareRules rules{std::move(*sources), {}};
    for (const Record& record : *records) {
        if (record.sort == "source") continue;
        if (record.sort != "tip") return record_error(record.line, "unknown sort of record " + in_quotes(record.sort));
        auto tip = read_tip(record, rules.sources);
        if (!tip) return tip.error();
        rules.tips.push_back(std::move(*tip));
    }
    if (rules.tips.empty()) return record_error(1, "there is no tip");
    return rules;
}

const Result<HomeCareRules>& built_in_home_care() {
    static const Result<HomeCareRules> rules =
        load_home_care({reinterpret_cast<const char*>(home_rules_bytes), home_rules_size});
    return rules;
}

HomeCarePlan home_care(const HomeCareRules& rules, const ClientState& state, const HomeCareOptions& options) {
    HomeCarePlan plan;
    const Plan nothing_planned;
    Context context;
    context.state = &state;
    context.plan = &nothing_planned;
    std::vector<Tip> fitting;
    for (const Tip& tip : rules.tips) {
        const Outcome outcome = tip.when.evaluate(context);
        if (outcome.truth == Truth::yes) fitting.push_back(tip);
        for (const Named& named : outcome.unknown) {
            const std::string question = question_of(*named.fact, named.family);
            if (std::find(plan.questions.begin(), plan.questions.end(), question) == plan.questions.end())
                plan.questions.push_back(question);
        }
    }
    std::stable_sort(fitting.begin(), fitting.end(),
                     [](const Tip& a, const Tip& b) { return a.priority < b.priority; });
    if (state.daily.minutes_a_day) plan.minutes_there_are = 7 * *state.daily.minutes_a_day;
    for (const Tip& tip : fitting) {
        const bool time = tip.minutes_a_week == 0 || !plan.minutes_there_are ||
                          plan.minutes_a_week + tip.minutes_a_week <= *plan.minutes_there_are;
        if (!time || plan.tips.size() == options.most_tips) {
            plan.left_out.push_back(tip);
            continue;
        }
        plan.minutes_a_week += tip.minutes_a_week;
        plan.tips.push_back(tip);
    }
    return plan;
}

}  // namespace kempt::care
