#include "hem.h"

#include <algorithm>
#include <array>

namespace render {

const char* const cut_names[cut_shapes] = {"straight", "slanted", "U", "V"};
const char* const end_names[end_kinds] = {"blunt", "worn", "shredded", "thinned"};

namespace {

constexpr double tau = 6.283185307179586, degree = tau / 360;

double cut_v(const HemHair& hair, double u) {
    const double across = clamp(2 * u / hair.width_mm, -1, 1);
    switch (hair.cut) {
        case Cut::straight:
            return 0;
        case Cut::slant:
            return -hair.cut_mm * (0.5 - 0.5 * across);
        case Cut::u_shape:
            return -hair.cut_mm * across * across;
        case Cut::v_shape:
            return -hair.cut_mm * std::abs(across);
    }
    return 0;
}

V2 sheet_from(const HemLie& lie, double u, double v) {
    const double c = std::cos(lie.turn_deg * degree), s = std::sin(lie.turn_deg * degree);
    return {lie.u_mm + c * u - s * v, lie.v_mm + s * u + c * v};
}

// Slow shifts along the width: three waves of 40-150 mm.
struct Drift {
    std::array<double, 3> height{}, number{}, phase{};
    Drift(Rng& rng, double sd) {
        for (size_t k = 0; k < 3; ++k) {
            height[k] = sd * std::sqrt(2.0 / 3) * std::abs(rng.normal(1, 0.3));
            number[k] = tau / rng.log_uniform(40, 150);
            phase[k] = rng.uniform(0, tau);
        }
    }
    [[nodiscard]] double at(double u) const {
        double sum = 0;
        for (size_t k = 0; k < 3; ++k) sum += height[k] * std::sin(number[k] * u + phase[k]);
        return sum;
    }
};

struct Lock {  // first what it keeps, then how it lies
    double middle, end, phase, wave, amplitude;
    double shift, slide;
};

std::vector<Lock> make_locks(const HemHair& hair, const HemLie& lie) {
    Rng rng(hair.seed), laid(lie.seed);
    const Drift drift(laid, lie.drift_mm);
    const int n = std::max(1, static_cast<int>(std::lround(hair.width_mm / hair.lock_mm)));
    std::vector<Lock> locks;
    for (int k = 0; k < n; ++k) {
        Lock lock{};
        lock.middle = hair.width_mm * ((k + 0.5 + rng.uniform(-0.25, 0.25)) / n - 0.5);
        lock.end = rng.normal(0, hair.lock_sd_mm);
        lock.phase = rng.uniform(0, tau);
        lock.wave = hair.wave_mm * rng.uniform(0.8, 1.25);
        lock.amplitude = hair.wave_amplitude_mm * rng.uniform(0.5, 1.4);
        lock.shift = drift.at(lock.middle) + laid.normal(0, lie.lock_shift_mm);
        lock.slide = laid.normal(0, lie.lock_slide_mm);
        lock.phase += laid.normal(0, 0.15);
        locks.push_back(lock);
    }
    return locks;
}

}  // namespace

HemHair random_hem(Rng& rng) {
    HemHair hair;
    hair.width_mm = rng.uniform(50, 105);
    hair.layers = rng.log_uniform(1.6, 7);
    hair.cut = static_cast<Cut>(rng.index(cut_shapes));
    hair.cut_mm = hair.cut == Cut::straight ? 0 : hair.width_mm * rng.uniform(0.06, 0.26);
    hair.ends = static_cast<Ends>(rng.index(end_kinds));
    hair.lock_mm = rng.log_uniform(3.5, 11);
    hair.pointed = rng.uniform(0, 0.35);
    switch (hair.ends) {
        case Ends::blunt:
            hair.own_sd_mm = rng.uniform(0.2, 0.9);
            hair.lock_sd_mm = rng.uniform(0.1, 0.6);
            break;
        case Ends::worn:
            hair.own_sd_mm = rng.uniform(0.8, 3);
            hair.lock_sd_mm = rng.uniform(0.6, 2);
            hair.thinned_share = rng.uniform(0.1, 0.4);
            hair.thinned_mm = rng.uniform(8, 25);
            hair.pointed = rng.uniform(0.1, 0.6);
            break;
        case Ends::shredded:
            hair.own_sd_mm = rng.uniform(1, 4);
            hair.lock_sd_mm = rng.uniform(1.5, 5.5);
            hair.thinned_share = rng.uniform(0.2, 0.6);
            hair.thinned_mm = rng.uniform(8, 30);
            hair.pointed = rng.uniform(0.2, 0.85);
            break;
        case Ends::thinned:
            hair.own_sd_mm = rng.uniform(0.5, 3);
            hair.lock_sd_mm = rng.uniform(0.3, 1.8);
            hair.thinned_share = rng.uniform(0.5, 0.95);
            hair.thinned_mm = rng.uniform(15, 45);
            break;
    }
    hair.stray_share = rng.log_uniform(0.002, 0.06);
    hair.wave_mm = rng.log_uniform(25, 90);
    hair.wave_amplitude_mm = hair.wave_mm * rng.log_uniform(0.002, 0.035);
    hair.strand_mm = rng.uniform(0.055, 0.085);
    hair.strand_sd_mm = rng.uniform(0.008, 0.016);
    hair.thickness_mm = rng.log_uniform(0.5, 2.5);
    hair.seed = rng.next();
    return hair;
}

HemLie random_lie(Rng& rng) {
    HemLie lie;
    lie.u_mm = 108 + rng.normal(0, 4);
    lie.v_mm = 120 + rng.normal(0, 8);
    lie.turn_deg = clamp(rng.normal(0, 4), -10, 10);
    lie.spread = std::exp(rng.normal(0, 0.04));
    lie.seed = rng.next();
    return lie;
}

Coat lay_hem(const HemHair& hair, const HemLie& lie, const HairLook& look, double reach_mm) {
    const std::vector<Lock> locks = make_locks(hair, lie);
    const int n = static_cast<int>(hair.layers * hair.width_mm / hair.strand_mm);
    constexpr double step = 0.5;  // sheet_light.cpp keeps cover in cells of 0.5 mm
    Coat coat;
    coat.strands.reserve(static_cast<size_t>(n));
    for (int i = 0; i < n; ++i) {
        // Each strand has its own streams, what it keeps and how it lies: both stay as they are when others come or go.
        Rng own(hair.seed + 0x51ed2701u + static_cast<uint64_t>(i) * 0x9e3779b97f4a7c15ull),
            laid(lie.seed + 0x2c1b3c6du + static_cast<uint64_t>(i) * 0x9e3779b97f4a7c15ull);
        const double u0 = hair.width_mm * (own.uniform() - 0.5);
        // Locks pass into each other: a strand may belong to a neighbour, and lies shifted as its place among them
        // says.
        const auto place = [&](double u) {
            return clamp(u / hair.width_mm + 0.5, 0, 0.9999) * static_cast<double>(locks.size());
        };
        const Lock& lock = locks[static_cast<size_t>(place(u0 + own.normal(0, 0.35 * hair.lock_mm)))];
        const double between = clamp(place(u0) - 0.5, 0, static_cast<double>(locks.size()) - 1.001);
        const auto left = static_cast<size_t>(between);
        const double part = between - static_cast<double>(left),
                     lock_shift =
                         locks.size() > 1 ? locks[left].shift * (1 - part) + locks[left + 1].shift * part : lock.shift;
        double end = cut_v(hair, u0) + lock.end + own.normal(0, hair.own_sd_mm);
        if (own.chance(hair.thinned_share)) end += hair.thinned_mm * std::log(1 - 0.999 * own.uniform());
        const double lock_end = cut_v(hair, lock.middle) + lock.end;
        Strand s;
        s.radius = static_cast<float>(0.5 * clamp(own.normal(hair.strand_mm, hair.strand_sd_mm), 0.02, 0.13));
        const Rgb base = own.chance(look.second_share) ? look.second_albedo : look.albedo;
        s.albedo = base * static_cast<float>(std::exp(own.normal(0, look.spread)));
        s.albedo.b *= static_cast<float>(std::exp(own.normal(0, 0.06)));
        const double level = own.uniform(), phase = lock.phase + own.normal(0, 0.35),
                     amplitude = lock.amplitude * own.uniform(0.6, 1.3), lean = own.normal(0, 0.012);
        const bool stray = own.chance(hair.stray_share);
        const double leaves = end - own.uniform(4, 55), over = stray ? -5 * std::log(1 - own.uniform()) : 0;
        end += lock.slide + over;
        const double shift = lock_shift + laid.normal(0, lie.own_shift_mm);
        const double strays_to = laid.normal(0, 24) * degree, curls = laid.normal(0, 0.025), low = laid.uniform(0, 0.7);
        s.first = static_cast<int>(coat.points.size());
        double away_u = 0, away_v = 0, angle = 0, before = -reach_mm;
        for (double v = -reach_mm + step * own.uniform();; v += step) {
            const double at = std::min(v, end);
            const double gather = hair.pointed * smoothstep(lock_end - 35, lock_end, at);
            double u = lie.spread * u0 + (lie.spread * lock.middle - lie.spread * u0) * gather + shift + lean * at +
                       amplitude * std::sin(phase + tau * at / lock.wave);
            double z = 0.05 + hair.thickness_mm * level * (0.35 + 0.65 * smoothstep(end, end - 25, at));
            if (stray && at > leaves) {
                angle += (strays_to * 0.06 + curls) * (at - before);
                away_u += std::sin(angle) * (at - before);
                away_v += (std::cos(angle) - 1) * (at - before);
                u += away_u;
                z = z * (1 - smoothstep(leaves, leaves + 8, at)) + (0.05 + low) * smoothstep(leaves, leaves + 8, at);
            }
            before = at;
            const V2 p = sheet_from(lie, u, at + away_v);
            coat.points.push_back({p.x, p.y, z});
            if (v >= end) break;
        }
        s.count = static_cast<int>(coat.points.size()) - s.first;
        if (s.count < 2)
            coat.points.resize(static_cast<size_t>(s.first));
        else
            coat.strands.push_back(s);
    }
    return coat;
}

void aim_at_hem(SheetScene& scene, const HemHair& hair, const HemLie& lie, double px_per_mm, Rng& shot) {
    Camera& c = scene.camera;
    const double wide = std::max(100.0, hair.width_mm + 62) + c.tilt_deg, high = 126 + hair.cut_mm + c.tilt_deg;
    const V2 middle = sheet_from(lie, 0, 0);
    c.px_per_mm = px_per_mm;
    c.width = static_cast<int>(wide * px_per_mm);
    c.height = static_cast<int>(high * px_per_mm);
    c.turn_deg = shot.normal(0, 3);
    c.aim_mm = {middle.x + shot.normal(0, 2), middle.y + 11 - 0.5 * hair.cut_mm + shot.normal(0, 1)};
    c.focal_px = shot.uniform(1.0, 1.35) * 1.1 * std::max(c.width, c.height);
    if (scene.card.present()) {
        scene.card.turn_deg = shot.normal(0, 2.5);
        const double k = scene.card.turn_deg * degree;
        const V2 at{middle.x + shot.normal(0, 1.5), middle.y + 52 + shot.normal(0, 1)};
        scene.card.origin_mm = {at.x - 42 * std::cos(k) + 15 * std::sin(k), at.y - 42 * std::sin(k) - 15 * std::cos(k)};
    }
}

std::vector<V2> hem_region_px(const SheetScene& scene, const HemHair& hair, const HemLie& lie, Rng& hand) {
    const Projector projector(scene.camera);
    const double half = 0.5 * hair.width_mm * lie.spread;
    const double sides = half + 23, top = -hair.cut_mm - 44, bottom = 25;
    // A hand sets corners to about a millimetre and a half, and on the picture.
    const auto by_hand = [&](double u, double v) {
        const V2 p = sheet_from(lie, u + hand.normal(0, 1.5), v + hand.normal(0, 1.5));
        const V2 px = projector.px_from({p.x, p.y, 0});
        return V2{clamp(px.x, 0, scene.camera.width - 1), clamp(px.y, 0, scene.camera.height - 1)};
    };
    return {by_hand(-sides, top), by_hand(sides, top), by_hand(sides, bottom), by_hand(-sides, bottom)};
}

}  // namespace render
