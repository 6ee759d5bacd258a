#include "panel_tone.h"

#include <algorithm>

#include "colour/colour.h"
#include "panel_weave.h"
#include "shade.h"

namespace render {

namespace {
using kempt::colour::Lab;

Lab as_lab(V3 v) {
    return {v.x, v.y, v.z};
}
V3 lab_of(Rgb v) {
    const Lab lab = kempt::colour::lab_from_linear_srgb({v.r, v.g, v.b});
    return {lab.L, lab.a, lab.b};
}
double step_share(double s, const ToneChange& change) {
    // 80 % of a Gaussian integral lies within 1.2816 SD.
    const double sd = std::max(0.05, change.width_mm / 2.5631);
    return 0.5 * std::erfc(-(s - change.s_mm) / (sd * std::sqrt(2.0)));
}

// Colours that hair has or is given: the seven classes, and brass, copper, ash and wine tones (own choice).
constexpr V3 other_tones[] = {{10, 1, 1},   {18, 4, 5},   {31, 8, 12}, {36, 21, 25}, {64, 5, 24}, {73, 1, 5},
                              {45, 12, 28}, {52, 16, 38}, {47, 2, 12}, {24, 18, 6},  {80, 0, 14}, {38, 6, 17}};

// Towards another tone just as far as the wanted difference.
V3 stepped(Rng& rng, V3 from, double step) {
    for (int tries = 0; tries < 200; ++tries) {
        const V3 to = other_tones[rng.index(static_cast<int>(std::size(other_tones)))];
        if (kempt::colour::ciede2000(as_lab(from), as_lab(to)) < step) continue;
        double low = 0, high = 1;
        for (int i = 0; i < 40; ++i) {
            const double k = 0.5 * (low + high);
            (kempt::colour::ciede2000(as_lab(from), as_lab(from + (to - from) * k)) < step ? low : high) = k;
        }
        return from + (to - from) * high;
    }
    return {from.x + 2 * step, from.y, from.z};
}
}  // namespace

V3 TonePlan::lab(double s, int leave_out) const {
    V3 colour = root;
    const int count = leave_out < 0 ? static_cast<int>(changes.size()) : leave_out;
    V3 before = root;
    for (int i = 0; i < count; ++i) {
        const ToneChange& change = changes[static_cast<size_t>(i)];
        colour = colour + (change.after - before) * step_share(s, change);
        before = change.after;
    }
    return colour + drift * std::pow(clamp(s / length_mm, 0, 1), drift_power);
}

void set_plan(TonePanel& tone, const TonePlan& plan) {
    tone.plan = plan;
    // A table: the weave asks for every row.
    std::vector<Rgb> table;
    for (double s = 0; s <= plan.length_mm + 40; s += 0.25) {
        const V3 lab = plan.lab(s);
        table.push_back(linear_from_lab(lab.x, lab.y, lab.z));
    }
    tone.panel.albedo = [table](double s) {
        return table[static_cast<size_t>(clamp(s * 4, 0, static_cast<double>(table.size() - 1)))];
    };
    tone.panel.scene.hair.root_dark = 0;
}

TonePanel tone_panel(uint64_t person_seed, uint64_t shot_seed, const CardPicture& card,
                     const TonePanelOptions& options) {
    Rng person(person_seed * 977 + 13);
    PanelOptions po = options.panel;
    const double length = person.uniform(75, 140), radius = person.log_uniform(120, 500);
    if (po.length_mm <= 0) po.length_mm = length;
    if (po.radius_mm <= 0) po.radius_mm = radius;
    if (po.px_per_mm <= 0) po.px_per_mm = Rng(shot_seed + 3).log_uniform(8, 13);
    TonePanel tone;
    tone.panel = panel(person_seed, shot_seed, card, po);
    // Soft light, as the guide asks for tone: the highlight of a hard lamp hides what lies under it.
    tone.panel.scene.light.key_share = options.key_share > 0 ? options.key_share : Rng(shot_seed + 5).uniform(0.1, 0.4);
    TonePlan plan;
    plan.length_mm = po.length_mm;
    plan.root = lab_of(tone.panel.scene.hair.albedo);
    const double how_many = person.uniform();
    const int lines = options.lines >= 0 ? options.lines : how_many < 0.35 ? 0 : how_many < 0.8 ? 1 : 2;
    const double drift = person.chance(0.5) ? person.uniform() : 0, share = options.drift >= 0 ? options.drift : drift;
    plan.drift = {12 * share, person.uniform(-1, 2) * share, 5 * share};
    plan.drift_power = person.uniform(0.8, 1.8);
    // New growth of 4-30 weeks, then a second line well away from the first and from the ends.
    double at = options.first_at_mm > 0 ? options.first_at_mm : person.uniform(7, 0.55 * po.length_mm);
    V3 colour = plan.root;
    for (int i = 0; i < lines; ++i) {
        const double step = person.log_uniform(5, 22), width = person.uniform(0.5, 6);
        const V3 after = stepped(person, colour, options.step > 0 ? options.step : step);
        plan.changes.push_back({at, options.width_mm > 0 ? options.width_mm : width, after});
        colour = after;
        at += person.uniform(20, 35);
        if (at > po.length_mm - 22) break;
    }
    set_plan(tone, plan);
    return tone;
}

ToneTruth tone_truth(const TonePanel& tone, const PanelTruth& truth, double zone_share) {
    ToneTruth out;
    const Panel& panel = tone.panel;
    // To where the ends begin to thin: 7 in 100 fibres have ended by then.
    const double last_s = std::min(truth.s_mm.back(), panel.s_of(panel.end_y) - 1.5 * panel.tip_spread_mm);
    const auto row_of = [&](double s) {
        return static_cast<size_t>(clamp(std::lround(s / truth.row_mm), 0, static_cast<double>(truth.s_mm.size() - 1)));
    };
    const auto plane_at = [&](double s) {
        const double k = clamp(s / truth.row_mm, 0, static_cast<double>(truth.s_mm.size() - 1));
        const size_t i = std::min(static_cast<size_t>(k), truth.s_mm.size() - 2);
        return truth.plane_mm[i] + (k - static_cast<double>(i)) * (truth.plane_mm[i + 1] - truth.plane_mm[i]);
    };
    out.length_mm = plane_at(last_s);
    const size_t last = row_of(last_s);
    const auto mean = [&](double from, double to) {
        V3 sum;
        double n = 0;
        for (size_t i = 0; i <= last; ++i)
            if (truth.plane_mm[i] >= from * out.length_mm && truth.plane_mm[i] <= to * out.length_mm)
                sum = sum + truth.body_lab[i], n += 1;
        return sum * (1 / std::max(1.0, n));
    };
    out.root = mean(0, zone_share);
    out.mid = mean(0.5 - zone_share / 2, 0.5 + zone_share / 2);
    out.end = mean(1 - zone_share, 1);
    const auto difference = [](V3 a, V3 b) { return kempt::colour::ciede2000(as_lab(a), as_lab(b)); };
    out.spread = std::max({difference(out.root, out.mid), difference(out.mid, out.end), difference(out.root, out.end)});

    // What all fibres together show of a fibre's colour: gaps darken, foreign fibres mix in.
    const HairLook& look = panel.scene.hair;
    const auto mixed = [&](V3 lab) {
        const float share = static_cast<float>(look.second_share);
        return linear_from_lab(lab.x, lab.y, lab.z) * (1 - share) + look.second_albedo * share;
    };
    double shown = 0, plain = 0;
    for (size_t i = 0; i <= last; ++i) {
        const Rgb whole = mixed(tone.plan.lab(truth.s_mm[i]));
        shown += truth.body[i].r + truth.body[i].g + truth.body[i].b;
        plain += whole.r + whole.g + whole.b;
    }
    const auto factor = static_cast<float>(shown / plain);
    for (size_t k = 0; k < tone.plan.changes.size(); ++k) {
        const ToneChange& change = tone.plan.changes[k];
        TonePlan with = tone.plan;
        with.changes.resize(k + 1);
        with.changes[k].width_mm = 0;
        const V3 before = with.lab(change.s_mm, static_cast<int>(k)),
                 after = before + change.after - (k ? tone.plan.changes[k - 1].after : with.root);
        out.lines.push_back(
            {difference(lab_of(mixed(before) * factor), lab_of(mixed(after) * factor)), plane_at(change.s_mm),
             plane_at(change.s_mm + change.width_mm / 2) - plane_at(change.s_mm - change.width_mm / 2)});
    }
    const Projector projector(panel.scene.camera);
    for (double s = 0; s < last_s + 5; s += 5) {
        const double at = std::min(s, last_s);
        out.line_px.push_back(projector.px_from(panel.on_head(course(panel, 0, at), at)));
    }
    return out;
}

PatchShot patch_shot(uint64_t seed, const CardPicture& card, PanelLight light, double px_per_mm) {
    Rng rng(seed * 31 + 17);
    PatchShot out;
    Scene scene;
    scene.light = panel_light(rng, light);
    scene.phone = random_phone(rng, 0.5);
    if (light == PanelLight::dim)
        scene.phone.exposure *= 0.45, scene.phone.noise_shot *= 4, scene.phone.noise_read *= 2;
    scene.noise_seed = rng.next();
    scene.card = card;
    scene.card.origin_mm = {-42, -34};
    Camera& camera = scene.camera;
    camera.px_per_mm = px_per_mm;
    camera.tilt_deg = rng.uniform(0, 10);
    camera.tilt_axis_deg = rng.uniform(0, 360);
    camera.turn_deg = rng.normal(0, 3);
    camera.focal_px = 420 * px_per_mm;
    camera.width = static_cast<int>(98 * px_per_mm), camera.height = static_cast<int>(104 * px_per_mm);
    camera.aim_mm = {0, 12};

    constexpr double pitch = 13, side = 12, inner = 8, left = -39, top = 1;
    for (size_t k = 0; k < out.lab.size(); ++k) {
        const Rgb paint = k < 6 ? random_skin(rng, static_cast<int>(k)).albedo
                                : random_hair(rng, static_cast<int>(k) % hair_colours).albedo;
        out.lab[k] = lab_of(paint);
    }
    const Projector projector(camera);
    Rendered drawn;
    drawn.width = camera.width, drawn.height = camera.height;
    drawn.light.resize(static_cast<size_t>(drawn.width) * drawn.height);
    constexpr int samples = 3;
    for (int y = 0; y < drawn.height; ++y)
        for (int x = 0; x < drawn.width; ++x) {
            Rgb sum;
            for (int q = 0; q < samples * samples; ++q) {
                const V2 p = projector.plane_from_px(
                    {x + (q % samples + 0.5) / samples - 0.5, y + (q / samples + 0.5) / samples - 0.5});
                Rgb ground{0.25f, 0.24f, 0.23f};
                const double u = (p.x - scene.card.origin_mm.x) * card.px_per_mm,
                             v = (p.y - scene.card.origin_mm.y) * card.px_per_mm;
                const double col = (p.x - left) / pitch, row = (p.y - top) / pitch;
                if (u >= 0 && v >= 0 && u < card.width && v < card.height) {
                    const float face = card.reflectance[static_cast<size_t>(v) * card.width + static_cast<size_t>(u)];
                    ground = {face, face, face};
                } else if (col >= 0 && col < 6 && row >= 0 && row < 4 && (col - std::floor(col)) * pitch < side &&
                           (row - std::floor(row)) * pitch < side) {
                    const V3 lab = out.lab[static_cast<size_t>(row) * 6 + static_cast<size_t>(col)];
                    ground = linear_from_lab(lab.x, lab.y, lab.z);
                }
                sum = sum + ground * static_cast<float>(light_at(scene.light, p.x, p.y));
            }
            drawn.light[static_cast<size_t>(y) * drawn.width + x] =
                sum * static_cast<float>(1.0 / (samples * samples)) * scene.light.colour;
        }
    for (size_t k = 0; k < out.lab.size(); ++k) {
        const double x = left + pitch * static_cast<double>(k % 6) + side / 2,
                     y = top + pitch * static_cast<double>(k / 6) + side / 2;
        for (size_t c = 0; c < 4; ++c)
            out.area_px[k][c] =
                projector.px_from({x + (c == 1 || c == 2 ? inner : -inner) / 2, y + (c >= 2 ? inner : -inner) / 2, 0});
    }
    out.display_p3 = scene.phone.display_p3;
    out.shot.width = drawn.width, out.shot.height = drawn.height;
    out.shot.rgb = photograph(scene, drawn);
    return out;
}

}  // namespace render
