#include "sheet.h"

#include <algorithm>
#include <cstdlib>
#include <string_view>

#include "shade.h"
#include "write_photo.h"

namespace render {

namespace {
constexpr double degree = 3.14159265358979 / 180;

// Lint: textile fibres of 10-20 um (finer than hair) up to 4.5 mm, and specks of dust.
void add_lint(Coat& coat, Rng& rng, V2 size, int count) {
    for (int n = 0; n < count; ++n) {
        Strand s;
        const bool speck = rng.chance(0.4);
        const double length = speck ? rng.uniform(0.05, 0.25) : rng.log_uniform(0.6, 4.5);
        s.radius = static_cast<float>(speck ? rng.uniform(0.03, 0.12) : rng.uniform(0.005, 0.011));
        const double tone = rng.log_uniform(0.03, 0.7);
        s.albedo = {static_cast<float>(tone * rng.uniform(0.7, 1.2)), static_cast<float>(tone * rng.uniform(0.7, 1.2)),
                    static_cast<float>(tone * rng.uniform(0.8, 1.3))};
        double x = rng.uniform(3, size.x - 3), y = rng.uniform(3, size.y - 3), angle = rng.uniform(0, 6.2831853),
               bend = rng.normal(0, 0.5);
        s.first = static_cast<int>(coat.points.size());
        for (double t = 0; t <= length + 0.05; t += 0.1) {
            coat.points.push_back({x, y, 0.03});
            x += 0.1 * std::cos(angle), y += 0.1 * std::sin(angle);
            angle += 0.1 * bend;
            bend += rng.normal(0, 0.1);
        }
        s.count = static_cast<int>(coat.points.size()) - s.first;
        coat.strands.push_back(s);
    }
}

// Width and height that hold the page's corners and `around` mm of table, with the aim in the middle.
void frame(Camera& c, V2 size, double around) {
    c.width = c.height = 2;
    const Projector projector(c);
    double wide = 0, high = 0;
    for (int i = 0; i < 4; ++i) {
        const V2 p = projector.px_from({i & 1 ? size.x + around : -around, i & 2 ? size.y + around : -around, 0});
        wide = std::max(wide, std::abs(p.x - 0.5));
        high = std::max(high, std::abs(p.y - 0.5));
    }
    c.width = 2 * static_cast<int>(wide);
    c.height = 2 * static_cast<int>(high);
}
// What printers make of the blue area: each its own blue, paler, darker or redder than what was asked for
// (card::blue_print, linear 0.04, 0.12, 0.50), and uneven by some per cent. Ranges are an own guess: no published
// spread of office printers' blues was found.
void print_blue(SheetScene& s, Rng& printer) {
    s.blue = {static_cast<float>(printer.uniform(0.03, 0.08)), static_cast<float>(printer.uniform(0.08, 0.17)),
              static_cast<float>(printer.uniform(0.36, 0.58))};
    s.blue_mottle = printer.uniform(0.01, 0.04);
}
}  // namespace

kempt::card::Ground ground_for_ends(int hair_colour) {
    static const char* const only = std::getenv("KEMPT_SHEET");
    if (only != nullptr && std::string_view(only) == "white") return kempt::card::Ground::white;
    constexpr int grey = 5;  // then salt and pepper
    return hair_colour >= grey ? kempt::card::Ground::blue : kempt::card::Ground::white;
}

SheetScene sheet_scene(uint64_t person_seed, uint64_t shot_seed, const SheetOptions& options) {
    Rng person(person_seed), shot(shot_seed);
    double exposed_more = 1;
    SheetScene s;
    s.paper = options.paper;
    const cv::Size2d page = kempt::card::paper_size_mm(options.paper);
    s.size_mm = {page.width, page.height};
    s.hair_colour = options.hair_colour >= 0 ? options.hair_colour : person.index(hair_colours);
    s.hair = random_hair(person, s.hair_colour);
    s.strand_seed = person.next();
    const double white = person.uniform(0.8, 0.9), cool = person.uniform(-0.01, 0.03);
    s.white = {static_cast<float>(white * (1 - cool)), static_cast<float>(white),
               static_cast<float>(white * (1 + cool))};
    s.ink = static_cast<float>(person.uniform(0.02, 0.06));
    s.grain = person.uniform(0.003, 0.015);
    s.mottle = person.uniform(0.002, 0.015);
    s.paper_seed = static_cast<uint32_t>(person.next());
    const double dark = person.log_uniform(0.05, 0.6);
    s.table = {static_cast<float>(dark * person.uniform(0.9, 1.2)), static_cast<float>(dark),
               static_cast<float>(dark * person.uniform(0.6, 1.1))};
    for (int i = 0; i < 2; ++i)
        if (person.chance(options.creases))
            s.creases.push_back({{person.uniform(0.2, 0.8) * page.width, person.uniform(0.2, 0.8) * page.height},
                                 person.uniform(0, 3.14159),
                                 person.uniform(0.02, 0.12),
                                 person.log_uniform(0.3, 1.2)});
    s.ground = options.ground;
    if (s.ground == kempt::card::Ground::blue) {
        // Streams of their own, so that the same seeds give the same person, light and phone on the white sheet.
        Rng printer(person_seed * 0x9e3779b97f4a7c15ull + 91), metering(shot_seed * 0x9e3779b97f4a7c15ull + 93);
        s.blue_mm = kempt::card::blue_area_mm(options.paper);
        print_blue(s, printer);
        exposed_more = metering.uniform(1.0, 1.2);  // a phone lightens a picture that is mostly dark
    }
    s.lie_seed = shot.next();
    s.light = random_lighting(shot);
    s.light.gradient_x *= 0.5;  // the sheet is three times as large as a close-up
    s.light.gradient_y *= 0.5;
    s.phone = random_phone(shot, options.phone_strength);
    s.noise_seed = shot.next();
    if (options.lint > 0) add_lint(s.lint, shot, s.size_mm, static_cast<int>(options.lint * shot.uniform(5, 25)));
    Camera& c = s.camera;
    c.px_per_mm = options.px_per_mm > 0 ? options.px_per_mm : shot.uniform(10, 14);
    c.tilt_deg = std::min(options.tilt_max_deg, std::abs(shot.normal(0, 0.5 * options.tilt_max_deg)));
    c.tilt_axis_deg = shot.uniform(0, 360);
    c.turn_deg = 90 * (options.quarter_turns ? shot.index(4) : 0) + shot.normal(0, 2.5);
    c.aim_mm = {page.width / 2 + shot.normal(0, 2), page.height / 2 + shot.normal(0, 2)};
    c.focal_px = shot.uniform(1.0, 1.35) * 1.1 * page.height * c.px_per_mm;
    frame(c, s.size_mm, options.table_mm);
    // A phone exposes for the paper: its brightest part stays below the sensor's top, or just reaches it.
    double brightest = 0;
    for (int i = 0; i < 4; ++i)
        brightest = std::max(
            brightest, light_at(s.light, (i & 1 ? 0.5 : -0.5) * page.width, (i & 2 ? 0.5 : -0.5) * page.height - 5));
    const double colour =
        std::max({s.light.colour.r * s.phone.gains.r, s.light.colour.g, s.light.colour.b * s.phone.gains.b});
    s.phone.exposure *= 0.98 * exposed_more / (white * std::max(1.0, brightest) * colour);
    if (options.card) {
        static const CardPicture face = printed_card();
        s.card = face;
        for (float& v : s.card.reflectance) v *= static_cast<float>(white);
        const V2 middle{options.card_mm.x >= 0 ? options.card_mm.x : page.width / 2 + shot.normal(0, 3),
                        options.card_mm.y >= 0 ? options.card_mm.y : page.height - 19 + shot.normal(0, 0.7)};
        s.card.turn_deg = shot.normal(0, 0.8);
        const double a = s.card.turn_deg * degree;
        s.card.origin_mm = {middle.x - 42 * std::cos(a) + 15 * std::sin(a),
                            middle.y - 42 * std::sin(a) - 15 * std::cos(a)};
    }
    return s;
}

SheetShot take_sheet(const SheetScene& scene, const Coat& coat, double taper) {
    Rendered r = sheet_light(scene, coat, taper);
    Scene phone;
    phone.phone = scene.phone;
    phone.noise_seed = scene.noise_seed;
    SheetShot out;
    out.photo.width = r.width;
    out.photo.height = r.height;
    out.photo.rgb = photograph(phone, r);
    out.cover = std::move(r.cover);
    out.px_per_mm = scene.camera.px_per_mm;
    out.tilt_deg = scene.camera.tilt_deg;
    const Projector projector(scene.camera);
    for (const Strand& s : coat.strands) {
        std::vector<V2> mm, px;
        double length = 0;
        for (int i = s.first; i < s.first + s.count; ++i) {
            const V3 p = coat.points[static_cast<size_t>(i)];
            if (!mm.empty()) length += std::hypot(p.x - mm.back().x, p.y - mm.back().y);
            mm.push_back({p.x, p.y});
            px.push_back(projector.px_from(p));
        }
        out.strands_mm.push_back(std::move(mm));
        out.strands_px.push_back(std::move(px));
        out.lengths_mm.push_back(length);
    }
    return out;
}

Lie free_lie(const SheetScene& scene) {
    Lie lie;
    const double strip = kempt::card::sheet_marker_inset_mm + kempt::card::sheet_marker_mm / 2 + 4;
    if (!scene.blue_mm.empty()) {
        constexpr double clear = 4;  // of the printed area's rim
        lie.from = {scene.blue_mm.x + clear, scene.blue_mm.y + clear};
        lie.to = {scene.blue_mm.br().x - clear, scene.blue_mm.br().y - clear};
        return lie;
    }
    lie.from = {8, strip + 4};
    lie.to = {scene.size_mm.x - 8, scene.size_mm.y - strip - (scene.card.present() ? 13 : 0)};
    return lie;
}

}  // namespace render
