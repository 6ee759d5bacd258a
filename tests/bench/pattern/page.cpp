#include "bench/pattern/page.h"

#include <cmath>
#include <map>

#include "bench/pattern/cases.h"
#include "bench/support/tables.h"
#include "change/reading_traits.h"

namespace bench {

namespace {

const std::vector<Spec> specs = {{"curve_diameter", "mm", "error <= 10 %; 90-98 %", true},
                                 {"wave_ratio", "-", "error <= 3 %; 90-98 %", true},
                                 {"strand_length", "mm", "error <= 2 %; 90-98 %", true}};

// How far the wave ratio must have changed, on its scale, for a changed visit to count as one with the documented
// change (docs/reliability.md): it falls by a third above 0.97 (0.41 on the scale), give or take a third of that.
constexpr double least_change = 0.27, most_change = 0.55;

// True values of changed visits that changed by less or more are left out of the power.
std::vector<Row> with_documented_change(std::vector<Row> pairs) {
    const std::string truth = "wave_ratio_true";
    const auto scale = kempt::change::scale_of("wave_ratio");
    std::map<std::string, double> before;
    for (const Row& row : pairs)
        if (row.at("visit") == "A") before[row.at("pair")] = number(row, truth);
    for (Row& row : pairs) {
        if (row.at("visit") != "C") continue;
        const double by = std::abs(scale.of(number(row, truth)) - scale.of(before[row.at("pair")]));
        if (!(by >= least_change && by <= most_change)) row.at(truth) = "-1";
    }
    return pairs;
}

// SD on the scale of the reading within a visit and between visits of the same strands laid down anew.
void spread_table(std::ostream& out, const std::vector<Row>& pairs) {
    out << "| reading | SD of shots within a visit | SD between visits that shots cannot show |\n| --- | --- | --- |\n";
    for (const Spec& spec : specs) {
        const auto scale = kempt::change::scale_of(spec.reading);
        std::map<std::string, std::map<std::string, std::vector<double>>> visits;
        for (const Row& row : pairs)
            if (const double v = scale.of(number(row, spec.reading)); std::isfinite(v) && row.at("visit") != "C")
                visits[row.at("pair")][row.at("visit")].push_back(v);
        double within = 0, between = 0;
        int n_within = 0, n_between = 0;
        for (auto& [pair, of] : visits) {
            for (auto& [visit, shots] : of)
                if (shots.size() == 2) within += std::pow(shots[0] - shots[1], 2) / 2, ++n_within;
            if (of["A"].size() == 2 && of["B"].size() == 2) {
                between += std::pow((of["A"][0] + of["A"][1] - of["B"][0] - of["B"][1]) / 2, 2) / 2;
                ++n_between;
            }
        }
        within /= std::max(1, n_within);
        between = std::max(0.0, between / std::max(1, n_between) - within / 2);
        out << "| `" << spec.reading << "` | " << fixed(100 * std::sqrt(within), 2) << " % | "
            << fixed(100 * std::sqrt(between), 2) << " % |\n";
    }
    out << "\n";
}

// Refusals where a person could follow the strands, and where nobody could (merged_strands), for more than a third of
// the strands in doubt refuse a photo.
void visible_refusals(std::ostream& out, const std::vector<Row>& rows) {
    const auto merged = [](const Row& row) { return 3 * number(row, "merged") > number(row, "strands_true"); };
    out << "| strands in the photo | photos |";
    for (const Spec& spec : specs) out << " `" << spec.reading << "` refused |";
    out << "\n| --- | --- | --- | --- | --- |\n";
    for (const bool hidden : {false, true}) {
        const auto take = [&](const Row& row) { return merged(row) == hidden; };
        const Errors first = errors_of(rows, specs[0].reading, take);
        const double photos = first.n + first.refused;
        out << (hidden ? "| more than a third run into a neighbouring turn or strand over 2 mm or more (nearer than "
                         "2.5 px, where two lines look like one) | "
                       : "| two thirds or more lie apart | ")
            << fixed(photos, 0) << " |";
        for (const Spec& spec : specs) {
            const Errors here = errors_of(rows, spec.reading, take);
            out << " " << here.refused << " (" << fixed(100 * here.refused / photos, 1) << " %) |";
        }
        out << "\n";
    }
    out << "\n";
}

}  // namespace

void pattern_page(std::ostream& out, const std::vector<Row>& rows, const std::vector<Row>& pairs) {
    out << "## Pattern and stretch\n\nFour to eight strands that do not touch, laid on the sheet; whole sheets at "
           "10-14 px/mm. Truth is the median over the strands that\nlie there, from their drawn paths. The stretch of "
           "two photos follows from two `strand_length`s.\n\n";
    reading_table(out, rows, specs);
    refusal_line(out, rows, specs);
    visible_refusals(out, rows);
    const auto labels = [](const char* const* of, int count) { return std::vector<std::string>(of, of + count); };
    out << "### By class\n\nMean error in % of the truth. Wanted: each class within 1.5 times the mean error over all "
           "classes, or refused.\n\n";
    share_table(out, rows, specs, "pattern as the hair grows", "pattern", labels(pattern_names, pattern_classes));
    share_table(out, rows, specs, "hair", "hair", labels(render::hair_names, render::hair_colours));
    out << "The same on the scales that these readings are judged on (docs/reliability.md), where the diameter of a "
           "nearly straight strand counts by its curvature and a wave ratio by what it has above a straight strand's: "
           "a step of 0.01 is told as 1 %.\n\n";
    share_table(out, on_scale(rows, specs), specs, "pattern as the hair grows", "pattern",
                labels(pattern_names, pattern_classes));
    share_table(out, on_scale(rows, specs), specs, "hair", "hair", labels(render::hair_names, render::hair_colours));
    out << "### Verdicts\n\nVisits of two shots of a lie; A and B the same strands laid down anew, C with the curls "
           "loosened (coils 1.3 times as wide and 1.7 times\nas drawn out, waves 1.3 times as flat) and 5 % longer. "
           "Judged on the scales of docs/reliability.md. No direction is better than the other: 'called' is\nany "
           "change; it "
           "counts when its sign is the true one. Of changed wave ratios those count whose true one fell by a quarter "
           "to\ntwo fifths above 0.97 (documented change: a third); over all changed ones, the slightest too, see the "
           "last row.\n\n";
    verdict_table(out, with_documented_change(pairs), specs);
    verdict_class_table(out, with_documented_change(pairs), specs, "hair", "hair",
                        labels(render::hair_names, render::hair_colours));
    verdict_class_table(out, with_documented_change(pairs), specs, "pattern", "pattern",
                        labels(pattern_names, pattern_classes));
    out << "All changed wave ratios:\n\n";
    verdict_table(out, pairs, {specs[1]});
    spread_table(out, pairs);
}

}  // namespace bench
