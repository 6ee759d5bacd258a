// Combed-out strands on the sheet against rendered truth.
//   bench_combings rows SEED COUNT [FOLDER]      one CSV row a photo; photos are kept in FOLDER and used again
//   bench_combings pairs SEED COUNT [FOLDER]     one CSV row a shot: visits A and B of the same strands thrown down
//                                                anew, C (every third) with fewer strands and fewer broken ones
//   bench_combings draw rows|pairs SEED COUNT FOLDER    only their photos
//   bench_combings table ROWS.csv PAIRS.csv      that part of docs/accuracy.md
//   bench_combings look SEED FILE.jpg            the overlay of a row, for people
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <iostream>
#include <map>
#include <opencv2/imgproc.hpp>
#include <string>

#include "bench/combings/cases.h"
#include "bench/combings/kept.h"
#include "bench/combings/page.h"
#include "bench/support/rows.h"
#include "card/calibration.h"
#include "intake/intake.h"
#include "render/write_photo.h"

namespace {

using namespace kempt;

using Number = unsigned long long;
const char* const names[] = {"strands", "strand_median", "short_share"};

struct Read {
    Result<combings::CombingsReadings> readings = Error{};
    double px_per_mm = 0, ms = 0;
    Photo photo;
};

Read measure(const std::vector<uint8_t>& jpeg) {
    Read out;
    auto decoded =
        intake::decode(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    if (!decoded) {
        out.readings = decoded.error();
        return out;
    }
    out.photo = std::move(decoded->photo);
    const card::Calibration calibration = card::calibrate(out.photo);
    if (calibration.sheet) out.px_per_mm = calibration.sheet->px_per_mm;
    timespec from{}, to{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
    out.readings = combings::measure_combings(out.photo, calibration);
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
    out.ms = 1e3 * static_cast<double>(to.tv_sec - from.tv_sec) + 1e-6 * static_cast<double>(to.tv_nsec - from.tv_nsec);
    return out;
}

void print_readings(const bench::CombingsShot& one, const Read& read) {
    const double truth[] = {one.strands, one.median_mm, one.short_share};
    std::map<std::string, Quantity> found;
    std::map<std::string, std::string> refused;
    if (read.readings) {
        for (const Quantity& q : read.readings->readings) found[q.name] = q;
        for (const Refusal& r : read.readings->refused) refused[r.name] = r.code;
    }
    for (int k = 0; k < 3; ++k) {
        std::printf(",%.4f", truth[k]);
        if (const auto q = found.find(names[k]); q != found.end())
            std::printf(",%.4f,%.4f,%.4f,", q->second.value, q->second.low, q->second.high);
        else
            std::printf(",,,,%s", read.readings ? refused[names[k]].c_str() : read.readings.error().code.c_str());
    }
}

void heading(const char* first) {
    std::printf("%s", first);
    for (const char* name : names) std::printf(",%s_true,%s,%s_low,%s_high,%s_refused", name, name, name, name, name);
}

// act(case, photo, seed)
template <class Act>
void every_row(uint64_t seed, uint64_t count, const std::string& folder, Act act) {
    for (uint64_t s = seed; s < seed + count; ++s) {
        const bench::CombingsCase one = bench::combings_case(s);
        act(one, bench::kept_combings(one, s, s, s, folder, "row_" + std::to_string(s)), s);
    }
}

// act(photo, seed, visit, shot)
template <class Act>
void every_pair(uint64_t seed, uint64_t count, const std::string& folder, Act act) {
    for (uint64_t s = seed; s < seed + count; ++s) {
        const bench::CombingsCase before = bench::pairs_case(s), after = bench::recovered(before, s);
        for (const char visit : {'A', 'B', 'C'}) {
            if (visit == 'C' && s % 3 != 0) continue;
            for (uint64_t k = 0; k < 2; ++k) {
                // Shots of a visit: the same lie, the camera held again.
                const uint64_t lie = 3 * s + static_cast<uint64_t>(visit - 'A');
                const std::string name = "pair_" + std::to_string(s) + visit + std::to_string(k);
                act(bench::kept_combings(visit == 'C' ? after : before, s, lie, 2 * lie + k, folder, name), s, visit,
                    k);
            }
        }
    }
}

int rows(uint64_t seed, uint64_t count, const std::string& folder) {
    heading(
        "seed,hair,shape,quality,many,px_per_mm,cpu_ms,marked,lost,right,length_held,doubtful,unresolved,dim,stray_mm,"
        "middle_low,middle_high");
    std::printf("\n");
    every_row(seed, count, folder, [](const bench::CombingsCase& one, const bench::KeptCombings& photo, uint64_t s) {
        const Read read = measure(photo.jpeg);
        std::printf("%llu,%d,%d,%d,%d,%.3f,%.0f", static_cast<Number>(s), one.hair, one.shape, one.quality,
                    photo.truth.strands <= 20   ? 0
                    : photo.truth.strands <= 40 ? 1
                                                : 2,
                    read.px_per_mm, read.ms);
        if (read.readings) {
            const bench::Marks marks = bench::compare_marks(photo.truth, *read.readings);
            int doubtful = 0;
            for (const combings::Strand& strand : read.readings->strands) doubtful += strand.doubtful;
            std::printf(",%.2f,%d,%d,%.1f,%d,%zu,%zu,%.1f", marks.marked, marks.lost, marks.right, marks.length_held,
                        doubtful, read.readings->unresolved_px.size(), read.readings->dim_px.size(), marks.stray_mm);
        } else
            std::printf(",,,,,,,,");
        std::printf(",%.4f,%.4f", photo.truth.middle_mm[0], photo.truth.middle_mm[1]);
        print_readings(photo.truth, read);
        std::printf("\n");
        std::fflush(stdout);
    });
    return 0;
}

int pairs(uint64_t seed, uint64_t count, const std::string& folder) {
    heading("pair,visit,shot");
    std::printf("\n");
    every_pair(seed, count, folder, [](const bench::KeptCombings& photo, uint64_t s, char visit, uint64_t k) {
        std::printf("%llu,%c,%llu", static_cast<Number>(s), visit, static_cast<Number>(k));
        print_readings(photo.truth, measure(photo.jpeg));
        std::printf("\n");
        std::fflush(stdout);
    });
    return 0;
}

int draw(const std::string& what, uint64_t seed, uint64_t count, const std::string& folder) {
    if (what == "rows")
        every_row(seed, count, folder, [](const auto&...) {});
    else
        every_pair(seed, count, folder, [](const auto&...) {});
    return 0;
}

int look(uint64_t seed, const char* file) {
    const bench::CombingsCase one = bench::combings_case(seed);
    const Read read = measure(bench::kept_combings(one, seed, seed, seed, "", "").jpeg);
    if (!read.readings) return 1;
    cv::Mat picture = read.photo.pixels.clone();
    render::Rng rng(seed);
    const auto draw = [&](const std::vector<cv::Point2d>& path, const cv::Scalar& colour, int width) {
        std::vector<cv::Point> points;
        for (const cv::Point2d& p : path) points.emplace_back(cvRound(16 * p.x), cvRound(16 * p.y));
        cv::polylines(picture, points, false, colour, width, cv::LINE_AA, 4);
    };
    for (const combings::Strand& s : read.readings->strands)
        draw(s.path_px, {rng.uniform(0, 220), rng.uniform(0, 220), rng.uniform(0, 220)}, 2);
    for (const auto& path : read.readings->unresolved_px) draw(path, {255, 0, 0}, 3);
    for (const auto& path : read.readings->dim_px) draw(path, {255, 128, 0}, 3);
    render::Shot out;
    out.width = picture.cols;
    out.height = picture.rows;
    out.rgb.assign(picture.data, picture.data + picture.total() * 3);
    render::write_file(file, render::jpeg_of(out, 92, false, {}, false));
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    const std::string mode = argc > 1 ? argv[1] : "";
    const auto number = [&](int k) { return std::strtoull(argv[k], nullptr, 10); };
    if ((argc == 4 || argc == 5) && mode == "rows") return rows(number(2), number(3), argc == 5 ? argv[4] : "");
    if ((argc == 4 || argc == 5) && mode == "pairs") return pairs(number(2), number(3), argc == 5 ? argv[4] : "");
    if (argc == 6 && mode == "draw") return draw(argv[2], number(3), number(4), argv[5]);
    if (argc == 4 && mode == "look") return look(std::strtoull(argv[2], nullptr, 10), argv[3]);
    if (argc == 4 && mode == "table") {
        bench::combings_page(std::cout, bench::read_csv(argv[2]), bench::read_csv(argv[3]));
        return 0;
    }
    std::fprintf(stderr,
                 "bench_combings rows|pairs SEED COUNT [FOLDER], draw rows|pairs SEED COUNT FOLDER, table ROWS.csv "
                 "PAIRS.csv, look SEED FILE.jpg\n");
    return 2;
}
