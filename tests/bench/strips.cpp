// Straightened bands of rendered close-ups for a comparison with general image libraries (skimage_edges.py).
//   bench_strips SEED COUNT FOLDER   writes FOLDER/photo_SEED.npy (uint8 RGB) and FOLDER/places_SEED.npy (float32 rows
//   x columns x 2: where in the photo each place of the band lies, x and y; rows run inward) and prints a CSV row each:
//   the band's scale and first depth, truth, our readings and the CPU time of measure_edges in one thread (median of
//   three)
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <opencv2/core/utility.hpp>
#include <string>

#include "bench/support/measure_shot.h"
#include "bench/support/npy.h"
#include "bench/support/timing.h"
#include "edges/band.h"
#include "intake/intake.h"
#include "intake/picture_memory.h"
#include "render/write_photo.h"

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    using namespace kempt;
    cv::setNumThreads(1);
    intake::use_large_pages();  // as both programs do
    const uint64_t first = std::strtoull(argv[1], nullptr, 10), count = std::strtoull(argv[2], nullptr, 10);
    const render::CardPicture card = render::printed_card();
    std::printf("seed,hair,px_per_mm,from_mm,coverage_true,coverage,strands_true,strands,ms\n");
    for (uint64_t seed = first; seed < first + count; ++seed) {
        render::CloseUpOptions options;
        options.skin_class = static_cast<int>(seed % 6);
        options.hair_colour = static_cast<int>(seed / 6 % 7);
        options.px_per_mm = 21.5;  // close enough for counts; the band keeps the photo's own scale or nearly
        options.tilt_max_deg = 12;
        options.field_mm_x = 94;
        options.field_mm_y = 66;
        options.quarter_turns = false;
        const render::Scene scene = render::close_up(seed, seed + 1, card, options);
        const render::Shot shot = render::take(scene, 8, 3);
        const auto jpeg = render::jpeg_of(shot, 92, scene.phone.display_p3, {});
        const auto decoded =
            intake::decode(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
        if (!decoded) continue;
        const Photo& photo = decoded->photo;
        const card::Calibration calibration = card::calibrate(photo);
        const edges::EdgeMarks marks = bench::drawn(shot, options.px_per_mm, 0, seed);
        const auto line = edges::straighten(photo, calibration, marks.edge_line_px, marks.hair_side_px);
        if (!line) continue;
        std::vector<double> times;
        double coverage = -1, strands = -1;
        for (int i = 0; i < 3; ++i) {
            const std::clock_t start = std::clock();
            const auto read = edges::measure_edges(photo, calibration, marks);
            times.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
            if (!read) continue;
            for (const Quantity& q : read->readings) {
                if (q.name == "edge_coverage") coverage = q.value;
                if (q.name == "edge_strands") strands = q.value;
            }
        }
        if (coverage < 0) continue;  // refused: nothing to compare
        const double from_mm = -3;
        cv::Mat2f places(static_cast<int>((20 - from_mm) / line->step_mm), static_cast<int>(line->at_mm.size()));
        for (int y = 0; y < places.rows; ++y)
            for (int x = 0; x < places.cols; ++x) {
                const cv::Point2d px =
                    edges::px_of(calibration, *line, x * line->step_mm, from_mm + (y + 0.5) * line->step_mm);
                places(y, x) = {static_cast<float>(px.x), static_cast<float>(px.y)};
            }
        const std::string folder = argv[3], number = std::to_string(seed);
        bench::write_npy(folder + "/photo_" + number + ".npy", photo.pixels);
        bench::write_npy(folder + "/places_" + number + ".npy", places);
        std::printf("%llu,%d,%.4f,%.2f,%.3f,%.3f,%.3f,%.3f,%.1f\n", static_cast<unsigned long long>(seed),
                    options.hair_colour, 1 / line->step_mm, from_mm, shot.truth.edge_coverage, coverage,
                    shot.truth.edge_strands, strands, bench::median(times));
        std::fflush(stdout);
    }
    return 0;
}
