// Care rules as data: what speaks against a service and what to check first. Read from text, checked, never changed.
//
//   [source sishi-2019]            cite, read (text, abstract or report: how far it was read)
//   [caution strand-and-patch]     say, source                      always shown
//   [rule thio-on-hydroxide]       level = stop|caution|note        scope = client|service|part|section
//                                  when (expression.h), reason, remedy, source
//                                  may: wait_days and wait_after (a family), choose (a kind of service)
//   source: ids of sources, 'common-practice', or both, with commas.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "care/expression.h"
#include "care/records.h"
#include "core/result.h"

namespace kempt::care {

enum class RuleLevel { stop, caution, note };  // in order of weight
[[nodiscard]] std::string_view word_of(RuleLevel level);
[[nodiscard]] std::string_view word_of(Scope scope);

struct Source {
    std::string id, cite, read;
    int line = 0;
};
// What a rule says of itself when nothing was published, and the source id that stands for it.
inline constexpr std::string_view common_practice = "common practice, no source";
inline constexpr std::string_view common_practice_id = "common-practice";

struct Rule {
    std::string id;
    RuleLevel level = RuleLevel::note;
    Scope scope = Scope::client;
    std::string condition;  // as written
    Expression when;
    std::string reason, remedy;
    std::string source;      // ready to print: citations joined by "; "
    bool published = false;  // at least one citation
    std::optional<int> wait_days;
    const Family* wait_after = nullptr;
    std::optional<Kind> choose;  // what to take instead, or to even out with
    int line = 0;
};

struct Caution {
    std::string id, text, source;
};

struct Rules {
    std::vector<Source> sources;
    std::vector<Caution> always;
    std::vector<Rule> rules;  // in the file's order
    [[nodiscard]] const Rule* find(std::string_view id) const;
};

// Errors: invalid, with the line number: unknown sort, key, level, scope, fact, family, kind or source; a part left
// out; a condition that its scope cannot answer; a text that promises safety; a source that no rule uses.
[[nodiscard]] Result<Rules> load_rules(std::string_view text);

// Kempt's own rules, from analysis/care/rules/care.rules.
[[nodiscard]] const Result<Rules>& built_in_rules();

// For this room's other files of records (home care): the sources among them; a printable source field.
[[nodiscard]] Result<std::vector<Source>> read_sources(const std::vector<Record>& records);
struct SourceText {
    std::string text;
    bool published = false;
};
[[nodiscard]] Result<SourceText> source_text(const Record& record, const std::vector<Source>& sources);
// Says a text that something is safe or harmless? A safety data sheet may be named.
[[nodiscard]] bool promises_safety(std::string_view text);
// The value of a key that must be there and be a sentence.
[[nodiscard]] Result<std::string> sentence_of(const Record& record, std::string_view key);
// The same without its full stop, to go on from.
[[nodiscard]] std::string without_stop(std::string sentence);
// Every key of the record is one of these.
[[nodiscard]] Status only_keys(const Record& record, const std::vector<std::string_view>& keys);

}  // namespace kempt::care
