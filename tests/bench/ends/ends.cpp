// Ends on the gauge sheet against rendered truth.
//   bench_ends rows SEED COUNT      one CSV row a photo
//   bench_ends pairs SEED COUNT     visits A, B (the same ends laid down anew, another day) and C (changed), two shots
//                                   each
//   bench_ends table ROWS.csv PAIRS.csv     the part "## Ends" of the page
//   bench_ends strips SEED COUNT FILE       for fitting the estimate of cover (tests/render/train/ends.py); blue-strips
//                                           and blue-photos: the same on the blue sheet (ends_blue.py)
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <map>
#include <string>

#include <QByteArray>

#include "bench/ends/cases.h"
#include "bench/ends/strips.h"
#include "bench/support/tables.h"
#include "ends/ends.h"
#include "intake/intake.h"
#include "render/shade.h"
#include "render/write_photo.h"

namespace {

const char* const names[] = {"hem_unevenness", "see_through", "flyaway"};
constexpr int jpeg_quality = 88;  // about what phones write

struct Measured {
    std::string error;
    kempt::card::Calibration calibration;
    std::map<std::string, kempt::Quantity> readings;
    std::map<std::string, std::string> refused;
};

Measured measure(const bench::EndsShot& shot, bool display_p3) {
    Measured out;
    const std::vector<uint8_t> jpeg = render::jpeg_of(shot.photo, jpeg_quality, display_p3, {});
    const auto decoded = kempt::intake::decode(
        QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    if (!decoded) {
        out.error = decoded.error().code;
        return out;
    }
    out.calibration = kempt::card::calibrate(decoded->photo);
    const auto result = kempt::ends::measure_ends(decoded->photo, out.calibration, shot.region_px);
    if (!result) {
        out.error = result.error().code;
        return out;
    }
    for (const auto& q : result->readings) out.readings[q.name] = q;
    for (const auto& r : result->refused) out.refused[r.name] = r.code;
    return out;
}

int rows(uint64_t seed, uint64_t count) {
    std::printf("seed,hair,view,cut,ends,px_per_mm,tilt,full_cover_true,width_true,light_known,error");
    for (const char* n : names) std::printf(",%s_true,%s,%s_low,%s_high,%s_refused", n, n, n, n, n);
    std::printf("\n");
    for (uint64_t s = seed; s < seed + count; ++s) {
        bench::EndsOptions options;
        options.hair_colour = static_cast<int>(s % render::hair_colours);
        options.ground = render::ground_for_ends(options.hair_colour);
        const bench::EndsCase c = bench::ends_case(s, s + 500000, s + 900000, options);
        const bench::EndsShot shot = bench::take_ends(c, s);
        const Measured m = measure(shot, c.scene.phone.display_p3);
        std::printf("%llu,%d,%d,%d,%d,%.2f,%.1f,%.3f,%.1f,%d,%s", static_cast<unsigned long long>(s),
                    c.scene.hair_colour, c.view, static_cast<int>(c.hair.cut), static_cast<int>(c.hair.ends),
                    m.calibration.px_per_mm, c.scene.camera.tilt_deg, shot.truth.full_cover, shot.truth.width_mm,
                    m.calibration.light && m.calibration.light->curve_fitted, m.error.c_str());
        const double truth[] = {shot.truth.hem_unevenness, shot.truth.see_through, shot.truth.flyaway};
        for (size_t k = 0; k < std::size(names); ++k) {
            const auto q = m.readings.find(names[k]);
            const auto r = m.refused.find(names[k]);
            std::printf(",%.4f", truth[k]);
            if (q != m.readings.end())
                std::printf(",%.4f,%.4f,%.4f,", q->second.value, q->second.low, q->second.high);
            else
                std::printf(",,,,%s", !m.error.empty()       ? m.error.c_str()
                                      : r != m.refused.end() ? r->second.c_str()
                                                             : "none");
        }
        std::printf("\n");
        std::fflush(stdout);
    }
    return 0;
}

// What a careful trim does: the thinned and uneven last centimetres come off.
void trim(render::HemHair& hair, render::Rng& rng) {
    hair.ends = render::Ends::blunt;
    hair.own_sd_mm = rng.uniform(0.3, 0.8);
    hair.lock_sd_mm = rng.uniform(0.2, 0.5);
    hair.thinned_share *= 0.25;
    hair.thinned_mm *= 0.7;
    hair.pointed *= 0.4;
    hair.stray_share *= 0.4;
}

// And what months of breakage do.
void shred(render::HemHair& hair, render::Rng& rng) {
    hair.ends = render::Ends::shredded;
    hair.own_sd_mm = rng.uniform(2, 4);
    hair.lock_sd_mm = rng.uniform(2.5, 4.5);
    hair.thinned_share = rng.uniform(0.5, 0.7);
    hair.thinned_mm = rng.uniform(18, 28);
    hair.pointed = rng.uniform(0.4, 0.7);
    hair.stray_share = std::max(3 * hair.stray_share, 0.03);
}

// The same lamps as well as they are set up again, as bench/pairs.cpp has them; another day's phone settings.
render::Lighting set_up_again(const render::Lighting& usual, render::Rng& day) {
    render::Lighting light = usual;
    const double around = std::atan2(usual.key.y, usual.key.x) + day.normal(0, 0.6);
    const double up = std::clamp(std::asin(usual.key.z) + day.normal(0, 0.14), 0.4, 1.45);
    light.key = {std::cos(up) * std::cos(around), std::cos(up) * std::sin(around), std::sin(up)};
    light.key_share = std::clamp(usual.key_share + day.normal(0, 0.1), 0.15, 0.9);
    light.penumbra = usual.penumbra * std::exp(day.normal(0, 0.3));
    const render::Lighting other = render::random_lighting(day);
    light.gradient_x = other.gradient_x, light.gradient_y = other.gradient_y;
    light.shadow_edge = other.shadow_edge;
    light.shadow_x = other.shadow_x, light.shadow_angle = other.shadow_angle;
    light.shadow_soft_mm = other.shadow_soft_mm, light.shadow_depth = other.shadow_depth;
    light.colour = other.colour;
    return light;
}

// Brightest light on the page times the strongest channel: what a phone exposes for (render/sheet.cpp).
double brightest(const render::SheetScene& scene, const render::Lighting& light) {
    double most = 1;
    for (const double x : {-0.5, 0.5})
        for (const double y : {-0.5, 0.5})
            most = std::max(most, render::light_at(light, x * scene.size_mm.x, y * scene.size_mm.y - 5));
    const auto& gains = scene.phone.gains;
    return most * std::max({light.colour.r * gains.r, light.colour.g, light.colour.b * gains.b});
}

int pairs(uint64_t seed, uint64_t count) {
    std::printf("pair,visit,shot,hair,change,px_per_mm,error");
    for (const char* n : names) std::printf(",%s_true,%s", n, n);
    std::printf("\n");
    for (uint64_t pair = seed; pair < seed + count; ++pair) {
        const uint64_t person = pair * 7919 + 500001;
        render::Rng choose(pair * 31 + 5);
        bench::EndsOptions options;
        options.hair_colour = static_cast<int>(pair % render::hair_colours);
        options.ground = render::ground_for_ends(options.hair_colour);
        options.view = 0;
        options.px_per_mm = choose.uniform(10, 13);
        const bool trimmed = pair / render::hair_colours % 2 == 0;
        // Something to trim, or something to lose.
        bench::EndsCase first = bench::ends_case(person, person + 1, person + 2, options);
        if (trimmed == (first.hair.ends == render::Ends::blunt)) {
            if (trimmed)
                shred(first.hair, choose);
            else
                trim(first.hair, choose);
        }
        render::HemHair changed = first.hair;
        if (trimmed)
            trim(changed, choose);
        else
            shred(changed, choose);
        const render::Lighting usual = first.scene.light;
        for (uint64_t visit = 0; visit < 3; ++visit) {
            render::Rng day(pair * 977 + visit * 131 + 7);
            const bench::EndsCase today = bench::ends_case(person, person + 10 + visit, person + 20 + visit, options);
            const render::Lighting light = set_up_again(usual, day);
            for (uint64_t shot = 0; shot < 2; ++shot) {
                bench::EndsCase c =
                    bench::ends_case(person, person + 10 + visit, person * 10 + visit * 2 + shot, options);
                c.hair = visit == 2 ? changed : first.hair;
                c.scene.phone = today.scene.phone;
                c.scene.phone.exposure *= brightest(today.scene, today.scene.light) / brightest(today.scene, light);
                c.scene.light = light;
                const bench::EndsShot taken = bench::take_ends(c, pair * 100 + visit * 10 + shot);
                const Measured m = measure(taken, c.scene.phone.display_p3);
                std::printf("%llu,%c,%llu,%d,%s,%.2f,%s", static_cast<unsigned long long>(pair), "ABC"[visit],
                            static_cast<unsigned long long>(shot), c.scene.hair_colour, trimmed ? "trim" : "shred",
                            m.calibration.px_per_mm, m.error.c_str());
                const double truth[] = {taken.truth.hem_unevenness, taken.truth.see_through, taken.truth.flyaway};
                for (size_t k = 0; k < std::size(names); ++k) {
                    std::printf(",%.4f,", truth[k]);
                    if (const auto q = m.readings.find(names[k]); q != m.readings.end())
                        std::printf("%.4f", q->second.value);
                }
                std::printf("\n");
                std::fflush(stdout);
            }
        }
    }
    return 0;
}

int table(const std::string& rows_path, const std::string& pairs_path) {
    const std::vector<bench::Row> all = bench::read_csv(rows_path), visits = bench::read_csv(pairs_path);
    const std::vector<bench::Spec> specs = {{"hem_unevenness", "mm", "0.5 mm, mean and 95 %"},
                                            {"see_through", "points", "4 points"},
                                            {"flyaway", "points", "stated"}};
    std::cout
        << "## Ends\n\n"
        << all.size()
        << " rendered photos of a lock mass on the gauge sheet (blunt, worn, shredded and thinned ends; straight, "
           "slanted, U and V cuts; three in four close with the gauge card, the rest the whole sheet without it). "
           "Grey and salt-and-pepper hair lies on the blue sheet, all other on the white one.\n\n";
    bench::reading_table(std::cout, all, specs);
    bench::refusal_line(std::cout, all, specs);
    const std::vector<std::string> hair(render::hair_names, render::hair_names + render::hair_colours);
    for (const auto& spec : specs) bench::class_table(std::cout, all, spec, "hair", "hair", hair);
    bench::class_table(std::cout, all, specs[1], "ends", "ends",
                       {render::end_names, render::end_names + render::end_kinds});
    bench::class_table(std::cout, all, specs[0], "cut", "cut",
                       {render::cut_names, render::cut_names + render::cut_shapes});
    bench::class_table(std::cout, all, specs[1], "photo", "view", {"close, with the card", "whole sheet"});
    std::cout << "The same ends laid down anew and photographed another day (A, B), and after a trim or after more "
                 "shredding (C); two shots a visit.\n\n";
    bench::verdict_table(std::cout, visits, specs);
    bench::verdict_class_table(std::cout, visits, specs, "hair", "hair", hair);
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    const std::string verb = argc > 1 ? argv[1] : "";
    if (verb == "table" && argc == 4) return table(argv[2], argv[3]);
    if (argc < 4) return 2;
    const uint64_t seed = std::strtoull(argv[2], nullptr, 10), count = std::strtoull(argv[3], nullptr, 10);
    if (verb == "rows") return rows(seed, count);
    if (verb == "pairs") return pairs(seed, count);
    if ((verb == "strips" || verb == "blue-strips" || verb == "blue-photos") && argc == 5)
        if (std::FILE* out = std::fopen(argv[4], "wb")) {
            bench::write_strips(seed, count, verb == "strips" ? kempt::card::Ground::white : kempt::card::Ground::blue,
                                verb == "blue-photos", out);
            return std::fclose(out);
        }
    return 2;
}
