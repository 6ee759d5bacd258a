#include "care/records.h"

#include <algorithm>
#include <set>

namespace kempt::care {
namespace {

constexpr std::size_t most_bytes = 1 << 20;  // a thousand rules are a third of it

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
    while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
    return text;
}

// Lower-case letters, digits and hyphens.
bool is_id(std::string_view text) {
    return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
    });
}

}  // namespace

const Field* Record::find(std::string_view key) const {
    const auto at = std::find_if(fields.begin(), fields.end(), [&](const Field& field) { return field.key == key; });
    return at == fields.end() ? nullptr : &*at;
}

Error record_error(int line, const std::string& what) {
    return {ErrorKind::invalid, "rules-invalid", "Line " + std::to_string(line) + " of the rules: " + what + ".",
            "No rule was taken from it.", "Correct the line."};
}

std::string in_quotes(std::string_view text) {
    std::string out(1, '\'');
    out.append(text);
    out.push_back('\'');
    return out;
}

std::vector<std::string> listed(std::string_view text) {
    std::vector<std::string> parts;
    while (!text.empty()) {
        const std::size_t comma = std::min(text.find(','), text.size());
        if (const auto part = trimmed(text.substr(0, comma)); !part.empty()) parts.emplace_back(part);
        text.remove_prefix(std::min(text.size(), comma + 1));
    }
    return parts;
}

Result<std::vector<Record>> read_records(std::string_view text) {
    if (text.size() > most_bytes) return record_error(1, "the file is larger than 1 MiB");
    std::vector<Record> records;
    std::set<std::pair<std::string, std::string>> seen;
    int number = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(text.size(), end + 1));
        ++number;
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        if (std::any_of(line.begin(), line.end(),
                        [](char c) { return static_cast<unsigned char>(c) < ' ' || c == 127; }))
            return record_error(number, "a tab or control character");
        const std::string_view plain = trimmed(line);
        if (plain.empty() || plain.front() == '#') continue;
        if (plain.front() == '[' && line.front() == '[') {
            const std::size_t space = plain.find(' ');
            if (plain.back() != ']' || space == std::string_view::npos)
                return record_error(number, "a record begins as [sort id]");
            Record record{std::string(plain.substr(1, space - 1)),
                          std::string(trimmed(plain.substr(space + 1, plain.size() - space - 2))),
                          number,
                          {}};
            if (!is_id(record.sort) || !is_id(record.id))
                return record_error(number, "an id is made of a-z, 0-9 and hyphens");
            if (!seen.insert({record.sort, record.id}).second)
                return record_error(number, in_quotes(record.id) + " is there twice");
            records.push_back(std::move(record));
            continue;
        }
        if (records.empty()) return record_error(number, "a line outside a record");
        std::vector<Field>& fields = records.back().fields;
        if (line.front() == ' ') {
            if (fields.empty()) return record_error(number, "nothing to go on from");
            std::string& value = fields.back().value;
            if (!value.empty()) value.push_back(' ');
            value.append(plain);
            continue;
        }
        const std::size_t equals = plain.find('=');
        if (equals == std::string_view::npos) return record_error(number, "'=' is missing");
        const std::string key(trimmed(plain.substr(0, equals)));
        if (!is_id(key)) return record_error(number, "a key is made of a-z, 0-9 and hyphens");
        if (records.back().find(key)) return record_error(number, in_quotes(key) + " is there twice");
        fields.push_back({key, std::string(trimmed(plain.substr(equals + 1))), number});
    }
    return records;
}

}  // namespace kempt::care
