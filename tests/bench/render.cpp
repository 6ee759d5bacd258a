// Renders close-ups with known truth into a folder: photo_SEED.jpg, line_SEED.txt and one row of truth_FIRST.csv each.
//   bench_render FOLDER SEED COUNT
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>

#include "colour/colour.h"
#include "render/write_photo.h"

int main(int argc, char** argv) {
    if (argc < 4) return 2;
    const std::string folder = argv[1];
    std::filesystem::create_directories(folder);
    const render::CardPicture card = render::printed_card();
    const uint64_t first = std::strtoull(argv[2], nullptr, 10), count = std::strtoull(argv[3], nullptr, 10);
    FILE* truth = std::fopen((folder + "/truth_" + argv[2] + ".csv").c_str(), "w");
    if (!truth) return 1;
    for (uint64_t seed = first; seed < first + count; ++seed) {
        render::CloseUpOptions options;
        options.skin_class = static_cast<int>(seed % 6);
        options.hair_colour = static_cast<int>(seed / 6 % 7);
        const render::Scene scene = render::close_up(seed * 7919 + 13, seed * 104729 + 7, card, options);
        const render::Shot shot = render::take(scene);
        render::Rng rng(seed);
        const std::string name = std::to_string(seed);
        render::write_file(folder + "/photo_" + name + ".jpg",
                           render::jpeg_of(shot, 78 + rng.index(18), scene.phone.display_p3, {}));
        const auto& t = shot.truth;
        if (FILE* line = std::fopen((folder + "/line_" + name + ".txt").c_str(), "w")) {
            std::fprintf(line, "%.2f %.2f\n", t.hair_side_px.x, t.hair_side_px.y);
            for (const auto& p : t.edge_px) std::fprintf(line, "%.2f %.2f\n", p.x, p.y);
            std::fclose(line);
        }
        auto lab = [](render::Rgb v) { return kempt::colour::lab_from_linear_srgb({v.r, v.g, v.b}); };
        const double contrast =
            shot.mean_hair.g > 0 ? kempt::colour::ciede2000(lab(shot.mean_hair), lab(shot.mean_skin)) : -1;
        std::fprintf(truth, "%s,%d,%d,%d,%.4f,%.3f,%.2f,%.4f,%.4f,%.2f,%.4f,%.4f,%.4f,%.4f,%.5f\n", name.c_str(),
                     scene.skin_class, scene.hair_colour, static_cast<int>(scene.growth.shape), t.px_per_mm, t.tilt_deg,
                     t.length_mm, t.line_cover, t.full_cover, contrast, t.edge_coverage, t.edge_strands, t.fill_depth,
                     t.bare_length, t.length_density);
        std::fflush(truth);
    }
    std::fclose(truth);
    return 0;
}
