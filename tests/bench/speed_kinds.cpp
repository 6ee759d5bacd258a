// `kempt measure` with each kind of marks on a 12-megapixel photo: time on top of decoding, as a ratio to decoding that
// photo alone with libjpeg-turbo in the same run.
// Also the same less the start of the program (`kempt --version`), as photos are read in the windows and in batches.
//   bench_speed_kinds KEMPT FOLDER [RUNS]   makes FOLDER/kind_*.jpg when they are missing; takes the edge photo that
//   bench_speed made; prints name,value lines
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "bench/support/timing.h"
#include "render/hem.h"
#include "render/panel.h"
#include "render/write_photo.h"

namespace {

using bench::median;

constexpr int long_side = 4032, short_side = 3024;

std::string points(const std::vector<render::V2>& of) {
    std::string text = "[";
    for (const render::V2& p : of)
        text += (text.size() > 1 ? ", [" : "[") + std::to_string(p.x) + ", " + std::to_string(p.y) + "]";
    return text + "]";
}

void keep(const std::string& file, const render::Shot& shot, const std::string& marks) {
    render::write_file(file + ".jpg", render::jpeg_of(shot, 92, false, {}));
    std::ofstream(file + ".marks.json") << marks << "\n";
}

void panel(const std::string& file) {
    render::PanelOptions options;
    options.hair_colour = 1;
    options.gloss = 0.4;
    options.px_per_mm = 22;
    options.tilt_max_deg = 6;
    options.card_place = render::CardPlace::right;
    render::Panel panel = render::panel(515151, 78, render::printed_card(), options);
    panel.scene.camera.width = long_side;
    panel.scene.camera.height = short_side;
    const render::PanelShot shot = render::take(panel);
    keep(file, shot.shot,
         "{\"view\": \"lengths\", \"shine_region\": " + points(shot.truth.region_px) +
             ", \"strand_line\": " + points(shot.truth.strand_px) + "}");
}

void hem(const std::string& file) {
    render::Rng rng(616161);
    render::SheetOptions options;
    options.hair_colour = 1;
    options.quarter_turns = false;
    options.tilt_max_deg = 6;
    render::SheetScene scene = render::sheet_scene(616161, 79, options);
    const render::HemHair hair = render::random_hem(rng);
    const render::HemLie lie = render::random_lie(rng);
    render::aim_at_hem(scene, hair, lie, 18, rng);
    const bool upright = scene.camera.height > scene.camera.width;
    scene.camera.width = upright ? short_side : long_side;
    scene.camera.height = upright ? long_side : short_side;
    const render::SheetShot shot = render::take_sheet(scene, render::lay_hem(hair, lie, scene.hair, 90), 0.85);
    keep(file, shot.photo,
         "{\"view\": \"ends\", \"sheet\": \"hem\", \"region\": " +
             points(render::hem_region_px(scene, hair, lie, rng)) + "}");
}

void strands(const std::string& file, int count, render::Shape shape, double apart_mm, const char* kind) {
    render::Rng rng(717171);
    render::SheetOptions options;
    options.hair_colour = 1;
    options.px_per_mm = 13.6;  // the whole Letter sheet in 3024 pixels
    options.quarter_turns = false;
    options.tilt_max_deg = 2;
    render::SheetScene scene = render::sheet_scene(717171, 80, options);
    scene.camera.width = short_side;
    scene.camera.height = long_side;
    render::LooseOptions loose;
    loose.count = count;
    loose.length_mm = shape == render::Shape::straight ? 200 : 120;
    loose.short_share = shape == render::Shape::straight ? 0.2 : 0;
    loose.shape = shape;
    loose.curl_mm = 12;
    render::Lie where = render::free_lie(scene);
    where.apart_mm = apart_mm;
    const render::SheetShot shot =
        render::take_sheet(scene, render::throw_down(rng, render::loose_strands(rng, scene.hair, loose), where));
    keep(file, shot.photo, std::string("{\"view\": \"ends\", \"sheet\": \"") + kind + "\"}");
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 3) return 2;
    const std::string kempt = argv[1], folder = argv[2];
    const int runs = argc > 3 ? std::atoi(argv[3]) : 9;
    const auto missing = [&](const std::string& name) {
        return !std::filesystem::exists(folder + "/" + name + ".marks.json");
    };
    if (missing("kind_shine_and_tone")) panel(folder + "/kind_shine_and_tone");
    if (missing("kind_hem")) hem(folder + "/kind_hem");
    if (missing("kind_combings")) strands(folder + "/kind_combings", 60, render::Shape::straight, 0, "combings");
    if (missing("kind_strand")) strands(folder + "/kind_strand", 6, render::Shape::coiled, 4, "strand");
    const struct {
        const char* name;
        std::string file;
        int readings;  // groups of readings that the marks ask for, each allowed twice the decode
    } kinds[] = {{"edge", folder + "/speed", 1},
                 {"shine_and_tone", folder + "/kind_shine_and_tone", 2},
                 {"hem", folder + "/kind_hem", 1},
                 {"combings", folder + "/kind_combings", 1},
                 {"strand", folder + "/kind_strand", 1}};
    for (const auto& kind : kinds) {
        const std::string photo = kind.file + ".jpg";
        const std::vector<std::string> command = {kempt,   "measure", photo, "--marks", kind.file + ".marks.json",
                                                  "--json"};
        (void)bench::plain_decode_s(photo);
        if (!bench::run_child(command).good) {
            std::fprintf(stderr, "kempt cannot measure %s\n", photo.c_str());
            continue;
        }
        std::vector<double> plain, whole, cpu, on_top, start, running;
        long peak_kb = 0;
        for (int i = 0; i < runs; ++i) {  // alternating, so that a busy neighbour hits both
            plain.push_back(bench::plain_decode_s(photo));
            const bench::Child child = bench::run_child(command);
            const bench::Child nothing = bench::run_child({kempt, "--version"});
            if (!child.good || !nothing.good) return 1;
            start.push_back(nothing.wall_s);
            running.push_back((child.wall_s - nothing.wall_s - plain.back()) / plain.back());
            whole.push_back(child.wall_s);
            cpu.push_back(child.cpu_s);
            on_top.push_back((child.wall_s - plain.back()) / plain.back());
            peak_kb = std::max(peak_kb, child.peak_kb);
        }
        std::printf("kind_%s_decode_ms,%.1f\nkind_%s_measure_ms,%.1f\nkind_%s_cpu_ms,%.1f\n", kind.name,
                    1e3 * median(plain), kind.name, 1e3 * median(whole), kind.name, 1e3 * median(cpu));
        std::printf("kind_%s_start_ms,%.1f\nkind_%s_running,%.2f\n", kind.name, 1e3 * median(start), kind.name,
                    median(running));
        std::printf("kind_%s_on_top,%.2f\nkind_%s_wanted,%d\nkind_%s_peak_mb,%.0f\n", kind.name, median(on_top),
                    kind.name, 2 * kind.readings, kind.name, static_cast<double>(peak_kb) / 1024);
        std::fflush(stdout);
    }
    return 0;
}
