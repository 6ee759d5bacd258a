// Checks that all record files of this room share.
#include <algorithm>
#include <cctype>

#include "care/rules.h"

namespace kempt::care {

Status only_keys(const Record& record, const std::vector<std::string_view>& keys) {
    for (const Field& field : record.fields)
        if (std::find(keys.begin(), keys.end(), field.key) == keys.end())
            return record_error(field.line, "unknown key " + in_quotes(field.key) + " in a " + record.sort);
    return Done{};
}

std::string without_stop(std::string sentence) {
    if (sentence.ends_with('.')) sentence.pop_back();
    return sentence;
}

bool promises_safety(std::string_view text) {
    std::string word, before;
    std::string_view rest = text;
    while (!rest.empty() || !word.empty()) {
        const char c = rest.empty() ? ' ' : rest.front();
        if (!rest.empty()) rest.remove_prefix(1);
        if (std::isalpha(static_cast<unsigned char>(c))) {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            continue;
        }
        if (word == "safe" || word == "safer" || word == "safest" || word == "safely" || word == "harmless")
            return true;
        if (word == "safety" && !rest.starts_with("data sheet")) return true;
        word.clear();
    }
    return false;
}

Result<std::string> sentence_of(const Record& record, std::string_view key) {
    const Field* field = record.find(key);
    if (!field) return record_error(record.line, in_quotes(key) + " is missing");
    if (field->value.size() < 10 || field->value.back() != '.')
        return record_error(field->line, in_quotes(key) + " is a full sentence with its full stop");
    if (promises_safety(field->value)) return record_error(field->line, "nothing is called safe");
    return field->value;
}

Result<std::vector<Source>> read_sources(const std::vector<Record>& records) {
    std::vector<Source> sources;
    for (const Record& record : records) {
        if (record.sort != "source") continue;
        if (const Status keys = only_keys(record, {"cite", "read"}); !keys) return keys.error();
        if (record.id == common_practice_id) return record_error(record.line, "common-practice needs no record");
        const Field *cite = record.find("cite"), *read = record.find("read");
        if (!cite || cite->value.empty()) return record_error(record.line, "'cite' is missing");
        if (!read || (read->value != "text" && read->value != "abstract" && read->value != "report"))
            return record_error(record.line, "'read' is text, abstract or report");
        sources.push_back({record.id, cite->value, read->value, record.line});
    }
    return sources;
}

Result<SourceText> source_text(const Record& record, const std::vector<Source>& sources) {
    const Field* field = record.find("source");
    if (!field) return record_error(record.line, "'source' is missing");
    SourceText out;
    bool practice = false;
    for (const std::string& id : listed(field->value)) {
        if (id == common_practice_id) {
            practice = true;
            continue;
        }
        const auto at = std::find_if(sources.begin(), sources.end(), [&](const Source& s) { return s.id == id; });
        if (at == sources.end()) return record_error(field->line, "unknown source " + in_quotes(id));
        out.text += (out.published ? "; " : "") + at->cite;
        out.published = true;
    }
    if (!practice && !out.published) return record_error(field->line, "'source' is empty");
    // With both, the figures of the sentence that the source does not print are the trade's.
    if (practice) out.text += out.published ? "; the rest common practice, no source" : std::string(common_practice);
    return out;
}

}  // namespace kempt::care
