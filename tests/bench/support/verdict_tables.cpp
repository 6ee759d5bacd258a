#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "bench/support/tables.h"
#include "change/change.h"

namespace bench {

namespace {

using kempt::change::Spread;

std::string within_words(const Spread& spread, const Spec& spec) {
    using Kind = kempt::change::Scale::Kind;
    if (spread.scale.kind == Kind::logarithm) return fixed(100 * spread.sd, 1) + " %";
    if (spread.scale.kind == Kind::lack)
        return fixed(100 * spread.sd, 1) + " % of the lack to " + fixed(spread.scale.less, 1);
    if (spread.scale.kind == Kind::root) return fixed(spread.sd, 3) + " of the square root";
    return fixed(spread.sd, 2) + " " + spec.unit;
}

struct Visit {
    std::vector<double> shots;
    std::vector<kempt::change::Stated> stated;  // where the table has intervals
    double truth = 0;
    int truths = 0;
    [[nodiscard]] double true_value() const { return truth / truths; }
};

struct Verdicts {
    int unchanged = 0, called = 0, changed = 0, found = 0;
    double change = 0;
    std::vector<double> smallest;
};

struct Judged {
    Spread book;
    std::map<std::string, Verdicts> by_class;
};
// By the value of `column` ("": all are one class), judged as the program does it.
Judged judged_pairs(const std::vector<Row>& rows, const std::string& reading, const std::string& column) {
    using namespace kempt::change;
    std::map<std::string, std::array<Visit, 3>> pairs;
    std::map<std::string, std::string> classes;
    for (const Row& row : rows) {
        const char letter = row.at("visit").at(0);
        if (letter < 'A' || letter > 'C') continue;
        Visit& visit = pairs[row.at("pair")][static_cast<size_t>(letter - 'A')];
        if (!column.empty()) classes[row.at("pair")] = row.at(column);
        if (const double value = number(row, reading); !std::isnan(value)) {
            visit.shots.push_back(value);
            if (row.contains(reading + "_low"))
                visit.stated.push_back({value, number(row, reading + "_low"), number(row, reading + "_high")});
        }
        if (const double truth = number(row, reading + "_true"); truth >= 0) visit.truth += truth, ++visit.truths;
    }
    std::vector<std::vector<double>> shots;
    for (const auto& [key, visits] : pairs)
        for (const Visit& visit : visits) shots.push_back(visit.shots);
    Judged out{pooled_for(reading, shots), {}};
    for (const auto& [key, visits] : pairs) {
        Verdicts& of = out.by_class[column.empty() ? "" : classes[key]];
        const auto& [a, b, c] = visits;
        const auto judged = [&](const Visit& from, const Visit& to) {
            return judge(reading, {from.shots, {}, "", from.stated}, {to.shots, {}, "", to.stated},
                         spread_for(reading, pooled_for(reading, {from.shots, to.shots}), out.book));
        };
        if (a.shots.size() >= 2 && b.shots.size() >= 2) {
            const Judgement verdict = judged(a, b);
            ++of.unchanged;
            of.called += verdict.verdict == Verdict::improved || verdict.verdict == Verdict::worse ||
                         verdict.verdict == Verdict::changed;
            of.smallest.push_back(verdict.smallest_detectable);
        }
        if (a.shots.size() >= 2 && c.shots.size() >= 2 && a.truths > 0 && c.truths > 0) {
            const double by = c.true_value() - a.true_value();
            const Better better = better_direction(reading);
            const Verdict right = better == Better::neither                ? Verdict::changed
                                  : (by > 0) == (better == Better::higher) ? Verdict::improved
                                                                           : Verdict::worse;
            ++of.changed;
            of.change += by;
            of.found += judged(a, c).verdict == right;
        }
    }
    return out;
}

std::string share(int of, int all) {
    return all > 0 ? fixed(100.0 * of / all, 1) + " %" : "-";
}

}  // namespace

void verdict_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs) {
    out << "| reading | pairs with no change | called improved or worse | pairs with a change (mean true change) | "
           "called "
           "in its direction | within-visit SD | smallest detectable change (median) |\n"
           "| --- | --- | --- | --- | --- | --- | --- |\n";
    for (const Spec& spec : specs) {
        Judged judged = judged_pairs(rows, spec.reading, "");
        Verdicts& all = judged.by_class[""];
        std::sort(all.smallest.begin(), all.smallest.end());
        out << "| `" << spec.reading << "` | " << all.unchanged << " | " << share(all.called, all.unchanged) << " | "
            << all.changed << " (" << fixed(all.change / all.changed, 2) << " " << spec.unit << ") | "
            << share(all.found, all.changed) << " | " << within_words(judged.book, spec) << " | "
            << fixed(all.smallest.empty() ? std::nan("") : all.smallest[all.smallest.size() / 2], 2) << " |\n";
    }
    out << "\n";
}

void verdict_class_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs,
                         const std::string& title, const std::string& column, const std::vector<std::string>& labels) {
    out << "By class: called though nothing changed, of so many pairs; called in the right direction, of so many "
           "(mean true change).\n\n| "
        << title;
    std::vector<std::map<std::string, Verdicts>> all;
    for (const Spec& spec : specs) {
        all.push_back(judged_pairs(rows, spec.reading, column).by_class);
        out << " | `" << spec.reading << "`: false | right";
    }
    out << " |\n| ---";
    for (size_t i = 0; i < 2 * specs.size(); ++i) out << " | ---";
    out << " |\n";
    for (size_t k = 0; k < labels.size(); ++k) {
        out << "| " << labels[k];
        for (auto& of : all) {
            const Verdicts& one = of[std::to_string(k)];
            out << " | " << share(one.called, one.unchanged) << " of " << one.unchanged << " | "
                << share(one.found, one.changed) << " of " << one.changed;
            if (one.changed > 0) out << " (" << fixed(one.change / one.changed, 2) << ")";
        }
        out << " |\n";
    }
    out << "\n";
}

}  // namespace bench
