// Alignment of two visits against rendered truth.
//   bench_align rows SEED COUNT [FOLDER]   one CSV row a pair; photos are kept in FOLDER and used again
//   bench_align table ROWS.csv             that part of docs/accuracy.md
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <iostream>

#include "align/align.h"
#include "bench/align/kept_pairs.h"
#include "bench/align/table.h"
#include "edges/edges.h"
#include "intake/intake.h"
#include "render/write_photo.h"

namespace {

using namespace kempt;

Photo photo_of(const std::vector<uint8_t>& jpeg) {
    const auto decoded =
        intake::decode(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    return decoded ? decoded->photo : Photo{};
}

// Coverage as the program reads it; below 0 when it reads none.
double coverage(const Photo& photo, const card::Calibration& calibration, const std::vector<cv::Point2d>& line,
                cv::Point2d hair) {
    edges::EdgeMarks marks;
    marks.edge_line_px = line;
    marks.hair_side_px = hair;
    const auto measured = edges::measure_edges(photo, calibration, marks);
    if (measured)
        for (const Quantity& reading : measured->readings)
            if (reading.name == "edge_coverage") return reading.value;
    return -1;
}

void row(uint64_t seed, const bench::KeptPair& pair) {
    std::printf("%llu,%s", static_cast<unsigned long long>(seed), pair.what.c_str());
    const Photo before = photo_of(pair.earlier), after = photo_of(pair.later);
    const card::Calibration first = card::calibrate(before), second = card::calibrate(after);
    const align::Side earlier{&before, &first, pair.drawn_px, pair.earlier_hair, {}};
    const align::Side later{&after, &second, {}, {}, {}};
    const std::clock_t start = std::clock();  // of both cores together: other work on the machine does not count
    const auto laid = align::align(earlier, later);
    const double ms = 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    if (!laid) {
        std::printf(",%s,,,,,,,%.0f\n", laid.error().code.c_str(), ms);
        return;
    }
    const auto carried = align::carry(*laid, first, second, pair.earlier_px);
    double sum = 0, worst = 0;
    for (size_t i = 0; i < carried.size(); ++i) {
        const cv::Point2d d = card::mm_from_px(second, carried[i]) - card::mm_from_px(second, pair.later_px[i]);
        sum += std::hypot(d.x, d.y);
        worst = std::max(worst, std::hypot(d.x, d.y));
    }
    std::printf(",,%.3f,%.3f,%.3f,%.2f", sum / static_cast<double>(carried.size()), worst, laid->residual_mm,
                laid->skin_share);
    const double with_true = coverage(after, second, pair.later_px, pair.later_hair),
                 with_carried = coverage(after, second, carried, pair.later_hair);
    for (const double cover : {with_true, with_carried}) {
        if (with_true >= 0 && with_carried >= 0)
            std::printf(",%.2f", cover);
        else
            std::printf(",");
    }
    std::printf(",%.0f\n", ms);
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
    const std::string verb = argc > 1 ? argv[1] : "";
    if (verb == "rows" && argc >= 4) {
        const render::CardPicture card = render::printed_card();
        const uint64_t first = std::strtoull(argv[2], nullptr, 10), count = std::strtoull(argv[3], nullptr, 10);
        const std::string folder = argc > 4 ? argv[4] : "";
        if (!folder.empty()) std::filesystem::create_directories(folder);
        std::printf(
            "seed,skin,hair,px_per_mm,light,change,shift_mm,turn_deg,refused,error_mm,worst_mm,residual_mm,skin_share,"
            "cover_true_line,cover_carried_line,cpu_ms\n");
        for (uint64_t seed = first; seed < first + count; ++seed)
            row(seed, folder.empty() ? bench::fresh_pair(seed, card) : bench::kept_pair(seed, folder, card));
        return 0;
    }
    if (verb == "table" && argc == 3) {
        bench::alignment_table(std::cout, bench::read_csv(argv[2]));
        return 0;
    }
    return 2;
}
