#include "bench/support/rows.h"

#include <cstdio>
#include <fstream>
#include <sstream>

namespace bench {

std::vector<Row> read_csv(const std::string& path) {
    std::ifstream in(path);
    std::vector<std::string> head;
    std::vector<Row> rows;
    for (std::string line; std::getline(in, line);) {
        std::vector<std::string> cells;
        std::stringstream split(line);
        for (std::string cell; std::getline(split, cell, ',');) cells.push_back(cell);
        if (cells.empty()) continue;
        if (head.empty() || cells.front() == head.front()) {
            head = cells;
            continue;
        }
        Row row;
        for (size_t i = 0; i < head.size(); ++i) row[head[i]] = i < cells.size() ? cells[i] : "";
        rows.push_back(row);
    }
    return rows;
}

double number(const Row& row, const std::string& name) {
    const auto at = row.find(name);
    return at == row.end() || at->second.empty() ? std::nan("") : std::stod(at->second);
}

std::string fixed(double value, int digits) {
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    return std::isnan(value) ? "-" : text;
}

}  // namespace bench
