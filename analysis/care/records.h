// The plain text that rules are kept in: records of named lines.
//
//   # a comment
//   [rule bleach-on-hydroxide]
//   level  = stop
//   reason = A line may go on
//     on the next one, which then begins with spaces.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/result.h"

namespace kempt::care {

struct Field {
    std::string key, value;
    int line = 0;
};

struct Record {
    std::string sort, id;  // "rule", "bleach-on-hydroxide"
    int line = 0;
    std::vector<Field> fields;
    [[nodiscard]] const Field* find(std::string_view key) const;  // null when it is not there
};

// Errors: invalid, with the line (a line outside a record, a key twice, an id twice, not ASCII or UTF-8 control bytes,
// more than 1 MiB).
[[nodiscard]] Result<std::vector<Record>> read_records(std::string_view text);

// The error that every check of these files gives: "Line 12 of the rules: ...".
[[nodiscard]] Error record_error(int line, const std::string& what);

[[nodiscard]] std::string in_quotes(std::string_view text);

// "a, b, c" as a list without the spaces.
[[nodiscard]] std::vector<std::string> listed(std::string_view text);

}  // namespace kempt::care
