#include "bench/support/tables.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "change/change.h"

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

namespace {

std::string within_words(const kempt::change::Spread& spread, const Spec& spec) {
    using Kind = kempt::change::Scale::Kind;
    if (spread.scale.kind == Kind::logarithm) return fixed(100 * spread.sd, 1) + " %";
    if (spread.scale.kind == Kind::root) return fixed(spread.sd, 3) + " of the square root";
    return fixed(spread.sd, 2) + " " + spec.unit;
}

struct Visit {
    std::vector<double> shots;
    double truth = 0;
    int truths = 0;
    [[nodiscard]] double true_value() const { return truth / truths; }
};

}  // namespace

void verdict_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs) {
    using namespace kempt::change;
    out << "| reading | pairs with no change | called improved or worse | pairs with a change (mean true change) | "
           "called "
           "in its direction | within-visit SD | smallest detectable change (median) |\n"
           "| --- | --- | --- | --- | --- | --- | --- |\n";
    for (const Spec& spec : specs) {
        std::map<std::string, std::array<Visit, 3>> pairs;
        for (const Row& row : rows) {
            const char letter = row.at("visit").at(0);
            if (letter < 'A' || letter > 'C') continue;
            Visit& visit = pairs[row.at("pair")][static_cast<size_t>(letter - 'A')];
            if (const double value = number(row, spec.reading); !std::isnan(value)) visit.shots.push_back(value);
            if (const double truth = number(row, spec.reading + "_true"); truth >= 0)
                visit.truth += truth, ++visit.truths;
        }
        std::vector<std::vector<double>> book;
        for (const auto& [key, visits] : pairs)
            for (const Visit& visit : visits) book.push_back(visit.shots);
        const Spread rest = pooled_for(spec.reading, book);
        int unchanged = 0, called = 0, changed = 0, found = 0;
        double change = 0;
        std::vector<double> smallest;
        for (const auto& [key, visits] : pairs) {
            const auto& [a, b, c] = visits;
            const auto judged = [&](const Visit& from, const Visit& to) {
                return judge(spec.reading, {from.shots, {}, ""}, {to.shots, {}, ""},
                             spread_for(spec.reading, pooled_for(spec.reading, {from.shots, to.shots}), rest));
            };
            if (a.shots.size() >= 2 && b.shots.size() >= 2) {
                const Judgement verdict = judged(a, b);
                ++unchanged;
                called += verdict.verdict == Verdict::improved || verdict.verdict == Verdict::worse ||
                          verdict.verdict == Verdict::changed;
                smallest.push_back(verdict.smallest_detectable);
            }
            if (a.shots.size() >= 2 && c.shots.size() >= 2 && a.truths > 0 && c.truths > 0) {
                const double by = c.true_value() - a.true_value();
                const Better better = better_direction(spec.reading);
                const Verdict right = better == Better::neither                ? Verdict::changed
                                      : (by > 0) == (better == Better::higher) ? Verdict::improved
                                                                               : Verdict::worse;
                ++changed;
                change += by;
                found += judged(a, c).verdict == right;
            }
        }
        std::sort(smallest.begin(), smallest.end());
        out << "| `" << spec.reading << "` | " << unchanged << " | " << fixed(100.0 * called / unchanged, 1) << " % | "
            << changed << " (" << fixed(change / changed, 2) << " " << spec.unit << ") | "
            << fixed(100.0 * found / changed, 1) << " % | " << within_words(rest, spec) << " | "
            << fixed(smallest.empty() ? std::nan("") : smallest[smallest.size() / 2], 2) << " |\n";
    }
    out << "\n";
}

}  // namespace bench
