// The part "## Shine" of docs/accuracy.md from the rows of the two other modes.
#include <algorithm>
#include <cmath>
#include <iostream>
#include <numeric>

#include "bench/shine/modes.h"
#include "bench/shine/shots.h"
#include "bench/support/tables.h"
#include "change/change.h"

namespace bench {

namespace {

// Ranks from 0, ties share their mean.
std::vector<double> ranks(const std::vector<double>& v) {
    std::vector<size_t> order(v.size());
    std::iota(order.begin(), order.end(), 0);
    std::sort(order.begin(), order.end(), [&](size_t a, size_t b) { return v[a] < v[b]; });
    std::vector<double> out(v.size());
    for (size_t i = 0; i < order.size();) {
        size_t j = i;
        while (j < order.size() && v[order[j]] == v[order[i]]) ++j;
        for (size_t k = i; k < j; ++k) out[order[k]] = 0.5 * static_cast<double>(i + j - 1);
        i = j;
    }
    return out;
}

// Spearman's rank correlation: Pearson's of the ranks.
double spearman(const std::vector<double>& a, const std::vector<double>& b) {
    if (a.size() < 3) return std::nan("");
    const auto x = ranks(a), y = ranks(b);
    const double n = static_cast<double>(x.size()), m = 0.5 * (n - 1);
    double xy = 0, xx = 0, yy = 0;
    for (size_t i = 0; i < x.size(); ++i)
        xy += (x[i] - m) * (y[i] - m), xx += (x[i] - m) * (x[i] - m), yy += (y[i] - m) * (y[i] - m);
    return xy / std::sqrt(xx * yy);
}

std::vector<std::string> hair_labels() {
    return {render::hair_names, render::hair_names + render::hair_colours};
}

void rank_table(std::ostream& out, const std::vector<Row>& rows) {
    out << "| hair | photos | rank correlation of `shine_contrast` with the true share of surface light | with the "
           "gloss "
           "put in |\n| --- | --- | --- | --- |\n";
    const auto labels = hair_labels();
    for (size_t k = 0; k < labels.size(); ++k) {
        std::vector<double> read, strength, gloss;
        for (const Row& row : rows) {
            const double value = number(row, "shine_contrast");
            if (row.at("hair") != std::to_string(k) || std::isnan(value)) continue;
            read.push_back(value), strength.push_back(number(row, "strength")), gloss.push_back(number(row, "gloss"));
        }
        out << "| " << labels[k] << " | " << read.size() << " | " << fixed(spearman(read, strength), 3) << " | "
            << fixed(spearman(read, gloss), 2) << " |\n";
    }
    out << "\n";
}

// How often light_differs speaks: between visits under the same lamps, and under another chair's.
void light_line(std::ostream& out, const std::vector<Row>& pairs) {
    int same = 0, same_said = 0, other = 0, other_said = 0;
    for (const Row& row : pairs) {
        if (row.at("visit") == "A") continue;
        const bool said = row.at("differs") == "1";
        if (row.at("visit") == "D")
            ++other, other_said += said;
        else
            ++same, same_said += said;
    }
    out << "Light: of " << same << " shots under the same lamps set up again "
        << fixed(100.0 * same_said / std::max(1, same), 1) << " % were called not comparable, of " << other
        << " under another chair's lamps " << fixed(100.0 * other_said / std::max(1, other), 1) << " %.\n\n";
}

// What missing another chair's lamps does: the hair of visit A under them (visit D), none of whose shots light_differs
// stops, judged as the program would. The hair is the same, so that whatever is called is the lamps' doing.
void missed_light_table(std::ostream& out, const std::vector<Row>& rows, const std::vector<Spec>& specs) {
    using namespace kempt::change;
    out << "Hair under another chair's lamps that were not noticed (both shots), judged against visit A:\n\n"
           "| reading | visits | called changed, though the hair is the same | mean size of the move | smallest "
           "detectable "
           "change (median) |\n| --- | --- | --- | --- | --- |\n";
    for (const Spec& spec : specs) {
        std::map<std::string, std::map<char, std::vector<double>>> pairs;
        std::map<std::string, bool> noticed;
        for (const Row& row : rows) {
            const char letter = row.at("visit").at(0);
            if (letter == 'D' && row.at("differs") == "1") noticed[row.at("pair")] = true;
            auto& shots = pairs[row.at("pair")][letter];
            if (const double value = number(row, spec.reading); !std::isnan(value)) shots.push_back(value);
        }
        std::vector<std::vector<double>> book;
        for (const auto& [key, visits] : pairs)
            for (const auto& [letter, shots] : visits)
                if (letter != 'D') book.push_back(shots);
        const Spread rest = pooled_for(spec.reading, book);
        int missed = 0, called = 0;
        double moved = 0;
        std::vector<double> smallest;
        for (auto& [key, visits] : pairs) {
            const auto &a = visits['A'], &d = visits['D'];
            if (a.size() < 2 || d.size() < 2 || noticed[key]) continue;
            const Judgement verdict = judge(spec.reading, {a, {}, ""}, {d, {}, ""},
                                            spread_for(spec.reading, pooled_for(spec.reading, {a, d}), rest));
            ++missed;
            called += verdict.verdict == Verdict::improved || verdict.verdict == Verdict::worse ||
                      verdict.verdict == Verdict::changed;
            moved += std::abs(0.5 * (d[0] + d[1] - a[0] - a[1]));
            smallest.push_back(verdict.smallest_detectable);
        }
        std::sort(smallest.begin(), smallest.end());
        out << "| `" << spec.reading << "` | " << missed << " | " << fixed(100.0 * called / std::max(1, missed), 1)
            << " % | " << fixed(moved / std::max(1, missed), 3) << " " << spec.unit << " | "
            << fixed(smallest.empty() ? std::nan("") : smallest[smallest.size() / 2], 3) << " |\n";
    }
    out << "\n";
}

}  // namespace

int shine_table(const std::string& rows_path, const std::string& pairs_path) {
    const auto rows = read_csv(rows_path), pairs = read_csv(pairs_path);
    const std::vector<Spec> specs{{"shine_contrast", "", "rank correlation 0.97 or more", true},
                                  {"shine_width", "mm", "within 10 %", true},
                                  {"luster", "1/mm", "", true},
                                  {"alignment", "", "", false}};
    std::ostream& out = std::cout;
    out << "## Shine\n\n"
           "Panels of hair over a round head, lit from one side and from all around, with the card beside them; truth "
           "from the model's own light. From photo to photo differ: hair (colour within its class, mixed fibres, gaps, "
           "waves, flyaway), gloss (0.1-0.9), roughness of the cuticle (5-10 degrees), head (radius 60-140 mm), lamps "
           "(direction, share 50-85 %, colour, evenness), camera (8-16 px/mm, tilt to 12 degrees), phone, card's "
           "place, and "
           "the hand that draws the region (1 mm).\n\n";
    reading_table(out, rows, specs);
    refusal_line(out, rows, specs);
    rank_table(out, rows);
    class_table(out, rows, specs[1], "hair", "hair", hair_labels());
    class_table(out, rows, specs[0], "hair", "hair", hair_labels());
    class_table(out, rows, specs[2], "hair", "hair", hair_labels());
    out << "On the scales that these two are judged on (docs/reliability.md), contrast by its square root and "
           "alignment "
           "by the log of what it lacks to 1.1: a step of 0.01 is told as 1 %.\n\n";
    const std::vector<Spec> scaled{specs[0], specs[3]};
    share_table(out, on_scale(rows, scaled), scaled, "hair", "hair", hair_labels());
    out << "Re-photographed heads (two shots a visit, lamps set up again, region drawn again); the change to be found "
           "is "
           "a smoothing service: gloss x 1.8, lobe x 0.75, nine of ten flyaway hairs laid. In salt-and-pepper hair, "
           "where "
           "the white fibres leave a fifth of that change of contrast, gloss x 3, 0.9 at most.\n\n";
    verdict_table(out, pairs, specs);
    verdict_class_table(out, pairs, specs, "hair", "hair", hair_labels());
    light_line(out, pairs);
    missed_light_table(out, pairs, {specs[0], specs[1], specs[2]});
    return 0;
}

}  // namespace bench
