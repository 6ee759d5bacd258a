// Time and memory of `kempt measure` on a 12-megapixel JPEG against decoding that JPEG alone with libjpeg-turbo, in one
// run.
//   bench_speed KEMPT FOLDER [RUNS]    makes FOLDER/speed.jpg when it is missing; prints name,value lines
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "bench/support/timing.h"
#include "render/write_photo.h"

using bench::median;

int main(int argc, char** argv) {
    if (argc < 3) return 2;
    const std::string kempt = argv[1], folder = argv[2], photo = folder + "/speed.jpg",
                      marks = folder + "/speed.marks.json";
    const int runs = argc > 3 ? std::atoi(argv[3]) : 9;
    std::filesystem::create_directories(folder);
    if (!std::filesystem::exists(marks)) {
        render::CloseUpOptions options;
        options.skin_class = 2;
        options.hair_colour = 1;
        options.px_per_mm = 31;
        options.quarter_turns = false;
        options.tilt_max_deg = 8;
        options.field_mm_x = 4032 / 31.0 + 0.01;
        options.field_mm_y = 3024 / 31.0 + 0.01;
        const render::Scene scene = render::close_up(424242, 77, render::printed_card(), options);
        const render::Shot shot = render::take(scene);
        render::write_file(photo, render::jpeg_of(shot, 92, false, {}));
        std::ofstream out(marks);
        out << "{\"view\": \"left temple\", \"edge_line\": [";
        for (size_t i = 0; i < shot.truth.edge_px.size(); i += 4)
            out << (i ? ", " : "") << "[" << shot.truth.edge_px[i].x << ", " << shot.truth.edge_px[i].y << "]";
        out << "], \"hair_side\": [" << shot.truth.hair_side_px.x << ", " << shot.truth.hair_side_px.y << "]}\n";
        std::printf("line_mm,%.1f\n", shot.truth.length_mm);
    }
    std::vector<double> plain, whole, cpus, ratio;
    long peak = 0;
    const std::vector<std::string> command = {kempt, "measure", photo, "--marks", marks, "--json"};
    (void)bench::plain_decode_s(photo);
    (void)bench::run_child(command);
    for (int i = 0; i < runs; ++i) {  // alternating, so that a busy neighbour hits both
        plain.push_back(bench::plain_decode_s(photo));
        const bench::Child child = bench::run_child(command);
        if (!child.good) return 1;
        whole.push_back(child.wall_s);
        cpus.push_back(child.cpu_s);
        peak = std::max(peak, child.peak_kb);
        ratio.push_back(whole.back() / plain.back());
    }
    std::printf(
        "file_mb,%.2f\nplain_decode_ms,%.1f\nmeasure_ms,%.1f\nmeasure_cpu_ms,%.1f\nratio,%.2f\npeak_mb,%.0f\nruns,%d\n",
        static_cast<double>(std::filesystem::file_size(photo)) / 1e6, 1e3 * median(plain), 1e3 * median(whole),
        1e3 * median(cpus), median(ratio), static_cast<double>(peak) / 1024, runs);
    return 0;
}
