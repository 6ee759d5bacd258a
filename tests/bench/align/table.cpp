#include "bench/align/table.h"

#include <algorithm>
#include <functional>

#include "render/scene.h"

namespace bench {

namespace {

struct Summary {
    int pairs = 0, refused = 0, held = 0;
    std::vector<double> error, worst, residual, cover;

    void take(const Row& row) {
        ++pairs;
        const double e = number(row, "error_mm");
        if (std::isnan(e)) {
            ++refused;
            return;
        }
        error.push_back(e);
        worst.push_back(number(row, "worst_mm"));
        residual.push_back(number(row, "residual_mm"));
        held += e <= residual.back();
        const double change = number(row, "cover_carried_line") - number(row, "cover_true_line");
        if (!std::isnan(change)) cover.push_back(std::abs(change));
    }
};

double mean(const std::vector<double>& v) {
    double sum = 0;
    for (const double x : v) sum += x;
    return sum / static_cast<double>(v.size());
}

double below(std::vector<double> v, double share) {
    if (v.empty()) return std::nan("");
    std::sort(v.begin(), v.end());
    return v[std::min(v.size() - 1, static_cast<size_t>(share * static_cast<double>(v.size())))];
}

void line(std::ostream& out, const std::string& name, const Summary& s, double all_mean) {
    const double n = static_cast<double>(s.error.size());
    out << "| " << name << " | " << s.pairs << " | " << s.refused << " | " << fixed(mean(s.error), 2) << " | "
        << fixed(mean(s.error) / all_mean, 2) << " | " << fixed(below(s.error, 0.95), 2) << " | "
        << fixed(below(s.worst, 0.95), 2) << " | " << fixed(below(s.residual, 0.5), 2) << " | "
        << fixed(100 * s.held / n, 1) << " % | " << fixed(mean(s.cover), 2) << " | " << fixed(below(s.cover, 0.95), 2)
        << " |\n";
}

}  // namespace

void alignment_table(std::ostream& out, const std::vector<Row>& rows) {
    Summary all;
    std::map<std::string, int> codes;
    int within = 0;
    for (const Row& row : rows) {
        all.take(row);
        if (!row.at("refused").empty()) ++codes[row.at("refused")];
        within += number(row, "error_mm") <= 0.5;
    }
    out << "## Alignment\n\n"
        << rows.size()
        << " pairs of visits of one rendered person each: the card laid anew (up to 12 mm along, 10 mm out, 8 "
           "degrees), "
           "another camera place, light and phone, hair unchanged, denser, combed anew or grown out by 1-3 mm. The "
           "earlier line is drawn by hand (SD 0.3 mm); the error is that of places on the true line, carried, against "
           "where the later camera sees them, in millimetres of the later card's plane.\n\n"
        << "Error at the edge line (mean along it) at most 0.5 mm: "
        << fixed(100.0 * within / std::max<double>(1, static_cast<double>(all.error.size())), 1)
        << " % of the pairs that were laid over each other (wanted 95 %). Refused: "
        << fixed(100.0 * all.refused / std::max<double>(1, static_cast<double>(rows.size())), 1) << " % (wanted 5 %)";
    for (const auto& [code, count] : codes) out << "; `" << code << "` " << count;
    out << ". The stated residual holds the error in "
        << fixed(100.0 * all.held / std::max<double>(1, static_cast<double>(all.error.size())), 1)
        << " % (wanted 90 %). `edge_coverage` with the carried line against the true line on the same photo: "
        << fixed(mean(all.cover), 2) << " points apart on average (wanted 1).\n\n"
        << "| | pairs | refused | mean error, mm | ratio to all | 95 % below | worst point of the line, 95 % below | "
           "stated residual, median | holds | coverage moved, points | 95 % below |\n"
        << "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n";
    const double all_mean = mean(all.error);
    line(out, "all", all, all_mean);
    const auto classes = [&](const std::string& title, const std::function<std::string(const Row&)>& name_of) {
        std::map<std::string, Summary> by_name;
        std::vector<std::string> order;
        for (const Row& row : rows) {
            const std::string name = name_of(row);
            if (by_name.find(name) == by_name.end()) order.push_back(name);
            by_name[name].take(row);
        }
        std::sort(order.begin(), order.end());
        for (const std::string& name : order) line(out, title + name, by_name[name], all_mean);
    };
    for (int k = 0; k < render::skin_classes; ++k) {
        Summary some;
        for (const Row& row : rows)
            if (number(row, "skin") == k) some.take(row);
        if (some.pairs > 0) line(out, std::string("skin: ") + render::skin_names[k], some, all_mean);
    }
    for (int k = 0; k < render::hair_colours; ++k) {
        Summary some;
        for (const Row& row : rows)
            if (number(row, "hair") == k) some.take(row);
        if (some.pairs > 0) line(out, std::string("hair: ") + render::hair_names[k], some, all_mean);
    }
    classes("photo: ", [](const Row& row) { return number(row, "px_per_mm") < 16 ? "12-14 px/mm" : "20-22 px/mm"; });
    classes("light: ", [](const Row& row) { return row.at("light") == "any" ? "from anywhere" : "the same chair"; });
    classes("hair since: ", [](const Row& row) { return row.at("change"); });
    out << "\n";
}

}  // namespace bench
