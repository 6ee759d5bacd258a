#include "card/ramp.h"

#include "card/least_squares.h"
#include "card/tone_curve.h"
#include "colour/colour.h"

namespace kempt::card {
namespace {

constexpr double code_sd = 0.006;  // 1.5 codes: noise of a sample's mean, JPEG, unevenness of print
constexpr double huber = 2.5;      // in code_sd
constexpr double lift_sd = 0.08;   // lifted shadows reach code 20-40 of 255, from memory
constexpr double bend_sd = 0.20;   // an offset of 0.2 in a coefficient is already a very strong S
constexpr double roughness_sd = 0.15;
constexpr double darkest_ink = 0.06;     // the markers' black reflects at most this much of the paper (office printers)
constexpr double residual_limit = 0.03;  // relative light; above it the undone curve errs more than leaving it alone
                                         // would in mid-tones of a mild curve
constexpr int least_patches = 8, least_levels = 4;

using Parameters = std::array<double, ToneCurve::inner + 1>;

double coded(double light) {
    return colour::srgb_from_linear(std::max(light, 0.0));
}
double uncoded(double code) {
    return colour::linear_from_srgb(code);
}
double softened(double r) {
    const double a = std::abs(r);
    return a <= huber ? r : std::copysign(std::sqrt(huber * (2 * a - huber)), r);
}

// Paper sites beside patch i (above and below) that can be read. None where they tell different light (a shadow's edge
// runs through): a third is more than any lamp's fall over the 13 mm between them.
std::vector<const Sample*> paper_beside(const CardSamples& samples, size_t i) {
    std::vector<const Sample*> sites;
    const auto row = static_cast<size_t>(card_patches()[i].row), column = static_cast<size_t>(card_patches()[i].column);
    for (const size_t strip : {row, row + 1}) {
        const Sample& site = samples.paper[strip][column];
        if (!site.usable) return {};
        if (!site.clipped) sites.push_back(&site);
    }
    if (sites.size() == 2) {
        const double one = sites[0]->light[1], two = sites[1]->light[1];
        if (std::max(one, two) > 1.33 * std::min(one, two)) return {};
    }
    return sites;
}

// What one fit works on: channels that share a curve, and how the light on a patch is known.
struct Task {
    const CardSamples& samples;
    std::vector<size_t> channels;
    std::vector<size_t> patches;
    bool from_paper = true;

