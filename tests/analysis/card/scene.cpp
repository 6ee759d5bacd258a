#include "scene.h"

#include <cmath>
#include <opencv2/calib3d.hpp>
#include <opencv2/imgproc.hpp>

#include "colour/colour.h"

namespace kempt::test {
namespace {

constexpr double degree = CV_PI / 180;

// Pinhole: K [r1 r2 t] with the card's middle at `offset_px` from the principal point.
cv::Matx33d camera(const Scene& scene, cv::Point2d middle_mm) {
    const double f = scene.focal_sides * std::max(scene.size.width, scene.size.height);
    cv::Matx33d turn, lean;
    cv::Rodrigues(cv::Vec3d(0, 0, scene.turn_deg * degree), turn);
    const double d = scene.tilt_towards_deg * degree;
    cv::Rodrigues(cv::Vec3d(std::cos(d), std::sin(d), 0) * (scene.tilt_deg * degree), lean);
    const cv::Matx33d r = lean * turn;
    // A tilted square millimetre shrinks by about cos(tilt): the distance makes up for it.
    const double z = f * std::sqrt(std::cos(scene.tilt_deg * degree)) / scene.px_per_mm;
    const cv::Vec3d t(scene.offset_px.x * z / f, scene.offset_px.y * z / f, z);
    const cv::Matx33d k(f, 0, (scene.size.width - 1) / 2.0, 0, f, (scene.size.height - 1) / 2.0, 0, 0, 1);
    const cv::Matx33d pose(r(0, 0), r(0, 1), t[0], r(1, 0), r(1, 1), t[1], r(2, 0), r(2, 1), t[2]);
    return k * pose * cv::Matx33d(1, 0, -middle_mm.x, 0, 1, -middle_mm.y, 0, 0, 1);
}

cv::Mat1f texture(cv::Size size, cv::RNG& rng) {
    // Background of streaks at two sizes, like combed hair on cloth.
    cv::Mat1f fine(size), coarse(size / 8);
    rng.fill(fine, cv::RNG::UNIFORM, 0.0, 1.0);
    rng.fill(coarse, cv::RNG::UNIFORM, 0.0, 1.0);
    cv::blur(fine, fine, {25, 2});
    cv::resize(coarse, coarse, size, 0, 0, cv::INTER_CUBIC);
    cv::Mat1f sum(size);
    for (int y = 0; y < size.height; ++y)
        for (int x = 0; x < size.width; ++x)
            sum(y, x) = std::clamp(0.12f + 1.4f * (fine(y, x) - 0.5f) + 0.35f * (coarse(y, x) - 0.5f), 0.004f, 0.9f);
    return sum;
}

}  // namespace

Shot photograph(const Scene& scene) {
    cv::RNG rng(scene.seed);
    const card::Kind kind = scene.sheet ? card::Kind::sheet : card::Kind::card;
    const card::Paper paper = scene.sheet.value_or(card::Paper::a4);
    const cv::Size2d face =
        scene.sheet ? card::paper_size_mm(paper) : cv::Size2d(card::card_width_mm, card::card_height_mm);
    const cv::Point2d middle(face.width / 2, face.height / 2);
    Shot shot;
    shot.px_from_mm = camera(scene, middle);
    const cv::Matx33d& h = shot.px_from_mm;
    const double w = h(2, 0) * middle.x + h(2, 1) * middle.y + h(2, 2);
    shot.px_per_mm = std::sqrt(std::abs(cv::determinant(h) / (w * w * w)));

    // Printed light of the card, drawn finer than the photo; drawn pixel x spans x..x+1 over the scale in mm.
    const double fine = std::min(60.0, 1.5 * scene.px_per_mm);
    cv::Mat drawn = card::draw(kind, paper, fine, scene.ground);
    // The markers are looked for in green: of a coloured sheet that channel stands for all.
    if (drawn.channels() == 3) cv::extractChannel(drawn, drawn, 1);
    if (scene.hidden_marker) {
        const cv::Point2d c = card::card_marker_centres_mm[static_cast<size_t>(*scene.hidden_marker)];
        cv::rectangle(
            drawn,
            cv::Rect(cvRound((c.x - 6) * fine), cvRound((c.y - 6) * fine), cvRound(12 * fine), cvRound(7 * fine)),
            cv::Scalar(70), cv::FILLED);
    }
    cv::Mat1f printed(drawn.size());
    for (int y = 0; y < drawn.rows; ++y)
        for (int x = 0; x < drawn.cols; ++x)
            printed(y, x) = static_cast<float>(colour::linear_from_srgb(drawn.at<uchar>(y, x) / 255.0));
    const cv::Matx33d mm_from_drawn(1 / fine, 0, 0.5 / fine, 0, 1 / fine, 0.5 / fine, 0, 0, 1);
    cv::Mat1f warped, mask, whole(drawn.size(), 1.f);
    cv::warpPerspective(printed, warped, cv::Mat(h * mm_from_drawn), scene.size, cv::INTER_AREA);
    cv::warpPerspective(whole, mask, cv::Mat(h * mm_from_drawn), scene.size, cv::INTER_LINEAR);
    const cv::Mat1f background = texture(scene.size, rng);

    const cv::Matx33d mm_from_px = h.inv();
    std::array<cv::Mat1f, 3> light;
    for (cv::Mat1f& channel : light) channel.create(scene.size);
    for (int y = 0; y < scene.size.height; ++y)
        for (int x = 0; x < scene.size.width; ++x) {
            const float reflected = warped(y, x) + (1 - mask(y, x)) * background(y, x);
            double factor = 1;
            if (scene.unevenness) {
                const cv::Vec3d q = mm_from_px * cv::Vec3d(x, y, 1);
                factor = scene.unevenness({q[0] / q[2], q[1] / q[2]});
            }
            for (int c = 0; c < 3; ++c)
                light[static_cast<size_t>(c)](y, x) = static_cast<float>(reflected * scene.lamp[c] * factor);
        }
    shot.photo.colour = scene.display_p3 ? colour::display_p3_encoding() : colour::srgb_encoding();
    shot.photo.pixels.create(scene.size, CV_8UC3);
    std::vector<double> code_of(4097);  // by sqrt of light
    for (size_t i = 0; i < code_of.size(); ++i) {
        const double code = colour::srgb_from_linear(std::pow(double(i) / 4096, 2));
        code_of[i] = 255 * (scene.tone ? scene.tone(code) : code);
    }
    for (int c = 0; c < 3; ++c) {
        cv::Mat1f& channel = light[static_cast<size_t>(c)];
        if (scene.blur_px > 0) cv::GaussianBlur(channel, channel, {}, scene.blur_px);
        cv::Mat1f noise(scene.size);
        rng.fill(noise, cv::RNG::NORMAL, 0.0, scene.noise_codes);
        for (int y = 0; y < scene.size.height; ++y)
            for (int x = 0; x < scene.size.width; ++x) {
                const double at = 4096 * std::sqrt(std::clamp(double(channel(y, x)), 0.0, 1.0));
                const auto i = std::min(static_cast<size_t>(at), size_t{4095});
                const double code = code_of[i] + (code_of[i + 1] - code_of[i]) * (at - double(i));
                shot.photo.pixels.at<cv::Vec3b>(y, x)[c] = cv::saturate_cast<uchar>(code + noise(y, x));
            }
    }
    return shot;
}

std::function<double(double)> s_curve(double amount, double lift) {
    // Logistic S through (0, 0) and (1, 1): another family than the one that the program fits.
    return [=](double code) {
        const double k = 1 + 6 * amount;
        const auto logistic = [&](double x) { return 1 / (1 + std::exp(-k * (x - 0.5))); };
        const double bent = (logistic(code) - logistic(0)) / (logistic(1) - logistic(0));
        return lift + (1 - lift) * bent;
    };
}

std::function<double(double)> inverse_of(const std::function<double(double)>& curve) {
    return [=](double code) {
        double low = 0, high = 1;
        for (int i = 0; i < 50; ++i) (curve((low + high) / 2) < code ? low : high) = (low + high) / 2;
        return low;
    };
}

}  // namespace kempt::test
