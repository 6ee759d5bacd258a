#include "care/rules.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <set>

#include "care/rules_bytes.h"

namespace kempt::care {
namespace {

constexpr std::array<std::string_view, 3> level_words = {"stop", "caution", "note"};
constexpr std::array<std::string_view, 4> scope_words = {"client", "service", "part", "section"};
constexpr int longest_wait = 3650;

template <class Enum, std::size_t N>
Result<Enum> word_in(const Record& record, std::string_view key, const std::array<std::string_view, N>& words) {
    const Field* field = record.find(key);
    if (!field) return record_error(record.line, in_quotes(key) + " is missing");
    const auto at = std::find(words.begin(), words.end(), field->value);
    if (at == words.end()) return record_error(field->line, in_quotes(field->value) + " is no " + std::string(key));
    return static_cast<Enum>(at - words.begin());
}

Status read_wait(const Record& record, Rule& rule) {
    const Field *days = record.find("wait_days"), *after = record.find("wait_after");
    if (!days && !after) return Done{};
    if (!days || !after) return record_error(record.line, "wait_days and wait_after belong together");
    int value = 0;
    const char* end = days->value.data() + days->value.size();
    const auto read = std::from_chars(days->value.data(), end, value);
    if (read.ec != std::errc() || read.ptr != end || value < 1 || value > longest_wait)
        return record_error(days->line, "wait_days is a whole number of days, 1 to 3650");
    rule.wait_days = value;
    rule.wait_after = find_family(after->value);
    if (!rule.wait_after) return record_error(after->line, "unknown family " + in_quotes(after->value));
    return Done{};
}

Result<Rule> read_rule(const Record& record, const std::vector<Source>& sources) {
    if (const Status keys = only_keys(
            record, {"level", "scope", "when", "reason", "remedy", "source", "wait_days", "wait_after", "choose"});
        !keys)
        return keys.error();
    Rule rule;
    rule.id = record.id;
    rule.line = record.line;
    const auto level = word_in<RuleLevel>(record, "level", level_words);
    if (!level) return level.error();
    const auto scope = word_in<Scope>(record, "scope", scope_words);
    if (!scope) return scope.error();
    rule.level = *level;
    rule.scope = *scope;
    const Field* when = record.find("when");
    if (!when) return record_error(record.line, "'when' is missing");
    auto expression = Expression::parse(when->value);
    if (!expression) return record_error(when->line, "condition: " + without_stop(expression.error().what));
    rule.condition = when->value;
    rule.when = std::move(*expression);
    if (rule.scope == Scope::client && rule.when.needs_service())
        return record_error(when->line, "the condition needs a planned service, the scope is client");
    for (const auto& [key, to] : {std::pair{"reason", &rule.reason}, {"remedy", &rule.remedy}}) {
        const auto text = sentence_of(record, key);
        if (!text) return text.error();
        *to = *text;
    }
    const auto source = source_text(record, sources);
    if (!source) return source.error();
    rule.source = source->text;
    rule.published = source->published;
    if (const Status wait = read_wait(record, rule); !wait) return wait.error();
    if (const Field* choose = record.find("choose")) {
        rule.choose = kind_from_word(choose->value);
        if (!rule.choose) return record_error(choose->line, "unknown kind of service " + in_quotes(choose->value));
    }
    return rule;
}

// A source that nothing points to is a leftover.
Status all_used(const std::vector<Record>& records, const std::vector<Source>& sources) {
    std::set<std::string> used;
    for (const Record& record : records)
        if (const Field* field = record.find("source"))
            for (const std::string& id : listed(field->value)) used.insert(id);
    for (const Source& source : sources)
        if (!used.contains(source.id)) return record_error(source.line, "no rule uses source " + in_quotes(source.id));
    return Done{};
}

}  // namespace

std::string_view word_of(RuleLevel level) {
    return level_words[static_cast<std::size_t>(level)];
}
std::string_view word_of(Scope scope) {
    return scope_words[static_cast<std::size_t>(scope)];
}

const Rule* Rules::find(std::string_view id) const {
    const auto at = std::find_if(rules.begin(), rules.end(), [&](const Rule& rule) { return rule.id == id; });
    return at == rules.end() ? nullptr : &*at;
}

Result<Rules> load_rules(std::string_view text) {
    const auto records = read_records(text);
    if (!records) return records.error();
    auto sources = read_sources(*records);
    if (!sources) return sources.error();
    Rules rules;
    rules.sources = std::move(*sources);
    for (const Record& record : *records) {
        if (record.sort == "source") continue;
        if (record.sort == "caution") {
            if (const Status keys = only_keys(record, {"say", "source"}); !keys) return keys.error();
            const auto say = sentence_of(record, "say");
            if (!say) return say.error();
            const auto source = source_text(record, rules.sources);
            if (!source) return source.error();
            rules.always.push_back({record.id, *say, source->text});
        } else if (record.sort == "rule") {
            auto rule = read_rule(record, rules.sources);
            if (!rule) return rule.error();
            rules.rules.push_back(std::move(*rule));
        } else {
            return record_error(record.line, "unknown sort of record " + in_quotes(record.sort));
        }
    }
    if (rules.always.empty()) return record_error(1, "there is no caution that is always shown");
    if (rules.rules.empty()) return record_error(1, "there is no rule");
    if (const Status used = all_used(*records, rules.sources); !used) return used.error();
    return rules;
}

const Result<Rules>& built_in_rules() {
    static const Result<Rules> rules = load_rules({reinterpret_cast<const char*>(care_rules_bytes), care_rules_size});
    return rules;
}

}  // namespace kempt::care
