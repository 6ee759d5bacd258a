#include "care/rules_document.h"

#include <algorithm>

namespace kempt::care {
namespace {

// A cell of a table: no bar, no line end.
std::string cell(std::string_view text) {
    std::string out;
    for (const char c : text) {
        if (c == '|')
            out.push_back('/');
        else
            out.push_back(c == '\n' ? ' ' : c);
    }
    return out;
}

void row(std::string& to, const std::vector<std::string>& cells) {
    to += "|";
    for (const std::string& text : cells) to.append(" ").append(cell(text)).append(" |");
    to += "\n";
}

void head(std::string& to, const std::vector<std::string>& names) {
    row(to, names);
    row(to, std::vector<std::string>(names.size(), "---"));
}

std::string code(std::string_view text) {
    return std::string("`").append(text).append("`");
}

void rules_table(std::string& to, const Rules& rules, RuleLevel level) {
    head(to, {"rule", "asked of", "when", "reason", "what to do", "source"});
    for (const Rule& rule : rules.rules) {
        if (rule.level != level) continue;
        std::string remedy = rule.remedy;
        if (rule.choose) remedy.append(" (Choose: ").append(word_of(*rule.choose)).append(".)");
        row(to,
            {code(rule.id), std::string(word_of(rule.scope)), code(rule.condition), rule.reason, remedy, rule.source});
    }
}

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (const std::string& part : parts) text.append(text.empty() ? "" : ", ").append(part);
    return text;
}

void words_table(std::string& to) {
    to +=
        "\n## Facts that a condition may name\n\nA fact in brackets takes a family. Whatever nobody knows is "
        "asked.\n\n";
    head(to, {"fact", "asked as"});
    for (const Fact& fact : facts()) {
        std::string name(fact.name);
        if (fact.takes_family) name += "(family)";
        std::string question(fact.question);
        if (const auto at = question.find('%'); at != std::string::npos) question.replace(at, 1, "...");
        row(to, {code(name), question.empty() ? "from the plan" : question});
    }
    to += "\n## Families of services\n\n";
    head(to, {"family", "kinds"});
    for (const Family& family : families()) {
        std::vector<std::string> kinds;
        for (const Kind kind : family.kinds) kinds.emplace_back(word_of(kind));
        row(to, {code(family.name), joined(kinds)});
    }
}

}  // namespace

std::string rules_document(const Rules& rules, const HomeCareRules& home) {
    std::string text =
        "# Care rules\n\n"
        "Made from `analysis/care/rules/care.rules` and `home.rules` by the test `care` (write it anew with\n"
        "`KEMPT_WRITE_CARE_RULES=1 build/release/tests/analysis/care/test_care --run_test=document` from the top "
        "folder).\n\n"
        "Kempt says what speaks against a service and what to check first. When no rule speaks, that clears nothing. "
        "A\n"
        "stop is never lifted by another rule; only another state of the client or another plan ends it. What a rule "
        "needs\nand nobody knows becomes a question. \"Common practice, no source\" means that the trade does it so "
        "and "
        "no\npublication was found.\n\n";
    const auto count = [&](RuleLevel level) {
        return std::to_string(std::count_if(rules.rules.begin(), rules.rules.end(),
                                            [&](const Rule& rule) { return rule.level == level; }));
    };
    const auto published =
        std::count_if(rules.rules.begin(), rules.rules.end(), [](const Rule& r) { return r.published; });
    text += std::to_string(rules.rules.size()) + " rules: " + count(RuleLevel::stop) + " stops, " +
            count(RuleLevel::caution) + " cautions, " + count(RuleLevel::note) + " notes; " +
            std::to_string(published) + " with a publication behind them.\n\n## Always shown\n\n";
    head(text, {"caution", "says", "source"});
    for (const Caution& caution : rules.always) row(text, {code(caution.id), caution.text, caution.source});
    for (const auto& [level, title] :
         {std::pair{RuleLevel::stop, "Stops"}, {RuleLevel::caution, "Cautions"}, {RuleLevel::note, "Notes"}}) {
        text.append("\n## ").append(title).append("\n\n");
        rules_table(text, rules, level);
    }
    text += "\n## Home care\n\n";
    head(text, {"tip", "when", "says", "minutes a week", "source"});
    for (const Tip& tip : home.tips)
        row(text, {code(tip.id), code(tip.condition), tip.text, std::to_string(static_cast<int>(tip.minutes_a_week)),
                   tip.source});
    text += "\n## Sources\n\nRead: the text itself, its abstract, or only another's report of it.\n\n";
    head(text, {"source", "read", "rules and tips that point to it"});
    std::vector<Source> sources = rules.sources;
    for (const Source& source : home.sources)
        if (std::none_of(sources.begin(), sources.end(), [&](const Source& s) { return s.cite == source.cite; }))
            sources.push_back(source);
    for (const Source& source : sources) {
        std::vector<std::string> users;
        const auto add = [&](const std::string& id, const std::string& cited) {
            if (cited.find(source.cite) != std::string::npos) users.push_back(id);
        };
        for (const Caution& caution : rules.always) add(caution.id, caution.source);
        for (const Rule& rule : rules.rules) add(rule.id, rule.source);
        for (const Tip& tip : home.tips) add(tip.id, tip.source);
        row(text, {source.cite, source.read, joined(users)});
    }
    words_table(text);
    return text;
}

}  // namespace kempt::care
