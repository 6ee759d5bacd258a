// Pattern and stretch of strands on the sheet against rendered truth.
//   bench_pattern rows SEED COUNT               one CSV row a photo
//   bench_pattern pairs SEED COUNT              one CSV row a shot: visits A and B of the same strands laid down anew,
//                                               C with the curls loosened
//   bench_pattern table ROWS.csv PAIRS.csv      that part of docs/accuracy.md
//   bench_pattern look SEED COUNT               every strand, true and measured, for people
//   bench_pattern photo SEED FILE.jpg           the photo of a row
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <iostream>
#include <map>
#include <string>

#include "bench/pattern/cases.h"
#include "bench/pattern/page.h"
#include "card/calibration.h"
#include "intake/intake.h"
#include "pattern/pattern.h"
#include "render/write_photo.h"

namespace {

using namespace kempt;

using Number = unsigned long long;
const char* const names[] = {"curve_diameter", "wave_ratio", "strand_length"};
// How much wider the coils of visit C are, and how much flatter its waves: a mild loosening.
constexpr double loosened = 1.3;

Result<pattern::PatternReadings> measure(const bench::PatternCase& scene, const bench::PatternShot& shot) {
    const auto jpeg = render::jpeg_of(shot.shot.photo, 88, scene.scene.phone.display_p3, {});
    const auto decoded =
        intake::decode(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    if (!decoded) return decoded.error();
    return pattern::measure_pattern(decoded->photo, card::calibrate(decoded->photo));
}

bench::PatternCase case_of(uint64_t seed) {
    return bench::pattern_case(seed, seed, static_cast<int>(seed % 7),
                               static_cast<int>(seed / 7 % bench::pattern_classes));
}

double truth_of(const bench::TrueShape& shape, int k) {
    return k == 0 ? shape.curve_diameter_mm : k == 1 ? shape.wave_ratio : shape.arc_mm;
}

// value, low, high (empty when refused) and the refusal's code, for each reading after its truth.
void print(const bench::PatternShot& shot, const Result<pattern::PatternReadings>& read) {
    std::map<std::string, Quantity> found;
    std::map<std::string, std::string> refused;
    if (read) {
        for (const Quantity& q : read->readings) found[q.name] = q;
        for (const Refusal& r : read->refused) refused[r.name] = r.code;
    }
    for (int k = 0; k < 3; ++k) {
        std::printf(",%.4f", truth_of(shot.median, k));
        if (const auto q = found.find(names[k]); q != found.end())
            std::printf(",%.4f,%.4f,%.4f,", q->second.value, q->second.low, q->second.high);
        else
            std::printf(",,,,%s", read ? refused[names[k]].c_str() : read.error().code.c_str());
    }
    std::printf("\n");
    std::fflush(stdout);
}

void heading() {
    for (const char* n : names) std::printf(",%s_true,%s,%s_low,%s_high,%s_refused", n, n, n, n, n);
    std::printf("\n");
}

void rows(uint64_t first, uint64_t count) {
    std::printf("seed,hair,pattern,px_per_mm,strands_true,strands,merged");
    heading();
    for (uint64_t seed = first; seed < first + count; ++seed) {
        const bench::PatternCase scene = case_of(seed);
        const bench::PatternShot shot = bench::take_pattern(scene, seed);
        const auto read = measure(scene, shot);
        int clear = 0;
        if (read)
            for (const auto& s : read->strands) clear += !s.doubtful && !s.cut_off;
        std::printf("%llu,%d,%d,%.2f,%zu,%d,%d", static_cast<Number>(seed), scene.scene.hair_colour, scene.pattern,
                    shot.shot.px_per_mm, shot.strands.size(), clear, bench::merged_strands(shot.shot));
        print(shot, read);
    }
}

void pairs(uint64_t first, uint64_t count) {
    std::printf("pair,visit,shot,hair,pattern");
    heading();
    for (uint64_t pair = first; pair < first + count; ++pair) {
        const int colour = static_cast<int>(pair % 7), kind = static_cast<int>(pair / 7 % bench::pattern_classes);
        // Every fourth pair is seen a third time, with looser curls; straight hair has none to loosen.
        const int visits = pair % 4 == 0 && kind > 0 ? 3 : 2;
        for (int visit = 0; visit < visits; ++visit)
            for (int i = 0; i < 2; ++i) {
                const uint64_t day = pair * 3 + static_cast<uint64_t>(visit);
                const bench::PatternCase scene = bench::pattern_case(
                    pair + 5000000, day * 10 + static_cast<uint64_t>(i), colour, kind, visit == 2 ? loosened : 1);
                const bench::PatternShot shot = bench::take_pattern(scene, day + 7000000);
                std::printf("%llu,%c,%d,%d,%d", static_cast<Number>(pair), "ABC"[visit], i, colour, kind);
                print(shot, measure(scene, shot));
            }
    }
}

void look(uint64_t first, uint64_t count) {
    for (uint64_t seed = first; seed < first + count; ++seed) {
        const bench::PatternCase scene = case_of(seed);
        const bench::PatternShot shot = bench::take_pattern(scene, seed);
        std::printf("seed %llu %s %s %.1f px/mm\n", static_cast<Number>(seed), bench::pattern_names[scene.pattern],
                    render::hair_names[scene.scene.hair_colour], shot.shot.px_per_mm);
        for (const auto& s : shot.strands)
            std::printf("   true  D %7.2f  ratio %6.3f  arc %6.1f\n", s.curve_diameter_mm, s.wave_ratio, s.arc_mm);
        const auto read = measure(scene, shot);
        if (!read) {
            std::printf("   %s\n", read.error().sentence().c_str());
            continue;
        }
        for (size_t i = 0; i < read->shapes.size(); ++i)
            std::printf("   read  D %7.2f  ratio %6.3f  arc %6.1f%s%s\n", read->shapes[i].curve_diameter_mm,
                        read->shapes[i].wave_ratio, read->shapes[i].arc_mm,
                        read->strands[i].doubtful ? " doubtful" : "", read->strands[i].cut_off ? " cut off" : "");
        std::fflush(stdout);
    }
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    const uint64_t seed = std::strtoull(argv[2], nullptr, 10), count = std::strtoull(argv[3], nullptr, 10);
    if (std::strcmp(argv[1], "rows") == 0) {
        rows(seed, count);
    } else if (std::strcmp(argv[1], "pairs") == 0) {
        pairs(seed, count);
    } else if (std::strcmp(argv[1], "table") == 0) {
        bench::pattern_page(std::cout, bench::read_csv(argv[2]), bench::read_csv(argv[3]));
    } else if (std::strcmp(argv[1], "look") == 0) {
        look(seed, count);
    } else if (std::strcmp(argv[1], "photo") == 0) {
        const bench::PatternCase scene = case_of(seed);
        render::write_file(argv[3], render::jpeg_of(bench::take_pattern(scene, seed).shot.photo, 88,
                                                    scene.scene.phone.display_p3, {}));
    } else {
        return 2;
    }
    return 0;
}
