// Renders photos with known truth, measures them and prints one CSV row a photo.
//   bench_accuracy SEED COUNT THREAD_STRIDE [tilt_max] [save folder]   rows SEED .. SEED + COUNT - 1
#include <chrono>
#include <cstdio>
#include <cstdlib>

#include "bench/support/measure_shot.h"
#include "render/write_photo.h"

int main(int argc, char** argv) {
    if (argc < 3) return 2;
    const uint64_t first = std::strtoull(argv[1], nullptr, 10);
    const int count = std::atoi(argv[2]);
    const char* names[] = {"edge_coverage", "edge_strands", "fill_depth", "bare_length", "length_density"};
    std::printf("seed,skin,hair,shape,px_per_mm,tilt,line_mm,line_cover,full_cover,contrast_true,found,px_per_mm_est,tilt_est,curve,gate,error");
    for (const char* n : names) std::printf(",%s_true,%s,%s_low,%s_high,%s_refused", n, n, n, n, n);
    std::printf(",seconds\n");
    const render::CardPicture card = render::printed_card();
    for (int i = 0; i < count; ++i) {
        const uint64_t seed = first + static_cast<uint64_t>(i);
        render::CloseUpOptions options;
        options.skin_class = static_cast<int>(seed % 6);
        options.hair_colour = static_cast<int>(seed / 6 % 7);
        const render::Scene scene = render::close_up(seed * 7919 + 13, seed * 104729 + 7, card, options);
        render::Shot shot = render::take(scene);
        if (argc > 3) render::write_file(std::string(argv[3]) + "/photo_" + std::to_string(seed) + ".jpg", render::jpeg_of(shot, 88, scene.phone.display_p3, {}));
        const auto start = std::chrono::steady_clock::now();
        render::Rng rng(seed);
        const bench::Measured m = bench::measure(scene, shot, 78 + rng.index(18), 0, seed);
        const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
        const auto& t = shot.truth;
        auto lab = [](render::Rgb v) { return kempt::colour::lab_from_linear_srgb({v.r, v.g, v.b}); };
        const double contrast = shot.mean_hair.g > 0 ? kempt::colour::ciede2000(lab(shot.mean_hair), lab(shot.mean_skin)) : -1;
        std::printf("%llu,%d,%d,%d,%.3f,%.2f,%.2f,%.3f,%.3f,%.2f,%d,%.3f,%.2f,%d,%s,%s", static_cast<unsigned long long>(seed), scene.skin_class, scene.hair_colour,
                    static_cast<int>(scene.growth.shape), t.px_per_mm, t.tilt_deg, t.length_mm, t.line_cover, t.full_cover, contrast, m.calibration.card_found,
                    m.calibration.px_per_mm, m.calibration.tilt_deg, m.calibration.light && m.calibration.light->curve_fitted, m.gate.level.c_str(), m.error.c_str());
        const double truth[] = {t.edge_coverage, t.edge_strands, t.fill_depth, t.bare_length, t.length_density};
        for (int k = 0; k < 5; ++k) {
            const auto q = m.readings.find(names[k]);
            const auto r = m.refused.find(names[k]);
            if (q != m.readings.end())
                std::printf(",%.4f,%.4f,%.4f,%.4f,", truth[k], q->second.value, q->second.low, q->second.high);
            else
                std::printf(",%.4f,,,,%s", truth[k], r != m.refused.end() ? r->second.c_str() : "none");
        }
        std::printf(",%.3f\n", seconds);
        std::fflush(stdout);
    }
    return 0;
}
