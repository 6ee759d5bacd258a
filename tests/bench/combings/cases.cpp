#include "bench/combings/cases.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace bench {

const char* const shape_names[strand_shapes] = {"straight", "wavy", "coiled"};
const char* const quality_names[5] = {"62", "70", "85", "92", "95"};

namespace {

constexpr double short_mm = 50;

render::HairLook look_of(uint64_t person, int hair) {
    render::SheetOptions sheet;
    sheet.hair_colour = hair;
    return render::sheet_scene(person * 31 + 5, 1, sheet).hair;
}

CombingsCase made(uint64_t person, int hair, int shape, render::LooseOptions options, render::Rng& rng) {
    CombingsCase out;
    out.hair = hair;
    out.shape = shape;
    out.quality = static_cast<int>(person % 5);
    options.shape = static_cast<render::Shape>(shape);
    out.strands = render::loose_strands(rng, look_of(person, hair), options);
    return out;
}

}  // namespace

CombingsCase combings_case(uint64_t person) {
    render::Rng rng(person * 7919 + 41);
    const double lot = rng.uniform();
    const int shape = lot < 0.45 ? 0 : lot < 0.8 ? 1 : 2;
    render::LooseOptions options;
    options.count = shape == 2 ? 3 + rng.index(18) : 5 + rng.index(56);
    options.length_mm = rng.uniform(90, 260);
    options.short_share = rng.uniform(0.05, 0.5);
    return made(person, static_cast<int>(person % 7), shape, options, rng);
}

bool mostly_broken(uint64_t person) {
    return person % 2 == 1;
}

CombingsCase pairs_case(uint64_t person) {
    render::Rng rng(person * 7919 + 43);
    render::LooseOptions options;
    options.count = 30 + rng.index(21);
    options.length_mm = rng.uniform(110, 220);
    options.short_share = mostly_broken(person) ? rng.uniform(0.58, 0.7) : rng.uniform(0.33, 0.5);
    return made(person, static_cast<int>(person % 7), person / 7 % 2 ? 1 : 0, options, rng);
}

CombingsCase recovered(const CombingsCase& before, uint64_t person) {
    render::Rng rng(person * 7919 + 47);
    CombingsCase out = before;
    // Broken ones come first in the list of loose_strands(); which go is by lot.
    std::vector<render::LooseStrand> broken, whole;
    for (const render::LooseStrand& s : before.strands) (s.length_mm < short_mm ? broken : whole).push_back(s);
    const auto drop = [&](std::vector<render::LooseStrand>& from, double share) {
        for (auto n = static_cast<int>(std::lround(share * static_cast<double>(from.size()))); n > 0; --n)
            from.erase(from.begin() + rng.index(static_cast<int>(from.size())));
    };
    drop(broken, mostly_broken(person) ? 0.75 : 0.5);
    drop(whole, mostly_broken(person) ? 0.1 : 0.25);
    out.strands = broken;
    out.strands.insert(out.strands.end(), whole.begin(), whole.end());
    return out;
}

void tell_truth(CombingsShot& shot) {
    std::vector<double> lengths = shot.shot.lengths_mm;
    std::sort(lengths.begin(), lengths.end());
    const size_t n = lengths.size();
    shot.strands = static_cast<double>(n);
    shot.middle_mm[0] = lengths[(n - 1) / 2], shot.middle_mm[1] = lengths[n / 2];
    shot.median_mm = 0.5 * (shot.middle_mm[0] + shot.middle_mm[1]);
    for (const double mm : lengths) shot.short_share += (mm < short_mm ? 100.0 : 0.0) / static_cast<double>(n);
}

CombingsShot take_combings(const CombingsCase& one, uint64_t person, uint64_t lie, uint64_t shot) {
    render::SheetOptions sheet;
    sheet.hair_colour = one.hair;
    sheet.paper = person % 2 ? kempt::card::Paper::a4 : kempt::card::Paper::letter;
    sheet.quarter_turns = false;
    const render::SheetScene scene = render::sheet_scene(person * 31 + 5, shot * 37 + 7, sheet);
    render::Rng rng(lie * 41 + 11);
    CombingsShot out;
    out.shot = render::take_sheet(scene, render::throw_down(rng, one.strands, render::free_lie(scene)));
    out.display_p3 = scene.phone.display_p3;
    tell_truth(out);
    return out;
}

