// Reads the tables of this folder: lines that start with # are notes, the first other line names the columns.
#pragma once

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace kempt::reference {

struct Table {
    std::map<std::string, size_t> columns;
    std::vector<std::vector<double>> rows;

    [[nodiscard]] std::vector<double> column(const std::string& name) const {
        std::vector<double> values;
        for (const auto& row : rows) values.push_back(row.at(columns.at(name)));
        return values;
    }
};

// name: file in tests/reference; the tests run in the repository root. Throws when it cannot be read or a row is short.
inline Table read_csv(const std::string& name) {
    std::ifstream file("tests/reference/" + name);
    if (!file) throw std::runtime_error("cannot read tests/reference/" + name + "; run in the repository root");
    Table table;
    std::string line;
    while (std::getline(file, line)) {
        if (line.empty() || line[0] == '#') continue;
        std::stringstream cells(line);
        std::string cell;
        const bool head = table.columns.empty();
        std::vector<double> row;
        while (std::getline(cells, cell, ',')) {
            if (head)
                table.columns.emplace(cell, table.columns.size());
            else
                row.push_back(std::stod(cell));
        }
        if (head) continue;
        if (row.size() != table.columns.size()) throw std::runtime_error("a row of " + name + " has another length");
        table.rows.push_back(row);
    }
    return table;
}

}  // namespace kempt::reference
