#include "bench/align/visits.h"

#include <cmath>

#include "render/write_photo.h"

namespace bench {

namespace {

constexpr double radian = 3.14159265358979 / 180;

// Turns and shifts the card, then slides it outward until it keeps clear of the hairline.
void lay_card(render::Scene& scene, double dx, double out, double turn_deg) {
    render::CardPicture& card = scene.card;
    const double c = std::cos(turn_deg * radian), s = std::sin(turn_deg * radian);
    card.turn_deg = turn_deg;
    // The face is 84 x 30 mm; turned about its middle.
    const double middle_x = dx, middle_y = card.origin_mm.y + 15 - out;
    card.origin_mm = {middle_x - 42 * c + 15 * s, middle_y - 42 * s - 15 * c};
    constexpr double clear_mm = 3.5;
    double over = 0;
    for (double u = 0; u <= 84; u += 2) {
        const double x = card.origin_mm.x + u * c - 30 * s, y = card.origin_mm.y + u * s + 30 * c;
        over = std::max(over, y + clear_mm - scene.edge_y(x));
    }
    card.origin_mm.y -= over;
}

void set_chair(render::Scene& scene, uint64_t person, uint64_t day) {
    render::Rng chair(person + 3), set_up(day + 9);  // as tests/bench/pairs.cpp
    const render::Lighting usual = render::random_lighting(chair);
    const double around = std::atan2(usual.key.y, usual.key.x) + set_up.normal(0, 0.6);
    const double up = std::min(1.45, std::max(0.4, std::asin(usual.key.z) + set_up.normal(0, 0.14)));
    scene.light.key = {std::cos(up) * std::cos(around), std::cos(up) * std::sin(around), std::sin(up)};
    scene.light.key_share = std::min(0.9, std::max(0.15, usual.key_share + set_up.normal(0, 0.1)));
    scene.light.penumbra = usual.penumbra * std::exp(set_up.normal(0, 0.3));
}

void finish(Visit& visit) {
    visit.shot = render::take(visit.scene, 20, 3);
    visit.jpeg = render::jpeg_of(visit.shot, 85, visit.scene.phone.display_p3, {});
}

}  // namespace

VisitPair visit_pair(uint64_t seed, const render::CardPicture& card) {
    render::Rng choose(seed * 31 + 5);
    VisitPair pair;
    const bool near = choose.chance(0.2);
    const uint64_t person = seed * 7919 + 900001;
    std::array<Visit*, 2> visits{&pair.earlier, &pair.later};
    for (uint64_t k = 0; k < 2; ++k) {
        render::CloseUpOptions options;
        options.skin_class = static_cast<int>(seed % 6);
        options.hair_colour = static_cast<int>(seed / 6 % 7);
        options.px_per_mm = near ? choose.uniform(20, 21.5) : choose.uniform(12.2, 13.8);
        options.tilt_max_deg = 15;
        options.phone_strength = 0.6;
        options.field_mm_x = 114;  // the card 84 mm wide, shifted by up to 12 mm
        options.field_mm_y = 80;
        options.quarter_turns = false;
        const uint64_t day = (seed * 2 + k) * 104729 + 77;
        render::Scene& scene = visits[k]->scene;
        scene = render::close_up(person, day, card, options);
        visits[k]->px_per_mm = options.px_per_mm;
        scene.camera.turn_deg = std::fmod(scene.camera.turn_deg, 6.0);
        scene.camera.aim_mm = {choose.normal(0, 2), -13 + choose.normal(0, 2)};
        scene.growth.density = std::min(1.6, scene.growth.density);
        scene.skin_on_bulge = true;
        set_chair(scene, person, day);
    }
    render::Scene &first = pair.earlier.scene, &second = pair.later.scene;
    pair.any_light = choose.chance(0.5);
    if (pair.any_light) {
        render::Rng anywhere(seed + 77);
        second.light = render::random_lighting(anywhere);
    }
    const int change = choose.index(4);
    const double growth = choose.uniform(0.7, 1.5), out = choose.uniform(1, 3);
    pair.change = std::array{"none", "density", "restyled", "grown out"}[static_cast<size_t>(change)];
    if (change == 1) second.growth.density *= growth;
    if (change >= 2) second.strand_seed += 99991, second.growth.direction_deg += choose.normal(0, 30);
    lay_card(first, choose.normal(0, 1), 0, first.card.turn_deg);
    lay_card(second, choose.uniform(-12, 12), choose.uniform(0, 10), choose.uniform(-8, 8));
    pair.card_turn_deg = second.card.turn_deg - first.card.turn_deg;
    const auto middle = [](const render::CardPicture& c) {
        const double k = c.turn_deg * radian;
        return render::V2{c.origin_mm.x + 42 * std::cos(k) - 15 * std::sin(k),
                          c.origin_mm.y + 42 * std::sin(k) + 15 * std::cos(k)};
    };
    const render::V2 a = middle(first.card), b = middle(second.card);
    pair.card_shift_mm = std::hypot(b.x - a.x, b.y - a.y);
    if (change == 3) second.edge_y = [was = first.edge_y, out](double x) { return was(x) - out; };
    return pair;
}

void photograph(VisitPair& pair) {
    finish(pair.earlier);
    finish(pair.later);
}

SamePlaces edge_places(const VisitPair& pair) {
    const render::Scene &first = pair.earlier.scene, &second = pair.later.scene;
    const render::Projector from(first.camera), to(second.camera);
    SamePlaces places;
    for (double x = first.x_from; x <= first.x_to + 1e-9; x += 1) {
        const double y = first.edge_y(x);
        const render::V3 at{x, y, first.camera.scalp_z(y)};
        places.earlier_px.push_back(from.px_from(at));
        places.later_px.push_back(to.px_from(at));
    }
    return places;
}

}  // namespace bench
