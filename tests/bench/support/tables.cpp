#include "bench/support/tables.h"

#include <algorithm>
#include <cmath>

#include "change/reading_traits.h"

namespace bench {

double Errors::below(double share) const {
    if (all.empty()) return std::nan("");
    std::vector<double> sorted = all;
    std::sort(sorted.begin(), sorted.end());
    return sorted[std::min(sorted.size() - 1, static_cast<size_t>(share * static_cast<double>(sorted.size())))];
}

Errors errors_of(const std::vector<Row>& rows, const std::string& reading,
                 const std::function<bool(const Row&)>& take) {
    Errors e;
    for (const Row& row : rows) {
        if (take && !take(row)) continue;
        const double truth = number(row, reading + "_true"), value = number(row, reading);
        if (std::isnan(value)) {
            ++e.refused;
            continue;
        }
        if (truth < 0) continue;
        ++e.n;
        e.all.push_back(std::abs(value - truth));
        e.absolute += std::abs(value - truth);
        e.bias += value - truth;
        if (truth > 0) e.relative += std::abs(value - truth) / truth;
        e.worst = std::max(e.worst, std::abs(value - truth));
        e.held += truth >= number(row, reading + "_low") - 1e-4 && truth <= number(row, reading + "_high") + 1e-4;
    }
    return e;
}

void reading_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs) {
    out << "| reading | photos | refused | mean absolute error | bias | 95 % of errors below | worst | intervals that "
           "hold the truth | wanted |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n";
    for (const Spec& spec : specs) {
        const Errors e = errors_of(rows, spec.reading);
        out << "| `" << spec.reading << "` | " << e.n << " | " << e.refused << " | " << fixed(e.mean(), 2) << " "
            << spec.unit;
        if (spec.relative) out << " (" << fixed(100 * e.mean_share(), 1) << " %)";
        out << " | " << fixed(e.bias / e.n, 2) << " | " << fixed(e.below(0.95), 2) << " | " << fixed(e.worst, 2)
            << " | " << fixed(100.0 * e.held / e.n, 1) << " % | " << spec.wanted << " |\n";
    }
    out << "\n";
}

void class_table(std::ostream& out, const std::vector<Row>& rows, const Spec& spec, const std::string& title,
                 const std::string& column, const std::vector<std::string>& labels) {
    const auto error = [&](const Errors& e) { return spec.relative ? 100 * e.mean_share() : e.mean(); };
    const double all = error(errors_of(rows, spec.reading));
    out << "| " << title << " | photos | refused | `" << spec.reading << "` error, "
        << (spec.relative ? std::string("% of the truth") : spec.unit)
        << " | ratio to the mean over all | bias |\n| --- | --- | --- | --- | --- | --- |\n";
    for (size_t k = 0; k < labels.size(); ++k) {
        const Errors e =
            errors_of(rows, spec.reading, [&](const Row& row) { return row.at(column) == std::to_string(k); });
        out << "| " << labels[k] << " | " << e.n << " | " << e.refused << " | " << fixed(error(e), 2) << " | "
            << fixed(error(e) / all, 2) << " | " << fixed(e.bias / e.n, 2) << " |\n";
    }
    out << "\n";
}

void share_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs,
                 const std::string& title, const std::string& column, const std::vector<std::string>& labels) {
    out << "| " << title << " | photos |";
    for (const Spec& spec : specs) out << " `" << spec.reading << "` error (ratio to all) | refused |";
    out << "\n| --- | --- |";
    for (size_t k = 0; k < specs.size(); ++k) out << " --- | --- |";
    out << "\n";
    for (size_t k = 0; k < labels.size(); ++k) {
        const auto take = [&](const Row& row) { return row.at(column) == std::to_string(k); };
        const Errors first = errors_of(rows, specs[0].reading, take);
        out << "| " << labels[k] << " | " << first.n + first.refused << " |";
        for (const Spec& spec : specs) {
            const Errors here = errors_of(rows, spec.reading, take);
            const double all = errors_of(rows, spec.reading).mean_share();
            out << " " << fixed(100 * here.mean_share(), 2) << " % (" << fixed(here.mean_share() / all, 2) << ") | "
                << here.refused << " |";
        }
        out << "\n";
    }
    out << "\n";
}

std::vector<Row> on_scale(std::vector<Row> rows, const std::vector<Spec>& specs) {
    for (Row& row : rows)
        for (const Spec& spec : specs)
            for (const char* part : {"", "_true"}) {
                const double place = kempt::change::scale_of(spec.reading).of(number(row, spec.reading + part));
                if (std::isfinite(place)) row[spec.reading + part] = fixed(std::exp(place), 6);
            }
    return rows;
}

void refusal_line(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs) {
    std::map<std::string, int> codes;
    for (const Row& row : rows)
        for (const Spec& spec : specs)
            if (const auto at = row.find(spec.reading + "_refused"); at != row.end() && !at->second.empty())
                ++codes[spec.reading + " " + at->second];
    out << "Refusals: ";
    if (codes.empty()) out << "none.";
    for (const auto& [code, count] : codes) out << code << " " << count << "; ";
    out << "\n\n";
}

}  // namespace bench
