#include "pictures.h"

#include <algorithm>
#include <cmath>

#include "colour/colour.h"

namespace kempt::test {

Photo draw(const Drawing& d) {
    const cv::Size size(static_cast<int>(d.width_mm * d.px_per_mm), static_cast<int>(d.height_mm * d.px_per_mm));
    Photo photo;
    photo.colour = colour::srgb_encoding(d.sixteen_bit);
    photo.pixels.create(size, d.sixteen_bit ? CV_16UC3 : CV_8UC3);
    cv::RNG rng(7);
    constexpr int samples = 3;
    for (int y = 0; y < size.height; ++y)
        for (int x = 0; x < size.width; ++x) {
            // Whole pixels at their centres: pixel x spans x - 0.5 to x + 0.5.
            int covered = 0;
            for (int j = 0; j < samples; ++j)
                for (int i = 0; i < samples; ++i)
                    covered += d.hair((x - 0.5 + (i + 0.5) / samples) / d.px_per_mm,
                                      (y - 0.5 + (j + 0.5) / samples) / d.px_per_mm);
            const double share = covered / double(samples * samples),
                         light = d.light(x / d.px_per_mm, y / d.px_per_mm) * (1 + d.grain * rng.gaussian(1));
            for (int c = 0; c < 3; ++c) {
                const double v = light * (share * d.hair_albedo[c] + (1 - share) * d.paper_albedo[c]),
                             code = colour::srgb_from_linear(std::clamp(v, 0.0, 1.0));
                if (d.sixteen_bit)
                    photo.pixels.at<cv::Vec3w>(y, x)[c] = cv::saturate_cast<ushort>(65535 * code);
                else
                    photo.pixels.at<cv::Vec3b>(y, x)[c] = cv::saturate_cast<uchar>(255 * code);
            }
        }
    return photo;
}

card::Calibration scale_of(double px_per_mm, bool light_known) {
    card::Calibration c;
    c.sheet_found = true;
    // Far from the sheet's printed markers.
    const double s = 1 / px_per_mm;
    c.mm_from_px = cv::Matx33d(s, 0, 40, 0, s, 40, 0, 0, 1);
    c.px_per_mm = px_per_mm;
    c.px_per_mm_sd = 0.001 * px_per_mm;
    if (light_known) {
        c.light.emplace();
        c.light->curve_fitted = true;
        for (auto& table : c.light->light_from_photo)
            for (int i = 0; i < 1024; ++i) table.push_back(static_cast<float>(std::pow(i / 1023.0, 2)));
    }
    return c;
}

std::vector<cv::Point2d> region(double x0, double y0, double x1, double y1, double px_per_mm) {
    return {{x0 * px_per_mm, y0 * px_per_mm},
            {x1 * px_per_mm, y0 * px_per_mm},
            {x1 * px_per_mm, y1 * px_per_mm},
            {x0 * px_per_mm, y1 * px_per_mm}};
}

const Quantity* find(const ends::EndsReadings& all, const std::string& name) {
    for (const auto& q : all.readings)
        if (q.name == name) return &q;
    return nullptr;
}

std::string refusal(const ends::EndsReadings& all, const std::string& name) {
    for (const auto& r : all.refused)
        if (r.name == name) return r.code;
    return "";
}

}  // namespace kempt::test
