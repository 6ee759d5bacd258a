// Sheets with loose strands for a comparison with general image libraries (skimage_strands.py).
//   bench_sheets SEED COUNT FOLDER   writes FOLDER/sheet_SEED.npy (float32 rows x columns: light of the part of the
//   photo where strands lie, 0..1, gamma coded) and prints a CSV row each: its scale, number and mean length of the
//   strands of 5 mm and more in truth and as traced, and the CPU time of tracing the whole photo in one thread (median
//   of three)
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <opencv2/core/utility.hpp>
#include <opencv2/imgproc.hpp>
#include <string>

#include "bench/support/npy.h"
#include "bench/support/timing.h"
#include "card/calibration.h"
#include "combings/trace.h"
#include "intake/intake.h"
#include "render/sheet.h"
#include "render/write_photo.h"

namespace {

constexpr double least_mm = 5;

struct Count {
    int strands = 0;
    double mean_mm = 0;
};

template <class Lengths>
Count count_of(const Lengths& lengths) {
    Count out;
    for (const double mm : lengths)
        if (mm >= least_mm) ++out.strands, out.mean_mm += mm;
    out.mean_mm /= std::max(1, out.strands);
    return out;
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    using namespace kempt;
    cv::setNumThreads(1);
    const uint64_t first = std::strtoull(argv[1], nullptr, 10), count = std::strtoull(argv[2], nullptr, 10);
    std::printf("seed,hair,px_per_mm,strands_true,strands,length_true,length,ms\n");
    for (uint64_t seed = first; seed < first + count; ++seed) {
        render::Rng rng(seed);
        render::SheetOptions options;
        options.hair_colour = static_cast<int>(seed % 7);
        options.px_per_mm = 12;
        options.quarter_turns = false;
        options.tilt_max_deg = 3;
        const render::SheetScene scene = render::sheet_scene(seed, seed + 1, options);
        render::LooseOptions loose;
        loose.count = static_cast<int>(10 + 10 * (seed % 6));
        const render::Lie where = render::free_lie(scene);
        const render::SheetShot shot =
            render::take_sheet(scene, render::throw_down(rng, render::loose_strands(rng, scene.hair, loose), where));
        const auto jpeg = render::jpeg_of(shot.photo, 92, scene.phone.display_p3, {});
        const auto decoded =
            intake::decode(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
        if (!decoded) continue;
        const Photo& photo = decoded->photo;
        const card::Calibration calibration = card::calibrate(photo);
        std::vector<double> times, lengths;
        for (int i = 0; i < 3; ++i) {
            const std::clock_t start = std::clock();
            const auto traced = combings::trace_strands(photo, calibration);
            times.push_back(1e3 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
            lengths.clear();
            if (traced)
                for (const auto& strand : traced->strands) lengths.push_back(strand.length_mm);
        }
        // The upright rectangle around the free part, clear of print and card.
        std::vector<cv::Point2f> inside;
        for (const auto& path : shot.strands_px)
            for (const render::V2& p : path) inside.emplace_back(static_cast<float>(p.x), static_cast<float>(p.y));
        const cv::Rect part =
            (cv::boundingRect(inside) + cv::Size(20, 20) - cv::Point(10, 10)) & cv::Rect({}, photo.pixels.size());
        cv::Mat grey, light;
        cv::cvtColor(photo.pixels(part), grey, cv::COLOR_RGB2GRAY);
        grey.convertTo(light, CV_32F, photo.pixels.depth() == CV_16U ? 1 / 65535.0 : 1 / 255.0);
        bench::write_npy(std::string(argv[3]) + "/sheet_" + std::to_string(seed) + ".npy", light);
        const Count truth = count_of(shot.lengths_mm), found = count_of(lengths);
        std::printf("%llu,%d,%.3f,%d,%d,%.2f,%.2f,%.1f\n", static_cast<unsigned long long>(seed), options.hair_colour,
                    shot.px_per_mm, truth.strands, found.strands, truth.mean_mm, found.mean_mm, bench::median(times));
        std::fflush(stdout);
    }
    return 0;
}
