#include "bench/align/kept_pairs.h"

#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include "bench/support/bytes.h"
#include "bench/support/measure_shot.h"
#include "render/write_photo.h"

namespace bench {

namespace {

// A click every 4 mm with a slow drift and a jitter, as bench::drawn does it.
void draw_by_hand(KeptPair& pair, uint64_t seed) {
    constexpr double hand_mm = 0.3;
    render::Shot shot;
    for (const cv::Point2d& p : pair.earlier_px) shot.truth.edge_px.push_back({p.x, p.y});
    shot.truth.hair_side_px = {pair.earlier_hair.x, pair.earlier_hair.y};
    const double steps = static_cast<double>(pair.earlier_px.size() - 1);
    const double px_per_mm = cv::norm(pair.earlier_px.back() - pair.earlier_px.front()) / steps;
    pair.drawn_px = drawn(shot, px_per_mm, hand_mm, seed).edge_line_px;
}

}  // namespace

KeptPair fresh_pair(uint64_t seed, const render::CardPicture& card) {
    VisitPair pair = visit_pair(seed, card);
    photograph(pair);
    const SamePlaces places = edge_places(pair);
    KeptPair out;
    out.earlier = pair.earlier.jpeg;
    out.later = pair.later.jpeg;
    char text[200];
    std::snprintf(text, sizeof text, "%d,%d,%.2f,%s,%s,%.1f,%.1f", pair.earlier.scene.skin_class,
                  pair.earlier.scene.hair_colour, std::min(pair.earlier.px_per_mm, pair.later.px_per_mm),
                  pair.any_light ? "any" : "salon", pair.change.c_str(), pair.card_shift_mm, pair.card_turn_deg);
    out.what = text;
    for (size_t i = 0; i < places.earlier_px.size(); ++i) {
        out.earlier_px.emplace_back(places.earlier_px[i].x, places.earlier_px[i].y);
        out.later_px.emplace_back(places.later_px[i].x, places.later_px[i].y);
    }
    const auto hair = [](const Visit& visit) {
        return cv::Point2d(visit.shot.truth.hair_side_px.x, visit.shot.truth.hair_side_px.y);
    };
    out.earlier_hair = hair(pair.earlier);
    out.later_hair = hair(pair.later);
    draw_by_hand(out, seed);
    return out;
}

KeptPair kept_pair(uint64_t seed, const std::string& folder, const render::CardPicture& card) {
    const std::string name = folder + "/" + std::to_string(seed);
    if (!std::filesystem::exists(name + ".txt")) {
        const KeptPair fresh = fresh_pair(seed, card);
        render::write_file(name + "_a.jpg", fresh.earlier);
        render::write_file(name + "_b.jpg", fresh.later);
        std::ofstream out(name + ".txt");
        out.precision(9);
        out << fresh.what << "\n"
            << fresh.earlier_hair.x << " " << fresh.earlier_hair.y << " " << fresh.later_hair.x << " "
            << fresh.later_hair.y << "\n";
        for (size_t i = 0; i < fresh.earlier_px.size(); ++i)
            out << fresh.earlier_px[i].x << " " << fresh.earlier_px[i].y << " " << fresh.later_px[i].x << " "
                << fresh.later_px[i].y << "\n";
    }
    KeptPair out;
    out.earlier = bytes_of(name + "_a.jpg");
    out.later = bytes_of(name + "_b.jpg");
    std::ifstream in(name + ".txt");
    std::getline(in, out.what);
    in >> out.earlier_hair.x >> out.earlier_hair.y >> out.later_hair.x >> out.later_hair.y;
    for (double a, b, c, d; in >> a >> b >> c >> d;) out.earlier_px.emplace_back(a, b), out.later_px.emplace_back(c, d);
    draw_by_hand(out, seed);
    return out;
}

}  // namespace bench
