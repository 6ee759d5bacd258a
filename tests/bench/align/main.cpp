// Alignment of two visits against rendered truth.
//   bench_align rows SEED COUNT [FOLDER]   one CSV row a pair; photos are kept in FOLDER and used again
//   bench_align table ROWS.csv             that part of docs/accuracy.md
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

#include "align/align.h"
#include "bench/align/visits.h"
#include "bench/support/measure_shot.h"
#include "intake/intake.h"
#include "render/write_photo.h"

namespace {

using namespace kempt;

// What a pair leaves behind for the measurement.
struct Case {
    std::vector<uint8_t> earlier, later;
    std::string what;  // skin,hair,px_per_mm,light,change,shift,turn
    std::vector<cv::Point2d> earlier_px, later_px;
    cv::Point2d earlier_hair, later_hair;
};

Case made(uint64_t seed, const render::CardPicture& card) {
    bench::VisitPair pair = bench::visit_pair(seed, card);
    bench::photograph(pair);
    const bench::SamePlaces places = bench::edge_places(pair);
    Case out{pair.earlier.jpeg, pair.later.jpeg, {}, {}, {}, {}, {}};
    char text[200];
    std::snprintf(text, sizeof text, "%d,%d,%.2f,%s,%s,%.1f,%.1f", pair.earlier.scene.skin_class,
                  pair.earlier.scene.hair_colour, std::min(pair.earlier.px_per_mm, pair.later.px_per_mm),
                  pair.any_light ? "any" : "salon", pair.change.c_str(), pair.card_shift_mm, pair.card_turn_deg);
    out.what = text;
    for (size_t i = 0; i < places.earlier_px.size(); ++i) {
        out.earlier_px.emplace_back(places.earlier_px[i].x, places.earlier_px[i].y);
        out.later_px.emplace_back(places.later_px[i].x, places.later_px[i].y);
    }
    out.earlier_hair = {pair.earlier.shot.truth.hair_side_px.x, pair.earlier.shot.truth.hair_side_px.y};
    out.later_hair = {pair.later.shot.truth.hair_side_px.x, pair.later.shot.truth.hair_side_px.y};
    return out;
}

std::vector<uint8_t> bytes_of(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

Case kept(uint64_t seed, const std::string& folder, const render::CardPicture& card) {
    const std::string name = folder + "/" + std::to_string(seed);
    if (!std::filesystem::exists(name + ".txt")) {
        const Case fresh = made(seed, card);
        render::write_file(name + "_a.jpg", fresh.earlier);
        render::write_file(name + "_b.jpg", fresh.later);
        std::ofstream out(name + ".txt");
        out.precision(9);
        out << fresh.what << "\n" << fresh.earlier_hair.x << " " << fresh.earlier_hair.y << " " << fresh.later_hair.x << " " << fresh.later_hair.y << "\n";
        for (size_t i = 0; i < fresh.earlier_px.size(); ++i)
            out << fresh.earlier_px[i].x << " " << fresh.earlier_px[i].y << " " << fresh.later_px[i].x << " " << fresh.later_px[i].y << "\n";
    }
    Case out{bytes_of(name + "_a.jpg"), bytes_of(name + "_b.jpg"), {}, {}, {}, {}, {}};
    std::ifstream in(name + ".txt");
    std::getline(in, out.what);
    in >> out.earlier_hair.x >> out.earlier_hair.y >> out.later_hair.x >> out.later_hair.y;
    for (double a, b, c, d; in >> a >> b >> c >> d;) out.earlier_px.emplace_back(a, b), out.later_px.emplace_back(c, d);
    return out;
}

Photo photo_of(const std::vector<uint8_t>& jpeg) {
    const auto decoded = intake::decode(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    return decoded ? decoded->photo : Photo{};
}

void row(uint64_t seed, const Case& pair) {
    std::printf("%llu,%s", static_cast<unsigned long long>(seed), pair.what.c_str());
    const Photo before = photo_of(pair.earlier), after = photo_of(pair.later);
    const card::Calibration first = card::calibrate(before), second = card::calibrate(after);
    const align::Side earlier{&before, &first, pair.earlier_px, pair.earlier_hair, {}}, later{&after, &second, {}, {}, {}};
    const std::clock_t start = std::clock();  // of both cores together: other work on the machine does not count
    const auto laid = align::align(earlier, later);
    const double ms = 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
    if (!laid) {
        std::printf(",%s,,,,,,,%.0f\n", laid.error().code.c_str(), ms);
        return;
    }
    const auto carried = align::carry(*laid, first, second, pair.earlier_px);
    double sum = 0, worst = 0, x = 0, y = 0;
    for (size_t i = 0; i < carried.size(); ++i) {
        const cv::Point2d d = card::mm_from_px(second, carried[i]) - card::mm_from_px(second, pair.later_px[i]);
        sum += std::hypot(d.x, d.y);
        x += d.x, y += d.y;
        worst = std::max(worst, std::hypot(d.x, d.y));
    }
    const double n = static_cast<double>(carried.size());
    std::printf(",,%.3f,%.3f,%.3f,%.2f,%.2f,%.2f,%.0f\n", sum / n, worst, laid->residual_mm, laid->skin_share, x / n, y / n, ms);
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 3) return 2;
    const std::string verb = argv[1];
    if (verb == "rows" && argc >= 4) {
        const render::CardPicture card = render::printed_card();
        const uint64_t first = std::strtoull(argv[2], nullptr, 10), count = std::strtoull(argv[3], nullptr, 10);
        const std::string folder = argc > 4 ? argv[4] : "";
        if (!folder.empty()) std::filesystem::create_directories(folder);
        std::printf("seed,skin,hair,px_per_mm,light,change,shift_mm,turn_deg,refused,error_mm,worst_mm,residual_mm,skin_share,dx,dy,cpu_ms\n");
        for (uint64_t seed = first; seed < first + count; ++seed)
            row(seed, folder.empty() ? made(seed, card) : kept(seed, folder, card));
        return 0;
    }
    return 2;
}
