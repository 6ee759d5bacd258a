// The raster of card and sheet: every shape is an axis-parallel rectangle and no two overlap, so the exact share of
// each pixel that a shape covers can be added up in linear light before the picture is coded.
#include "card/card_layout.h"
#include "colour/colour.h"

namespace kempt::card {
namespace {

// Share of each of n pixels (pixel i spans i..i+1) that lies in [from, to].
std::vector<float> coverage(int n, double from, double to) {
    std::vector<float> share(static_cast<size_t>(n), 0.f);
    for (int i = std::max(0, static_cast<int>(std::floor(from))); i < n && i < to; ++i)
        share[static_cast<size_t>(i)] =
            static_cast<float>(std::max(0.0, std::min(to, i + 1.0) - std::max(from, double(i))));
    return share;
}

void add_rectangle(cv::Mat1f& light, const cv::Rect2d& mm, double scale, double reflectance) {
    const std::vector<float> across = coverage(light.cols, mm.x * scale, (mm.x + mm.width) * scale);
    const std::vector<float> down = coverage(light.rows, mm.y * scale, (mm.y + mm.height) * scale);
    const auto change = static_cast<float>(reflectance - 1);
    for (int y = 0; y < light.rows; ++y) {
        const float share = down[static_cast<size_t>(y)];
        if (share <= 0) continue;
        for (int x = 0; x < light.cols; ++x) light(y, x) += change * share * across[static_cast<size_t>(x)];
    }
}

void add_marker(cv::Mat1f& light, int id, cv::Point2d centre, double side, double scale) {
    const auto cells = marker_cells(id);
    const double cell = side / 6;
    for (size_t y = 0; y < 6; ++y)
        for (size_t x = 0; x < 6; ++x)
            if (!cells[y][x])
                add_rectangle(
                    light, {centre.x - side / 2 + cell * double(x), centre.y - side / 2 + cell * double(y), cell, cell},
                    scale, 0.0);
}

cv::Mat coded(const cv::Mat1f& light) {
    cv::Mat picture(light.size(), CV_8UC1);
    for (int y = 0; y < light.rows; ++y)
        for (int x = 0; x < light.cols; ++x)
            picture.at<uchar>(y, x) =
                cv::saturate_cast<uchar>(255 * colour::srgb_from_linear(std::clamp(light(y, x), 0.f, 1.f)));
    return picture;
}

}  // namespace

cv::Mat draw(Kind kind, Paper paper, double px_per_mm, Ground ground) {
    const double scale = std::clamp(px_per_mm, 4.0, 60.0);
    const cv::Size2d size = kind == Kind::card ? cv::Size2d(card_width_mm, card_height_mm) : paper_size_mm(paper);
    cv::Mat1f light(cvRound(size.height * scale), cvRound(size.width * scale), 1.f);
    if (kind == Kind::card) {
        for (int id = 0; id < 4; ++id)
            add_marker(light, id, card_marker_centres_mm[static_cast<size_t>(id)], card_marker_mm, scale);
        for (const Patch& patch : card_patches()) add_rectangle(light, patch.area_mm, scale, patch.reflectance);
    } else {
        const auto centres = sheet_marker_centres_mm(paper);
        for (int id = 0; id < 4; ++id)
            add_marker(light, id + sheet_first_id(ground), centres[static_cast<size_t>(id)], sheet_marker_mm, scale);
    }
    if (kind == Kind::card || ground == Ground::white) return coded(light);
    // The blue lies beside all that is black, never under it.
    const cv::Rect2d blue = blue_area_mm(paper);
    std::vector<cv::Mat> channels;
    for (const double reflectance : blue_print) {
        cv::Mat1f channel = light.clone();
        add_rectangle(channel, blue, scale, reflectance);
        channels.push_back(coded(channel));
    }
    cv::Mat picture;
    cv::merge(channels, picture);
    return picture;
}

}  // namespace kempt::card
