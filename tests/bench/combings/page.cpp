#include "bench/combings/page.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <map>
#include <string>

#include "bench/combings/cases.h"
#include "bench/support/tables.h"
#include "render/scene.h"

namespace bench {

namespace {

// SD of a reading between visits A and B of the same strands thrown down anew, beyond what the repeats within a visit
// explain: half the variance of the difference of the visits' means, less the repeats' share.
void spread_line(std::ostream& out, const std::vector<Row>& pairs, const Spec& spec) {
    std::map<std::string, std::array<std::vector<double>, 2>> visits;
    for (const Row& row : pairs)
        if (const char v = row.at("visit")[0]; v == 'A' || v == 'B')
            if (const double value = number(row, spec.reading); !std::isnan(value))
                visits[row.at("pair")][v == 'A' ? 0 : 1].push_back(value);
    double within = 0, free = 0, between = 0, n = 0;
    for (const auto& [key, both] : visits) {
        std::array<double, 2> mean{};
        for (size_t k = 0; k < 2; ++k) {
            for (const double v : both[k]) mean[k] += v / static_cast<double>(both[k].size());
            for (const double v : both[k]) within += (v - mean[k]) * (v - mean[k]);
            free += both[k].empty() ? 0 : static_cast<double>(both[k].size()) - 1;
        }
        if (both[0].empty() || both[1].empty()) continue;
        between += (mean[0] - mean[1]) * (mean[0] - mean[1]) / 2;
        n += 1;
    }
    const double sd = free > 0 ? std::sqrt(within / free) : std::nan(""),
                 setup = n > 0 ? std::sqrt(std::max(0.0, between / n - sd * sd / 2)) : std::nan("");
    out << "`" << spec.reading << "`: within-visit SD " << fixed(sd, 2) << ", set-up SD " << fixed(setup, 2) << " "
        << spec.unit << ". ";
}

// Each reading is asked for its own documented change: a true value below 0 says that there is none in visit C. Adds
// hair and shape.
std::vector<Row> with_documented_changes(std::vector<Row> pairs) {
    for (Row& row : pairs) {
        const uint64_t person = std::strtoull(row.at("pair").c_str(), nullptr, 10);
        const CombingsCase one = pairs_case(person);
        row["hair"] = std::to_string(one.hair);
        row["shape"] = std::to_string(one.shape);
        if (row.at("visit") != "C") continue;
        const bool median = mostly_broken(person);
        for (const char* other : {"strands", "short_share"})
            if (median) row.at(other + std::string("_true")) = "-1";
        if (!median) row.at("strand_median_true") = "-1";
    }
    return pairs;
}

// Of an even number of strands each length between the middle two is a median, for half are longer and half shorter:
// the truth is the one nearest to what was read.
std::vector<Row> with_nearest_median(std::vector<Row> rows) {
    for (Row& row : rows)
        if (const double read = number(row, "strand_median"); !std::isnan(read))
            row.at("strand_median_true") =
                std::to_string(std::clamp(read, number(row, "middle_low"), number(row, "middle_high")));
    return rows;
}

}  // namespace

void combings_page(std::ostream& out, const std::vector<Row>& mean_of_middles, const std::vector<Row>& pairs) {
    const std::vector<Row> rows = with_nearest_median(mean_of_middles);
    const std::vector<Spec> specs = {
        {"strands", "strands", "5 %", true}, {"strand_median", "mm", "3 %", true}, {"short_share", "%", "-", false}};
    out << "## Combed-out strands\n\n";
    reading_table(out, rows, specs);
    refusal_line(out, rows, specs);
    double marked = 0, lost = 0, right = 0, all = 0, photos = 0, with_lost = 0, dim = 0, stray = 0;
    for (const Row& row : rows) {
        if (std::isnan(number(row, "marked"))) continue;
        photos += 1;
        marked += number(row, "marked");
        lost += number(row, "lost");
        with_lost += number(row, "lost") > 0;
        dim += number(row, "dim") > 0;
        stray += number(row, "stray_mm");
        right += number(row, "right");
        all += number(row, "strands_true");
    }
    const Errors from_mean = errors_of(mean_of_middles, "strand_median");
    out << "Of an even number of strands each length between the two middle ones is a median, and the error of "
           "`strand_median` is counted from the nearest of them; from their mean, which may lie where no strand does, "
           "it is "
        << fixed(100 * from_mean.mean_share(), 1) << " %.\n\n";
    out << "Marks: " << fixed(marked / photos, 1) << " % of the true length lies on a mark; " << fixed(lost, 0)
        << " of " << fixed(all, 0) << " strands have none over half of their length (in " << fixed(with_lost, 0)
        << " photos); " << fixed(100 * right / all, 1) << " % are traced from end to end with a length within 8 %. Dim "
        << "strands were looked for and marked in " << fixed(dim, 0) << " photos; " << fixed(stray, 0)
        << " mm of these marks lie on no strand.\n\n";
    std::vector<std::string> hair(render::hair_names, render::hair_names + render::hair_colours),
        shapes(shape_names, shape_names + strand_shapes), qualities(quality_names, quality_names + 5);
    for (const Spec& spec : {specs[0], specs[1]}) {
        class_table(out, rows, spec, "hair", "hair", hair);
        class_table(out, rows, spec, "shape", "shape", shapes);
        class_table(out, rows, spec, "JPEG quality", "quality", qualities);
    }
    class_table(out, rows, specs[0], "strands on the sheet", "many", {"up to 20", "21 to 40", "41 to 60"});
    out << "Pairs: visits A and B show the same strands thrown down anew in another light, two shots each. C for the "
           "count and the share of short ones: of 30 to 50 strands, a third to a half broken, half of the broken ones "
           "and a quarter of the others are gone. C for the median, of every second person: of 58 to 70 % broken "
           "strands three quarters are gone and a tenth of the others, which leaves about a third broken. The smallest "
           "detectable change is that of both kinds of persons together.\n\n";
    const std::vector<Row> documented = with_documented_changes(pairs);
    verdict_table(out, documented, specs);
    verdict_class_table(out, documented, specs, "hair", "hair", hair);
    verdict_class_table(out, documented, specs, "shape", "shape", {"straight", "wavy"});
    for (const Spec& spec : specs) spread_line(out, pairs, spec);
    out << "\n";
}

}  // namespace bench
