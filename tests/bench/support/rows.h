// The benches' CSV rows, and figures as text.
#pragma once

#include <cmath>
#include <map>
#include <string>
#include <vector>

namespace bench {

using Row = std::map<std::string, std::string>;

// A line that begins like the file's first cell is a heading (files may be joined); the rest are rows under it.
[[nodiscard]] std::vector<Row> read_csv(const std::string& path);
// NaN for a cell that is missing or empty.
[[nodiscard]] double number(const Row& row, const std::string& name);
[[nodiscard]] std::string fixed(double value, int digits);  // "-" for NaN

}  // namespace bench
