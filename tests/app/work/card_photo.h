// A flat photograph made for tests: skin, hair below a straight edge line, the gauge card drawn beside it at a known
// scale. It only has to be measurable; how well the readings hold is judged on rendered photos elsewhere.
#pragma once

#include <QBuffer>
#include <QByteArray>
#include <QImage>
#include <opencv2/imgproc.hpp>

#include "card/card_layout.h"
#include "domain/records.h"

namespace kempt::tests {

struct CardPhoto {
    double px_per_mm = 20;
    QSize size{2000, 1700};
    QPoint card_at{160, 90};  // of the card's face
    bool with_card = true;
    double strands_per_cm = 12;
    unsigned seed = 1;
    int edge_y = 900;  // the hair lies below
    double blur_px = 0.7;
};

inline QImage draw(const CardPhoto& what) {
    cv::Mat picture(what.size.height(), what.size.width(), CV_8UC3, cv::Scalar(198, 152, 128));
    cv::RNG random(what.seed);
    const double width_mm = what.size.width() / what.px_per_mm;
    const int strands = static_cast<int>(what.strands_per_cm * width_mm / 10);
    for (int i = 0; i < strands; ++i) {
        // Sub-pixel ends, drawn with anti-aliasing; 80 um wide.
        constexpr int shift = 4;
        const double x = random.uniform(0.0, static_cast<double>(what.size.width()));
        const double lean = random.gaussian(60);
        const auto fixed = [](double v) { return static_cast<int>(v * 16); };
        cv::line(picture, {fixed(x), fixed(what.edge_y + random.uniform(0.0, 30.0))},
                 {fixed(x + lean), fixed(what.size.height())}, cv::Scalar(45, 32, 28), what.px_per_mm > 15 ? 2 : 1,
                 cv::LINE_AA, shift);
    }
    if (what.with_card) {
        const cv::Mat grey = card::draw(card::Kind::card, card::Paper::a4, what.px_per_mm);
        cv::Mat face;
        cv::cvtColor(grey, face, cv::COLOR_GRAY2RGB);
        const int margin = static_cast<int>(2 * what.px_per_mm);  // the paper around the face is white
        const cv::Rect place(what.card_at.x(), what.card_at.y(), face.cols, face.rows);
        cv::rectangle(picture,
                      cv::Rect(place.x - margin, place.y - margin, place.width + 2 * margin, place.height + 2 * margin),
                      cv::Scalar(232, 232, 232), cv::FILLED);
        face.copyTo(picture(place));
    }
    cv::GaussianBlur(picture, picture, {}, what.blur_px);
    cv::Mat noise(picture.size(), CV_16SC3);
    random.fill(noise, cv::RNG::NORMAL, 0, 2);
    cv::Mat wide;
    picture.convertTo(wide, CV_16SC3);
    cv::Mat(wide + noise).convertTo(picture, CV_8UC3);
    return QImage(picture.data, picture.cols, picture.rows, static_cast<qsizetype>(picture.step), QImage::Format_RGB888)
        .copy();
}

inline QByteArray encoded(const QImage& image, const char* format = "JPEG") {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format, 92);
    return bytes;
}

inline QByteArray photo_bytes_of(const CardPhoto& what, const char* format = "JPEG") {
    return encoded(draw(what), format);
}

inline Marks marks_for(const CardPhoto& what) {
    Marks marks;
    marks.view = View::left_temple;
    const double left = 0.1 * what.size.width(), right = 0.9 * what.size.width();
    for (int i = 0; i <= 4; ++i) marks.edge_line.append(QPointF(left + (right - left) * i / 4.0, what.edge_y));
    marks.hair_side = QPointF(what.size.width() / 2.0, what.edge_y + 200.0);
    return marks;
}

}  // namespace kempt::tests
