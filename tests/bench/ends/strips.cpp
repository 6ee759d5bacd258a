#include "bench/ends/strips.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include <opencv2/imgproc.hpp>

#include <QByteArray>

#include "bench/ends/cases.h"
#include "colour/colour.h"
#include "ends/blue.h"
#include "ends/look.h"
#include "intake/intake.h"
#include "render/phone.h"
#include "render/write_photo.h"

namespace bench {

namespace {

using namespace kempt;

constexpr size_t near_cells = 2000, other_cells = 600;

struct Strip {
    EndsCase scene;
    Photo photo;
    card::Calibration calibration;
    std::vector<cv::Point2d> region_px;
    cv::Mat cover;  // true, of the photo's size
    bool light_known = true;
    double px_per_mm = 0;
    cv::Vec3f white{1, 1, 1};  // light of white paper, where the ground is blue
};

// A narrow lock on a small page, close enough to the bench's photos in every way that the estimate sees; its scale is
// known and in seven of ten the phone's tone curve too.
Strip make_strip(uint64_t seed, card::Ground ground, render::SheetShot& shot) {
    render::Rng rng(seed * 977 + 5);
    EndsOptions options;
    // On the blue sheet light hair alone: blonde, grey, salt and pepper in turn.
    options.hair_colour =
        ground == card::Ground::blue ? 4 + static_cast<int>(seed % 3) : static_cast<int>(seed % render::hair_colours);
    options.ground = ground;
    options.view = 0;
    Strip s;
    s.scene = ends_case(seed, seed + 500000, seed + 900000, options);
    auto& [scene, hair, lie, view] = s.scene;
    hair.width_mm = rng.uniform(34, 46);
    hair.cut_mm = std::min(hair.cut_mm, 8.0);
    lie.u_mm = 50, lie.v_mm = 75;
    scene.size_mm = {100, 125};
    // White stays at both sides, within the picture.
    if (ground == card::Ground::blue) scene.blue_mm = {12, -10, 76, 145};
    scene.card = {};
    scene.lint = {};
    render::Camera& camera = scene.camera;
    s.px_per_mm = camera.px_per_mm = rng.chance(0.3) ? rng.uniform(8.2, 9.5) : rng.uniform(10, 15);
    camera.aim_mm = {50, 68};
    camera.width = camera.height = static_cast<int>(84 * camera.px_per_mm);
    camera.focal_px = 1.2 * 216 * camera.px_per_mm;
    camera.turn_deg = rng.normal(0, 3);
    scene.light.shadow_x = rng.normal(0, 10);
    shot = render::take_sheet(scene, render::lay_hem(hair, lie, scene.hair, 70), strand_taper);
    render::jpeg_blocks(shot.photo.rgb, shot.photo.width, shot.photo.height, rng.index(10) + 84, true);
    s.cover = cv::Mat(shot.photo.height, shot.photo.width, CV_32FC1, shot.cover.data());
    s.photo.pixels = cv::Mat(shot.photo.height, shot.photo.width, CV_8UC3, shot.photo.rgb.data());
    s.photo.colour = scene.phone.display_p3 ? colour::display_p3_encoding() : colour::srgb_encoding();
    s.light_known = rng.chance(0.7);
    if (s.light_known)
        for (auto& table : s.photo.colour.linear)
            for (size_t k = 0; k < table.size(); ++k) {
                const double code = static_cast<double>(k) / static_cast<double>(table.size() - 1);
                double low = 0, high = 1;
                for (int i = 0; i < 30; ++i) {
                    const double middle = (low + high) / 2;
                    (render::tone_curve(scene.phone, middle) < code ? low : high) = middle;
                }
                table[k] = static_cast<float>(colour::linear_from_srgb(low));
            }
    const render::Projector projector(camera);
    const auto px = [&](double x, double y) {
        const render::V2 p = projector.px_from({x, y, 0});
        return cv::Point2d(std::clamp(p.x, 0.0, camera.width - 1.0), std::clamp(p.y, 0.0, camera.height - 1.0));
    };
    std::vector<cv::Point2f> from, to;
    for (const auto& [x, y] : {std::pair(10.0, 10.0), {90.0, 10.0}, {90.0, 115.0}, {10.0, 115.0}}) {
        const render::V2 p = projector.px_from({x, y, 0});
        from.emplace_back(static_cast<float>(p.x), static_cast<float>(p.y));
        to.emplace_back(static_cast<float>(x), static_cast<float>(y));
    }
    s.calibration.two_points = true;
    s.calibration.mm_from_px = cv::Matx33d(cv::getPerspectiveTransform(from, to).ptr<double>());
    s.calibration.px_per_mm = camera.px_per_mm;
    const double half = 0.5 * hair.width_mm * lie.spread + 14, top = -hair.cut_mm - 35,
                 turn = lie.turn_deg * CV_PI / 180;
    for (const auto& [u, v] : {std::pair(-half, top), {half, top}, {half, 18.0}, {-half, 18.0}})
        s.region_px.push_back(
            px(lie.u_mm + std::cos(turn) * u - std::sin(turn) * v, lie.v_mm + std::sin(turn) * u + std::cos(turn) * v));
    return s;
}

// Light of the white strips beside the blue.
cv::Vec3f white_of(const Strip& s) {
    const card::LightMap map(s.photo, s.calibration);
    const cv::Matx33d px_from_mm = s.calibration.mm_from_px.inv();
    const cv::Rect photo_px({}, s.photo.pixels.size());
    std::array<std::vector<float>, 3> light;
    for (double y = 32; y <= 104; y += 1)
        for (const double x : {10.0, 90.0}) {
            const cv::Vec3d q = px_from_mm * cv::Vec3d(x, y, 1);
            const cv::Point p(cvRound(q[0] / q[2]), cvRound(q[1] / q[2]));
            if (!photo_px.contains(p)) continue;
            const cv::Mat one = map.linear(s.photo.pixels(cv::Rect(p, cv::Size(1, 1))));
            for (int c = 0; c < 3; ++c) light[static_cast<size_t>(c)].push_back(one.at<cv::Vec3f>(0)[c]);
        }
    cv::Vec3f white{1, 1, 1};
    for (int c = 0; c < 3 && light[0].size() > 20; ++c) {
        std::vector<float>& of = light[static_cast<size_t>(c)];
        std::sort(of.begin(), of.end());
        white[c] = of[of.size() * 6 / 10];
    }
    return white;
}

// Cells from 22 mm inside each column's own hem to 2 mm outside.
cv::Mat near_hem(const cv::Mat& cover) {
    cv::Mat mean, near(cover.size(), CV_8UC1, cv::Scalar(0));
    cv::blur(cover, mean, {8, 4});
    std::vector<float> first(mean.ptr<float>(20), mean.ptr<float>(20) + mean.cols);
    std::nth_element(first.begin(), first.begin() + mean.cols / 2, first.end());
    const float half = 0.5f * first[static_cast<size_t>(mean.cols / 2)];
    for (int x = 0; x < mean.cols; ++x) {
        if (mean.at<float>(20, x) < half) continue;
        float sum = 0, most = 0;
        int hem = 0;
        for (int y = 0; y < mean.rows; ++y)
            if ((sum += mean.at<float>(y, x) - half) > most) most = sum, hem = y;
        for (int y = std::max(0, hem - 88); y < std::min(mean.rows, hem + 8); ++y) near.at<uchar>(y, x) = 255;
    }
    return near;
}

// A whole photo as the benchmark's own, read as the program reads it: what a strip leaves out (the page's rims, the
// card, marks of the hand, the light read from them) moved the mean cover by two points.
Strip make_photo(uint64_t seed, EndsShot& shot) {
    EndsOptions options;
    options.hair_colour = 4 + static_cast<int>(seed % 3);
    options.ground = card::Ground::blue;
    Strip s;
    s.scene = ends_case(seed, seed + 500000, seed + 900000, options);
    shot = take_ends(s.scene, seed);
    const auto jpeg = render::jpeg_of(shot.photo, 88, s.scene.scene.phone.display_p3, {});
    const auto decoded =
        intake::decode(QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    if (!decoded) return s;
    s.photo = decoded->photo;
    s.cover = cv::Mat(shot.photo.height, shot.photo.width, CV_32FC1, shot.cover.data());
    s.calibration = card::calibrate(s.photo);
    s.light_known = s.calibration.light && s.calibration.light->curve_fitted;
    s.region_px = shot.region_px;
    s.white = ends::white_light(s.photo, s.calibration);
    return s;
}

}  // namespace

int write_strips(uint64_t seed, uint64_t count, card::Ground ground, bool whole_photos, std::FILE* out) {
    const bool on_blue = ground == card::Ground::blue;
    for (uint64_t s = seed; s < seed + count; ++s) {
        render::SheetShot shot;
        EndsShot whole;
        Strip strip = whole_photos ? make_photo(s, whole) : make_strip(s, ground, shot);
        if (strip.photo.pixels.empty()) continue;
        if (on_blue && !whole_photos) strip.white = white_of(strip);
        const auto frame = ends::frame_of(strip.photo, strip.calibration, strip.region_px);
        if (!frame) continue;
        const ends::Grid grid = ends::cut_grid(strip.photo, strip.calibration, strip.region_px, *frame);
        const auto paper = ends::paper_light(grid, ground);
        if (!paper) continue;
        const ends::Circumstances at{strip.light_known, whole_photos ? frame->px_per_mm : strip.px_per_mm};
        cv::Mat wanted, in;
        if (on_blue) {
            const ends::BlueLooks looks = ends::blue_looks(grid, *paper, strip.white);
            wanted = looks.valid & ~looks.bare_seen;
            in = ends::blue_inputs_of(looks, ends::blue_hair(looks), at, wanted);
        } else {
            const ends::Looks looks = ends::looks_of(grid, *paper);
            wanted = looks.valid & ~looks.bare;
            in = ends::inputs_of(looks, ends::hair_look(looks), at, wanted);
        }
        cv::Mat cover;
        cv::resize(ends::sample_grid(strip.cover, *frame), cover, wanted.size(), 0, 0, cv::INTER_AREA);
        const cv::Mat near = near_hem(cover);
        std::vector<std::pair<int, float>> close, other;
        int row = 0;
        for (int y = 0; y < cover.rows; ++y)
            for (int x = 0; x < cover.cols; ++x)
                if (wanted.at<uchar>(y, x))
                    (near.at<uchar>(y, x) ? close : other).emplace_back(row++, cover.at<float>(y, x));
        render::Rng rng(s);
        const auto draw = [&](auto& cells, size_t most) {
            for (size_t i = 0; i < std::min(most, cells.size()); ++i)
                std::swap(cells[i],
                          cells[i + static_cast<size_t>(rng.uniform() * static_cast<double>(cells.size() - i))]);
            cells.resize(std::min(most, cells.size()));
        };
        draw(close, near_cells);
        draw(other, other_cells);
        const float head[] = {static_cast<float>(strip.scene.scene.hair_colour), strip.light_known ? 1.f : 0.f,
                              static_cast<float>(at.px_per_mm), static_cast<float>(close.size()),
                              static_cast<float>(other.size())};
        std::fwrite(head, sizeof(float), std::size(head), out);
        for (const auto* cells : {&close, &other})
            for (const auto& [cell, truth] : *cells) {
                std::fwrite(in.ptr<float>(cell), sizeof(float), static_cast<size_t>(in.cols), out);
                std::fwrite(&truth, sizeof(float), 1, out);
            }
    }
    return 0;
}

}  // namespace bench
