#include "bench/pattern/cases.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace bench {

const char* const pattern_names[pattern_classes] = {"straight", "slight bend", "loose",
                                                    "medium",   "tight",       "very tight"};

namespace {

// Amplitude A of a sine of that length whose mean curvature, 4 atan(2 pi A / lambda) over the arc of a wave, gives the
// curve diameter; found by halving.
double amplitude_for(double curve_diameter_mm, double wave_mm) {
    double low = 0, high = 0.2 * wave_mm;  // steeper waves are less bent again: long flanks between hairpins
    for (int i = 0; i < 40; ++i) {
        const double a = 0.5 * (low + high), steep = 2 * 3.14159265358979 * a / wave_mm;
        double length = 0;
        for (int k = 0; k < 200; ++k) length += std::hypot(1.0, steep * std::cos(0.0314159265358979 * (k + 0.5))) / 200;
        (2 / (4 * std::atan(steep) / (wave_mm * length)) > curve_diameter_mm ? low : high) = a;
    }
    return 0.5 * (low + high);
}

double median_of(const std::vector<TrueShape>& all, double TrueShape::*member) {
    std::vector<double> values;
    for (const TrueShape& one : all) values.push_back(one.*member);
    std::sort(values.begin(), values.end());
    return values.empty() ? 0 : 0.5 * (values[(values.size() - 1) / 2] + values[values.size() / 2]);
}

struct Place {
    render::V2 at, ahead;  // ahead: unit tangent
    double along = 0;
};
// Places `step` apart along a path.
std::vector<Place> places_along(const std::vector<render::V2>& path, double step) {
    std::vector<Place> even;
    double due = 0, along = 0;
    for (size_t i = 1; i < path.size(); ++i) {
        const double dx = path[i].x - path[i - 1].x, dy = path[i].y - path[i - 1].y, part = std::hypot(dx, dy);
        for (; part > 0 && due <= along + part; due += step)
            even.push_back({{path[i - 1].x + dx * (due - along) / part, path[i - 1].y + dy * (due - along) / part},
                            {dx / part, dy / part},
                            due});
        along += part;
    }
    return even;
}

// Written apart from the program's own: stretches begin every half millimetre, ends found by walking.
double ratio_over_30_mm(const std::vector<render::V2>& path, double length) {
    const std::vector<Place> even = places_along(path, 0.5);
    constexpr size_t apart = 60;
    if (even.size() <= apart)
        return length / std::hypot(path.back().x - path.front().x, path.back().y - path.front().y);
    double squares = 0;
    for (size_t i = 0; i + apart < even.size(); ++i)
        squares += std::pow(even[i + apart].at.x - even[i].at.x, 2) + std::pow(even[i + apart].at.y - even[i].at.y, 2);
    return 30 / std::sqrt(squares / static_cast<double>(even.size() - apart));
}

}  // namespace

PatternCase pattern_case(uint64_t person, uint64_t shot, int hair_colour, int pattern, double loosened) {
    render::Rng rng(person * 7919 + 23);
    PatternCase out;
    out.pattern = pattern >= 0 ? pattern : static_cast<int>(rng.index(pattern_classes));
    render::SheetOptions sheet;
    sheet.hair_colour = hair_colour;
    sheet.quarter_turns = false;
    sheet.table_mm = 4;
    out.scene = render::sheet_scene(person * 31 + 5, shot * 37 + 7, sheet);
    render::LooseOptions options;
    options.short_share = 0;
    options.count = static_cast<int>(4 + rng.index(5));
    options.length_mm = rng.uniform(70, 160);
    options.spread = 0.15;
    // Classes by the head's usual curve diameter: steps of our own scale, half of a step kept clear.
    static constexpr double from[pattern_classes] = {120, 55, 28, 14, 7, 3.2},
                            to[pattern_classes] = {400, 85, 42, 21, 11, 5};
    const double usual = rng.log_uniform(from[out.pattern], to[out.pattern]);
    // Loose hair waves or coils, bent hair waves, tighter hair coils.
    const bool coils = out.pattern >= 3 || (out.pattern == 2 && rng.chance(0.5));
    options.shape = out.pattern == 0 ? render::Shape::straight : coils ? render::Shape::coiled : render::Shape::wavy;
    options.curl_mm = usual;
    out.strands = render::loose_strands(rng, out.scene.hair, options);
    for (render::LooseStrand& s : out.strands) {
        if (options.shape == render::Shape::straight) s.wander = 2.5 / usual * std::exp(rng.normal(0, 0.15));
        if (options.shape == render::Shape::wavy) {
            s.wave_mm = usual * rng.uniform(0.7, 1.0);
            s.wave_amplitude_mm = amplitude_for(usual * std::exp(rng.normal(0, 0.12)), s.wave_mm) / loosened;
        }
        s.coil_mm *= loosened;
        s.coil_pitch_mm *= loosened * loosened;
        s.length_mm *= 1 + (loosened - 1) / 6;
    }
    return out;
}