namespace {

// Length of marks that lie on no true strand: farther than 0.6 mm from all of them.
double stray_mm(const CombingsShot& shot, const std::vector<std::vector<cv::Point2d>>& marks) {
    const double reach = 0.6 * shot.shot.px_per_mm;
    std::unordered_map<int64_t, std::vector<cv::Point2d>> cells;
    const auto key = [&](double x, double y, int u, int v) {
        return (static_cast<int64_t>(std::floor(x / reach)) + u) * 1000003 +
               static_cast<int64_t>(std::floor(y / reach)) + v;
    };
    const auto every = [](const auto& path, const auto& act) {  // a point each pixel or nearer, and the step to it
        for (size_t i = 1; i < path.size(); ++i) {
            const cv::Point2d from(path[i - 1].x, path[i - 1].y), d = cv::Point2d(path[i].x, path[i].y) - from;
            const int parts = std::max(1, static_cast<int>(std::ceil(cv::norm(d))));
            for (int k = 0; k < parts; ++k) act(from + d * ((k + 0.5) / parts), cv::norm(d) / parts);
        }
    };
    for (const auto& path : shot.shot.strands_px)
        every(path, [&](cv::Point2d p, double) { cells[key(p.x, p.y, 0, 0)].push_back(p); });
    double px = 0;
    for (const auto& path : marks)
        every(path, [&](cv::Point2d p, double step) {
            for (int v = -1; v <= 1; ++v)
                for (int u = -1; u <= 1; ++u)
                    if (const auto at = cells.find(key(p.x, p.y, u, v)); at != cells.end())
                        for (const cv::Point2d& q : at->second)
                            if (cv::norm(q - p) < reach) return;
            px += step;
        });
    return px / shot.shot.px_per_mm;
}

}  // namespace

Marks compare_marks(const CombingsShot& shot, const kempt::combings::CombingsReadings& read) {
    // Marks in cells of 0.4 mm, filled along the paths; who lies there.
    const double cell = 0.4 * shot.shot.px_per_mm;
    std::unordered_map<int64_t, std::vector<int>> grid;
    const auto key = [&](double x, double y, int u, int v) {
        return (static_cast<int64_t>(std::floor(x / cell)) + u) * 1000003 + static_cast<int64_t>(std::floor(y / cell)) +
               v;
    };
    const auto fill = [&](const std::vector<cv::Point2d>& path, int who) {
        for (size_t i = 1; i < path.size(); ++i) {
            const cv::Point2d d = path[i] - path[i - 1];
            const int parts = std::max(1, static_cast<int>(cv::norm(d) / (0.5 * cell)));
            for (int k = 0; k <= parts; ++k) {
                const cv::Point2d p = path[i - 1] + d * (static_cast<double>(k) / parts);
                auto& there = grid[key(p.x, p.y, 0, 0)];
                if (there.empty() || there.back() != who) there.push_back(who);
            }
        }
    };
    for (size_t s = 0; s < read.strands.size(); ++s) fill(read.strands[s].path_px, static_cast<int>(s));
    for (const auto* marks : {&read.unresolved_px, &read.dim_px})
        for (const auto& path : *marks) fill(path, -1);
    Marks out;
    out.stray_mm = stray_mm(shot, read.dim_px);
    double all = 0, held = 0;
    for (size_t t = 0; t < shot.shot.strands_px.size(); ++t) {
        const auto& path = shot.shot.strands_px[t];
        const double length = shot.shot.lengths_mm[t];
        size_t seen = 0;
        std::unordered_map<int, size_t> along;
        for (const render::V2& p : path) {
            std::vector<int> there;
            for (int v = -1; v <= 1; ++v)
                for (int u = -1; u <= 1; ++u)
                    if (const auto at = grid.find(key(p.x, p.y, u, v)); at != grid.end())
                        there.insert(there.end(), at->second.begin(), at->second.end());
            seen += !there.empty();
            std::sort(there.begin(), there.end());
            there.erase(std::unique(there.begin(), there.end()), there.end());
            for (const int who : there)
                if (who >= 0) ++along[who];
        }
        const double share = static_cast<double>(seen) / static_cast<double>(path.size());
        all += length;
        out.marked += length * share;
        out.lost += share < 0.5;
        for (const auto& [who, count] : along) {
            const kempt::combings::Strand& s = read.strands[static_cast<size_t>(who)];
            if (static_cast<double>(count) < 0.9 * static_cast<double>(path.size()) ||
                std::abs(s.length_mm / length - 1) > 0.08)
                continue;
            ++out.right;
            held += length >= s.length_low && length <= s.length_high;
            break;
        }
    }
    out.marked *= 100 / all;
    out.length_held = out.right > 0 ? 100 * held / out.right : 0;
    return out;
}

}  // namespace bench
