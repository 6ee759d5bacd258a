#include "tone/strand_fit.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/rank.h"

namespace kempt::tone {
namespace {

using Parameters = StrandModel::Parameters;
constexpr size_t most_lines = StrandModel::room_for_lines;  // a strand with more is banded all over
constexpr size_t most_modes = 3;
// A mode whose cost without any line is this much above the best one never won on rendered panels.
constexpr double hopeless = 150;
constexpr double lines_apart_mm = 5, candidates_apart_mm = 8;
constexpr double gradual_mm = 9;  // as wide as the model allows: a gradual change, no line
// CIEDE2000 a millimetre: less than about one just noticeable difference a millimetre is seen as a gradual change. On
// 300 rendered panels (seeds 4000 and up) 5 of 8 false lines were flatter, and none of the true ones of 5 or more.
constexpr double least_slope = 1.0;
constexpr size_t place_of = 3, width_of = 4;  // within a line's parameters

// Mean luminance over about 7 mm.
std::vector<double> smooth_luminance(const Rows& rows) {
    const size_t n = rows.at_mm.size();
    std::vector<double> smooth(n, std::nan(""));
    for (size_t i = 0; i < n; ++i) {
        double sum = 0, count = 0;
        for (size_t j = i > 3 ? i - 3 : 0; j < std::min(n, i + 4); ++j) {
            if (!rows.usable[j]) continue;
            sum += 0.2126 * rows.light[j][0] + 0.7152 * rows.light[j][1] + 0.0722 * rows.light[j][2];
            ++count;
        }
        if (count > 0) smooth[i] = sum / count;
    }
    return smooth;
}

double median(std::vector<double> v) {
    return at_rank(v, 0.5);
}

// First guesses: a highlight where the strand is brightest (narrow, wide), in the middle, at either end, or none.
std::vector<Parameters> starts(const StrandModel& model) {
    const Rows& rows = model.rows();
    const std::vector<double> smooth = smooth_luminance(rows);
    size_t brightest = 0;
    double low = 1e9, high = -1;
    for (size_t i = 0; i < smooth.size(); ++i) {
        if (std::isnan(smooth[i])) continue;
        low = std::min(low, smooth[i]);
        if (smooth[i] > high) high = smooth[i], brightest = i;
    }
    const struct {
        double place, spread, share;
    } guesses[] = {{rows.at_mm[brightest], 20, 0.8}, {rows.at_mm[brightest], 35, 0.9},
                   {rows.length_mm / 2, 30, 0.5},    {0, 25, 0.8},
                   {rows.length_mm, 25, 0.8},        {rows.length_mm / 2, 20, 0.02}};
    std::vector<Parameters> out;
    for (const auto& guess : guesses) {
        Parameters p(StrandModel::fixed, 0.0);
        p[StrandModel::highlight] = std::log(std::max({guess.share * (high - low), 0.02 * high, 1e-4}));
        p[StrandModel::highlight + 1] = guess.place;
        p[StrandModel::highlight + 2] = std::log(guess.spread);
        std::vector<double> lab[3];
        for (size_t i = 0; i < rows.at_mm.size(); ++i) {
            if (!rows.usable[i]) continue;
            const double shine = model.highlight_light(p, rows.at_mm[i]);
            cv::Vec3d body;
            for (int c = 0; c < 3; ++c) body[c] = std::max(rows.light[i][c] - shine, 0.15 * rows.light[i][c]);
            const cv::Vec3d value = lab_point(body).value;
            for (int c = 0; c < 3; ++c) lab[c].push_back(value[c]);
        }
        for (size_t c = 0; c < 3; ++c) p[c] = median(lab[c]);
        out.push_back(p);
    }
    return out;
}

struct Grown {
    Parameters p;
    double cost = 0;
};

// Adds lines as long as each explains enough.
Grown grow(StrandModel& model, Parameters p, bool learn) {
    double cost = 0;
    for (size_t lines = 0;; ++lines) {
        if (learn) model.learn_noise(p);
        cost = model.fit(p, 10);
        if (lines == most_lines) break;
        const std::vector<double> gains = model.gain_of_line(p);
        std::vector<size_t> order(gains.size());
        std::iota(order.begin(), order.end(), size_t{0});
        std::sort(order.begin(), order.end(), [&](size_t a, size_t b) { return gains[a] > gains[b]; });
        const auto& at = model.rows().at_mm;
        std::vector<double> tried;
        Parameters best;
        double best_cost = cost;
        for (const size_t i : order) {
            // A linear step promises about what the whole fit then gives; far less is not worth a fit.
            if (tried.size() == 2 || gains[i] < least_gain / 2) break;
            bool near = false;
            for (const double mm : tried) near = near || std::abs(mm - at[i]) < candidates_apart_mm;
            for (size_t k = 0; k < lines; ++k)
                near = near ||
                       std::abs(p[StrandModel::fixed + StrandModel::each_line * k + place_of] - at[i]) < lines_apart_mm;
            if (near) continue;
            tried.push_back(at[i]);
            Parameters with = p;
            with.insert(with.end(), {0, 0, 0, at[i], std::log(2.5)});
            const double there = model.fit(with, 25);
            if (there < best_cost) best_cost = there, best = with;
        }
        if (best.empty() || cost - best_cost < least_gain) break;
        p = best;
        cost = best_cost;
    }
    return {p, cost};
}

colour::Lab as_lab(const cv::Vec3d& v) {
    return {v[0], v[1], v[2]};
}

FittedLine line_of(const StrandModel& model, const StrandFit& fit, size_t k) {
    const Parameters& p = fit.parameters;
    const size_t first = StrandModel::fixed + StrandModel::each_line * k;
    FittedLine line;
    line.at_mm = p[first + place_of];
    line.width_mm = std::exp(p[first + width_of]);
    line.at_sd = std::sqrt(
        std::max(0.0, fit.covariance(static_cast<int>(first + place_of), static_cast<int>(first + place_of))));
    // This line's own step at its place, the others as they stand there.
    const StrandModel::Shares shares = model.body_shares(p, line.at_mm);
    const auto colour_at = [&](const Parameters& q, double own) {
        cv::Vec3d lab;
        for (size_t c = 0; c < 3; ++c) {
            for (size_t g = 0; g < 3; ++g) lab[static_cast<int>(c)] += shares[g] * q[3 * g + c];
            for (size_t other = 0; other < StrandModel::line_count(q); ++other)
                lab[static_cast<int>(c)] +=
                    (other == k ? own : shares[3 + other]) * q[StrandModel::fixed + StrandModel::each_line * other + c];
        }
        lab[0] = std::clamp(lab[0], 2.0, 98.0);
        return lab;
    };
    const auto step = [&](const Parameters& q) {
        return colour::ciede2000(as_lab(colour_at(q, 0)), as_lab(colour_at(q, 1)));
    };
    line.before = colour_at(p, 0);
    line.after = colour_at(p, 1);
    line.step = step(p);
    cv::Mat1d slope(static_cast<int>(p.size()), 1, 0.0);
    for (size_t i = 0; i < p.size(); ++i) {
        Parameters q = p;
        q[i] += 1e-3;
        slope(static_cast<int>(i)) = (step(q) - line.step) / 1e-3;
    }
    const cv::Mat1d half(fit.covariance * slope);
    line.step_sd = std::sqrt(std::max(0.0, slope.dot(half)));
    return line;
}

}  // namespace

StrandFit fit_strand(StrandModel& model, double least_step, const Progress& progress) {
    StrandFit fit;
    if (std::count_if(model.rows().usable.begin(), model.rows().usable.end(), [](char u) { return u != 0; }) < 12)
        return fit;
    std::vector<Grown> modes;
    for (Parameters p : starts(model)) {
        const double cost = model.fit(p, 10);
        const bool known = std::any_of(modes.begin(), modes.end(), [&](const Grown& other) {
            return std::abs(other.p[StrandModel::highlight + 1] - p[StrandModel::highlight + 1]) < 8 &&
                   std::abs(other.p[StrandModel::highlight + 2] - p[StrandModel::highlight + 2]) < 0.3;
        });
        if (!known) modes.push_back({p, cost});
    }
    std::sort(modes.begin(), modes.end(), [](const Grown& a, const Grown& b) { return a.cost < b.cost; });
    if (modes.size() > most_modes) modes.resize(most_modes);
    while (modes.back().cost > modes.front().cost + hopeless) modes.pop_back();
    for (size_t m = 0; m < modes.size(); ++m) {
        if (tell(progress, 0.3 + 0.6 * static_cast<double>(m) / static_cast<double>(modes.size()),
                 "looking for lines of demarcation") == Go::stop)
            return fit;
        modes[m] = grow(model, modes[m].p, m == 0);
    }
    const Grown* best = nullptr;
    double best_cost = 0;
    for (Grown& mode : modes) {
        // What a line must explain anyway is not held for an explanation that needs more of them.
        const double cost =
            model.fit(mode.p, 30) + 0.5 * least_gain * static_cast<double>(StrandModel::line_count(mode.p));
        if (!best || cost < best_cost) best = &mode, best_cost = cost;
    }
    fit.parameters = best->p;
    fit.noise = model.noise();
    fit.covariance = model.covariance(fit.parameters);
    for (size_t k = 0; k < StrandModel::line_count(fit.parameters); ++k) {
        const FittedLine line = line_of(model, fit, k);
        if (line.step >= least_step && line.width_mm < gradual_mm && line.step >= least_slope * line.width_mm)
            fit.lines.push_back(line);
    }
    std::sort(fit.lines.begin(), fit.lines.end(),
              [](const FittedLine& a, const FittedLine& b) { return a.at_mm < b.at_mm; });
    return fit;
}

}  // namespace kempt::tone
