// A visit's photo made for tests: made skin with hair below a known line, the gauge card laid at a known place on it, a
// camera of known homography, light of its own.
#pragma once

#include <opencv2/imgproc.hpp>
#include "align/align.h"
#include "analysis/align/made_skin.h"

#include "card/card_layout.h"
#include "colour/colour.h"

namespace kempt::tests {

struct MadeVisit {
    uint32_t skin = 1;
    double skin_contrast = 1;
    uint32_t hair = 1;
    double hair_out_mm = 0;        // how far the hair begins outside the line
    cv::Point2d card_at_mm{0, 0};  // where the card's corner lies, in skin millimetres
    double card_turn_deg = 0;
    double camera_turn_deg = 0, tilt = 0;  // perspective: change of scale per mm across the picture
    double px_per_mm = 12;
    double light = 0.8, slope = 0;  // light at the middle; change per mm
    bool with_card = true;
};

// The edge line in skin millimetres.
inline double edge_y(double x) {
    return 40 + 0.01 * (x - 42) * (x - 42);
}

class VisitPhoto {
  public:
    explicit VisitPhoto(const MadeVisit& what) : what_(what) {
        const cv::Size size(cvRound(104 * what.px_per_mm), cvRound(70 * what.px_per_mm));
        const double a = what.camera_turn_deg * CV_PI / 180, s = 1 / what.px_per_mm;
        const cv::Matx33d centre(1, 0, -size.width / 2.0, 0, 1, -size.height / 2.0, 0, 0, 1);
        const cv::Matx33d view(s * std::cos(a), -s * std::sin(a), 42, s * std::sin(a), s * std::cos(a), 27,
                               what.tilt * s, -0.6 * what.tilt * s, 1);
        skin_from_px_ = view * centre;
        draw(size);
        calibration_ = card::calibrate(photo_);
    }
    [[nodiscard]] const Photo& photo() const { return photo_; }
    [[nodiscard]] const card::Calibration& calibration() const { return calibration_; }
    [[nodiscard]] cv::Point2d px(cv::Point2d skin_mm) const { return mapped(skin_from_px_.inv(), skin_mm); }
    [[nodiscard]] std::vector<cv::Point2d> line_px() const {
        std::vector<cv::Point2d> line;
        for (double x = 12; x <= 72; x += 2) line.push_back(px({x, edge_y(x)}));
        return line;
    }
    [[nodiscard]] align::Side side(bool with_line, const std::vector<cv::Point2d>& anchors_skin_mm = {}) const {
        align::Side side;
        side.photo = &photo_;
        side.calibration = &calibration_;
        if (with_line) side.edge_line_px = line_px();
        side.hair_side_px = px({42, 50});
        for (const cv::Point2d& p : anchors_skin_mm) side.anchors_px.push_back(px(p));
        return side;
    }
    void deepen() {  // to 16 bits
        photo_.pixels.convertTo(photo_.pixels, CV_16U, 257);
        photo_.colour = colour::srgb_encoding(true);
    }

  private:
    static cv::Point2d mapped(const cv::Matx33d& h, cv::Point2d p) {
        const cv::Vec3d q = h * cv::Vec3d(p.x, p.y, 1);
        return {q[0] / q[2], q[1] / q[2]};
    }
    void draw(cv::Size size) {
        const MadeSkin skin(what_.skin, what_.skin_contrast), strands(what_.hair + 1000, 12);
        const cv::Mat card = card::draw(card::Kind::card, card::Paper::a4, 20);
        const double a = what_.card_turn_deg * CV_PI / 180;
        cv::Mat linear(size, CV_32FC3);
        for (int y = 0; y < size.height; ++y)
            for (int x = 0; x < size.width; ++x) {
                const cv::Point2d mm = mapped(skin_from_px_, cv::Point2d(x, y)), d = mm - what_.card_at_mm;
                const cv::Point2d on_card(std::cos(a) * d.x + std::sin(a) * d.y,
                                          -std::sin(a) * d.x + std::cos(a) * d.y);
                const cv::Point face(cvFloor(on_card.x * 20), cvFloor(on_card.y * 20));
                cv::Vec3f v;
                if (what_.with_card && cv::Rect({0, 0}, card.size()).contains(face)) {
                    const auto grey = static_cast<float>(colour::linear_from_srgb(card.at<uchar>(face) / 255.0));
                    v = {grey, grey, grey};
                } else {
                    const cv::Vec2f t = skin(mm);
                    v = {0.45f * std::exp(t[0] + 0.5f * t[1]), 0.28f * std::exp(t[0] - 0.5f * t[1]),
                         0.2f * std::exp(t[0])};
                    const double depth = mm.y - edge_y(mm.x) + what_.hair_out_mm;
                    // Strands 0.1 mm wide that run inward, each place its own.
                    if (depth > 0 && strands({mm.x * 6, depth * 0.3})[0] > -0.1) v = {0.03f, 0.02f, 0.018f};
                }
                const double light = what_.light * (1 + what_.slope * (mm.x - 42));
                linear.at<cv::Vec3f>(y, x) = v * static_cast<float>(light);
            }
        cv::GaussianBlur(linear, linear, {}, 0.7);
        photo_.pixels.create(size, CV_8UC3);
        cv::RNG random(what_.hair * 31 + what_.skin);
        for (int y = 0; y < size.height; ++y)
            for (int x = 0; x < size.width; ++x)
                for (int c = 0; c < 3; ++c)
                    photo_.pixels.at<cv::Vec3b>(y, x)[c] = cv::saturate_cast<uchar>(
                        255 * colour::srgb_from_linear(linear.at<cv::Vec3f>(y, x)[c]) + random.gaussian(1.5));
        photo_.colour = colour::srgb_encoding();
    }
    MadeVisit what_;
    cv::Matx33d skin_from_px_;
    Photo photo_;
    card::Calibration calibration_;
};

}  // namespace kempt::tests