    [[nodiscard]] double light_beside(const ToneCurve& curve, size_t patch, size_t channel) const {
        double sum = 0;
        const auto sites = paper_beside(samples, patch);
        for (const Sample* site : sites) sum += uncoded(curve.true_from_code(coded(site->light[channel])));
        return sum / double(sites.size());
    }
    // Parameters: the curve's, then (plane only) log light at mid-card and its two slopes per mm for each channel.
    [[nodiscard]] double light_on(const ToneCurve& curve, const std::vector<double>& p, size_t patch, size_t at) const {
        if (from_paper) return light_beside(curve, patch, channels[at]);
        const cv::Rect2d area = card_patches()[patch].area_mm;
        const cv::Point2d off(area.x + area.width / 2 - card_width_mm / 2,
                              area.y + area.height / 2 - card_height_mm / 2);
        const size_t first = std::tuple_size_v<Parameters> + 3 * at;
        return std::exp(p[first] + p[first + 1] * off.x + p[first + 2] * off.y);
    }
};

Parameters curve_parameters(const std::vector<double>& p) {
    Parameters head{};
    std::copy_n(p.begin(), head.size(), head.begin());
    return head;
}

double median(std::vector<double> v) {
    std::sort(v.begin(), v.end());
    return (v[(v.size() - 1) / 2] + v[v.size() / 2]) / 2;
}

void residuals_of(const Task& task, const std::vector<double>& p, std::vector<double>& r) {
    const ToneCurve curve(curve_parameters(p));
    r.clear();
    for (size_t at = 0; at < task.channels.size(); ++at) {
        const size_t channel = task.channels[at];
        std::vector<double> lights;
        for (const size_t i : task.patches) {
            const double light = task.light_on(curve, p, i, at);
            lights.push_back(light);
            const double expected = curve.code_from_true(coded(card_patches()[i].reflectance * light));
            r.push_back(softened((coded(task.samples.patches[i].light[channel]) - expected) / code_sd));
        }
        std::vector<double> blacks;
        for (const Sample& black : task.samples.black)
            if (black.usable) blacks.push_back(coded(black.light[channel]));
        double bound = 0;
        if (!blacks.empty()) {
            const double black = median(blacks), highest = curve.code_from_true(coded(darkest_ink * median(lights)));
            bound = std::max({0.0, curve.lift() - black, black - highest}) / code_sd;
        }
        r.push_back(bound);
        if (task.from_paper) continue;
        const size_t first = std::tuple_size_v<Parameters> + 3 * at;
        // Light rarely changes by more than 10 % a cm over a card; without the paper this steadies the plane.
        r.push_back(p[first + 1] / 0.02);
        r.push_back(p[first + 2] / 0.02);
    }
    r.push_back(p[0] / lift_sd);
    double before = 0, here = p[1];
    for (size_t k = 1; k <= ToneCurve::inner; ++k) {
        const double after = k < ToneCurve::inner ? p[k + 1] : 0;
        r.push_back(here / bend_sd);
        r.push_back((before - 2 * here + after) / roughness_sd);
        before = here, here = after;
    }
}

// A plane through the log light on the patches, at the middle of the card.
double light_in_mid_card(const std::vector<size_t>& patches, const std::vector<double>& lights) {
    cv::Mat1d a(static_cast<int>(patches.size()), 3), b(static_cast<int>(patches.size()), 1), x;
    for (int i = 0; i < a.rows; ++i) {
        const auto k = static_cast<size_t>(i);
        const cv::Rect2d area = card_patches()[patches[k]].area_mm;
        a(i, 0) = 1;
        a(i, 1) = area.x + area.width / 2 - card_width_mm / 2;
        a(i, 2) = area.y + area.height / 2 - card_height_mm / 2;
        b(i) = std::log(std::max(lights[k], 1e-6));
    }
    return cv::solve(a, b, x, cv::DECOMP_SVD) ? std::exp(x(0)) : median(lights);
}

struct Curve {
    Parameters parameters{};
    std::array<double, 3> mid_light{};  // true light of bare paper in mid-card, by channel of the task
    double residual = 0;
};

Curve fit_curve(const Task& task) {
    std::vector<double> start(std::tuple_size_v<Parameters>, 0.0), steps(start.size(), 1e-4);
    if (!task.from_paper)
        for (const size_t channel : task.channels) {
            std::vector<double> logs;
            for (const size_t i : task.patches)
                logs.push_back(
                    std::log(std::max(task.samples.patches[i].light[channel], 1e-5) / card_patches()[i].reflectance));
            start.insert(start.end(), {median(logs), 0, 0});
            steps.insert(steps.end(), {1e-4, 1e-6, 1e-6});
        }
    const Fit fit = least_squares([&](const auto& p, auto& r) { residuals_of(task, p, r); }, start, steps, 25);
    Curve result{.parameters = curve_parameters(fit.parameters)};
    const ToneCurve curve(result.parameters);
    std::vector<double> squares;
    for (size_t at = 0; at < task.channels.size(); ++at) {
        const size_t channel = task.channels[at];
        std::vector<double> lights;
        for (const size_t i : task.patches) {
            const double light = task.light_on(curve, fit.parameters, i, at);
            lights.push_back(light);
            const double read = uncoded(curve.true_from_code(coded(task.samples.patches[i].light[channel]))) / light;
            squares.push_back(std::pow(read - card_patches()[i].reflectance, 2));
        }
        result.mid_light[channel] = task.from_paper ? light_in_mid_card(task.patches, lights)
                                                    : std::exp(fit.parameters[std::tuple_size_v<Parameters> + 3 * at]);
    }
    // Up to a tenth of the readings may be spoilt (a hair, a shadow's soft edge) without damning the curve.
    std::sort(squares.begin(), squares.end());
    squares.resize(squares.size() - squares.size() / 10);
    double sum = 0;
    for (const double s : squares) sum += s / double(squares.size());
    result.residual = std::sqrt(sum);
    return result;
}

std::vector<float> table_of(const Curve& curve, double mid_light) {
    constexpr int steps = 1024;
    const ToneCurve tone(curve.parameters);
    std::vector<float> table(steps);
    for (int i = 0; i < steps; ++i) {
        const double root = double(i) / (steps - 1);
        table[static_cast<size_t>(i)] =
            static_cast<float>(uncoded(tone.true_from_code(coded(root * root))) / mid_light);
    }
    return table;
}

// Plane through the log light of the bare paper (of the patches where the paper is burnt out): relative change per cm
// and its direction.
void set_gradient(Light& light, const CardSamples& samples, const std::function<double(double, size_t)>& true_light) {
    std::vector<cv::Point2d> places;
    std::vector<double> logs;
    for (const auto& strip : samples.paper)
        for (const Sample& site : strip) {
            if (!site.usable || site.clipped) continue;
            double mean = 0;
            for (size_t c = 0; c < 3; ++c) mean += std::log(std::max(true_light(site.light[c], c), 1e-5)) / 3;
            places.push_back(site.centre_mm);
            logs.push_back(mean);
        }
    if (places.size() < 6) {  // the paper is burnt out: the darker patches still tell, through their reflectance
        places.clear(), logs.clear();
        for (size_t i = 0; i < samples.patches.size(); ++i) {
            const Sample& patch = samples.patches[i];
            if (!patch.usable || patch.clipped) continue;
            double mean = -std::log(card_patches()[i].reflectance);
            for (size_t c = 0; c < 3; ++c) mean += std::log(std::max(true_light(patch.light[c], c), 1e-5)) / 3;
            places.push_back(patch.centre_mm);
            logs.push_back(mean);
        }
    }
    if (places.size() < 6) return;
    cv::Mat1d a(static_cast<int>(places.size()), 3), b(static_cast<int>(places.size()), 1), x;
    for (int i = 0; i < a.rows; ++i) {
        const auto k = static_cast<size_t>(i);
        a(i, 0) = 1, a(i, 1) = places[k].x, a(i, 2) = places[k].y;
        b(i) = logs[k];
    }
    if (!cv::solve(a, b, x, cv::DECOMP_SVD)) return;
    const cv::Vec2d slope(x(1), x(2));
    light.gradient_per_cm = 10 * cv::norm(slope);
    light.gradient_direction = cv::norm(slope) > 1e-12 ? slope / cv::norm(slope) : cv::Vec2d(1, 0);
}

// Gains without a curve, from the two lightest patches, else from bare paper. False when neither can be read.
bool plain_gains(Light& light, const CardSamples& samples) {
    std::array<std::vector<double>, 3> whites;
    for (size_t i = 0; i < samples.patches.size(); ++i) {
        const Sample& patch = samples.patches[i];
        if (card_patches()[i].reflectance > 0.85 && patch.usable && !patch.clipped)
            for (size_t c = 0; c < 3; ++c) whites[c].push_back(patch.light[c] / card_patches()[i].reflectance);
    }
    if (whites[0].empty())
        for (const auto& strip : samples.paper)
            for (const Sample& site : strip)
                if (site.usable && !site.clipped)
                    for (size_t c = 0; c < 3; ++c) whites[c].push_back(site.light[c]);
    if (whites[0].empty()) return false;
    for (size_t c = 0; c < 3; ++c) {
        double mean = 0;
        for (const double white : whites[c]) mean += white / double(whites[c].size());
        if (mean < 1e-4) return false;
        light.gains[static_cast<int>(c)] = 1 / mean;
    }
    return true;
}

}  // namespace

RampResult light_of_card(const CardSamples& samples) {
    RampResult result;
    Light light;
    std::vector<size_t> paired, readable;
    int clipped = 0;
    for (size_t i = 0; i < samples.patches.size(); ++i) {
        clipped += samples.patches[i].clipped ? 1 : 0;
        if (!samples.patches[i].usable || samples.patches[i].clipped) continue;
        readable.push_back(i);
        if (!paper_beside(samples, i).empty()) paired.push_back(i);
    }
    Task task{samples, {0, 1, 2}, paired, true};
    if (static_cast<int>(paired.size()) < least_patches) task.patches = readable, task.from_paper = false;
    std::vector<double> levels;
    for (const size_t i : task.patches) levels.push_back(card_patches()[i].reflectance);
    std::sort(levels.begin(), levels.end());
    const auto level_count =
        std::unique(levels.begin(), levels.end(), [](double a, double b) { return b - a < 1e-6; }) - levels.begin();

    if (static_cast<int>(task.patches.size()) >= least_patches && level_count >= least_levels) {
        std::array<Curve, 3> curves;
        curves.fill(fit_curve(task));
        double residual = curves[0].residual;
        // Half of the limit: a shared curve that good needs no second look.
        if (residual > residual_limit / 2) {
            std::array<Curve, 3> own;
            double own_residual = 0;
            for (size_t c = 0; c < 3; ++c) {
                task.channels = {c};
                own[c] = fit_curve(task);
                own_residual = std::max(own_residual, own[c].residual);
            }
            if (own_residual < 0.7 * residual) curves = own, residual = own_residual;
        }
        light.ramp_residual = residual;
        const bool lit = std::all_of(curves.begin(), curves.end(),
                                     [n = size_t{0}](const Curve& c) mutable { return c.mid_light[n++] > 1e-3; });
        if (residual <= residual_limit && lit) {
            light.curve_fitted = true;
            for (size_t c = 0; c < 3; ++c) {
                const double mid = curves[c].mid_light[c], white = card_patches()[5].reflectance;
                light.light_from_photo[c] = table_of(curves[c], mid);
                light.gains[static_cast<int>(c)] =
                    white / uncoded(ToneCurve(curves[c].parameters).code_from_true(coded(white * mid)));
            }
            set_gradient(light, samples, [&](double p, size_t c) {
                return double(corrected(light, static_cast<int>(c), static_cast<float>(p)));
            });
        }
    }
    if (!light.curve_fitted) {
        if (!plain_gains(light, samples)) {
            result.findings.push_back(
                {"card-light-unreadable", Level::warning,
                 clipped >= 4 ? "The card's grey patches are burnt out to white, so the light cannot be measured."
                              : "The card's grey patches cannot be read, so the light cannot be measured.",
                 "Take the photo again with the whole card in view and less light on it."});
            return result;
        }
        set_gradient(light, samples, [&](double p, size_t c) { return p * light.gains[static_cast<int>(c)]; });
        result.findings.push_back(
            {"ramp-not-fitted", Level::warning,
             "The card's grey steps do not follow any plain tone curve, so only the colour of the light was corrected.",
             "Keep shadows, hands and hair off the grey patches, print the card without colour effects, and switch the "
             "camera's filters off."});
    }
    const double strongest = std::max({light.gains[0], light.gains[1], light.gains[2]});
    const double weakest = std::min({light.gains[0], light.gains[1], light.gains[2]});
    // Threefold: one channel then has less than a third of the codes of another, its noise triples after correction.
    if (strongest > 3 * weakest)
        result.findings.push_back({"light-coloured", Level::warning, "The light is strongly coloured.",
                                   "Use white light (daylight or a white lamp) and switch coloured lamps off."});
    result.light = light;
    return result;
}

float corrected(const Light& light, int channel, float photo_light) {
    const std::vector<float>& table = light.light_from_photo[static_cast<size_t>(channel)];
    if (!light.curve_fitted || table.size() < 2) return photo_light * static_cast<float>(light.gains[channel]);
    const auto last = static_cast<float>(table.size() - 1);
    const float at = std::sqrt(std::clamp(photo_light, 0.f, 1.f)) * last;
    const size_t i = std::min(static_cast<size_t>(at), table.size() - 2);
    return table[i] + (table[i + 1] - table[i]) * (at - static_cast<float>(i));
}

}  // namespace kempt::card