TrueShape true_shape(const std::vector<render::V2>& path) {
    double turned = 0, length = 0, before = 0;
    for (size_t i = 1; i < path.size(); ++i) {
        const double dx = path[i].x - path[i - 1].x, dy = path[i].y - path[i - 1].y, angle = std::atan2(dy, dx);
        length += std::hypot(dx, dy);
        if (i > 1) turned += std::abs(std::remainder(angle - before, 2 * 3.14159265358979));
        before = angle;
    }
    return {2 * length / turned, ratio_over_30_mm(path, length), length};
}

int merged_strands(const render::SheetShot& shot) {
    constexpr double near_px = 2.5, least_mm = 2, away_px = 12;  // nearer along the strand is the strand itself
    const double along = std::cos(20 * 3.14159265358979 / 180);
    struct Of {
        size_t strand = 0;
        Place place;
    };
    std::map<std::pair<int, int>, std::vector<Of>> cells;
    const auto cell = [](render::V2 p) {
        return std::pair(static_cast<int>(std::floor(p.x / near_px)), static_cast<int>(std::floor(p.y / near_px)));
    };
    std::vector<Of> all;
    for (size_t k = 0; k < shot.strands_px.size(); ++k)
        for (const Place& place : places_along(shot.strands_px[k], 1)) {
            all.push_back({k, place});
            cells[cell(place.at)].push_back(all.back());
        }
    const auto merge = [&](const Of& one, const Of& other) {
        const Place &p = one.place, &q = other.place;
        return (other.strand != one.strand || std::abs(q.along - p.along) > away_px) &&
               std::hypot(q.at.x - p.at.x, q.at.y - p.at.y) < near_px &&
               std::abs(q.ahead.x * p.ahead.x + q.ahead.y * p.ahead.y) > along;
    };
    std::vector<double> merged_px(shot.strands_px.size());
    for (const Of& one : all) {
        const auto [u, v] = cell(one.place.at);
        bool merged = false;
        for (int du = -1; du <= 1; ++du)
            for (int dv = -1; dv <= 1; ++dv)
                if (const auto found = cells.find({u + du, v + dv}); found != cells.end() && !merged)
                    merged = std::any_of(found->second.begin(), found->second.end(),
                                         [&](const Of& other) { return merge(one, other); });
        merged_px[one.strand] += merged;
    }
    return static_cast<int>(
        std::count_if(merged_px.begin(), merged_px.end(), [&](double px) { return px >= least_mm * shot.px_per_mm; }));
}

PatternShot take_pattern(const PatternCase& c, uint64_t lie) {
    render::Rng rng(lie * 104729 + 29);
    render::Lie where = render::free_lie(c.scene);
    where.apart_mm = 3;
    const render::Coat coat = render::throw_down(rng, c.strands, where);
    PatternShot out;
    out.shot = render::take_sheet(c.scene, coat);
    for (const auto& path : out.shot.strands_mm) out.strands.push_back(true_shape(path));
    out.median = {median_of(out.strands, &TrueShape::curve_diameter_mm), median_of(out.strands, &TrueShape::wave_ratio),
                  median_of(out.strands, &TrueShape::arc_mm)};
    return out;
}

}  // namespace bench
