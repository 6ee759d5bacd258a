// Photos of made skin with the gauge card (tests/analysis/align/made_visit.h) in a temporary book.
#pragma once

#include "analysis/align/made_visit.h"
#include "app/work/book_photos.h"

namespace kempt::tests {

inline QByteArray bytes_of(const VisitPhoto& photo) {
    const cv::Mat& pixels = photo.photo().pixels;
    const QImage image(pixels.data, pixels.cols, pixels.rows, static_cast<qsizetype>(pixels.step),
                       QImage::Format_RGB888);
    return encoded(image, "PNG");
}

inline Marks marks_of(const VisitPhoto& photo) {
    Marks marks;
    marks.view = View::left_temple;
    for (const cv::Point2d& p : photo.line_px()) marks.edge_line.append(QPointF(p.x, p.y));
    const cv::Point2d hair = photo.px({42, 50});
    marks.hair_side = QPointF(hair.x, hair.y);
    return marks;
}

inline Id add_skin_photo(TemporaryBook& in, const Visit& visit, const VisitPhoto& photo) {
    static int number = 0;
    work::ImportOptions options;
    options.visit = visit.id;
    options.view = View::left_temple;
    options.paths = {in.write(QStringLiteral("skin-%1.png").arg(++number), bytes_of(photo))};
    const auto report = TemporaryBook::required(work::import_photos(*in.book, options));
    BOOST_REQUIRE_EQUAL(report.imported, 1);
    return report.files.front().photo;
}

// The first visit's photo, and that of a later one: the card 9 mm along and 6 mm out, turned by 4 degrees, another
// camera, light and hair.
inline const VisitPhoto& first_photo() {
    static const VisitPhoto photo(MadeVisit{});
    return photo;
}
inline MadeVisit later_visit() {
    MadeVisit what;
    what.hair = 7;
    what.card_at_mm = {9, -6};
    what.card_turn_deg = 4;
    what.camera_turn_deg = -5;
    what.tilt = 0.0012;
    what.light = 0.65;
    return what;
}
inline const VisitPhoto& later_photo() {
    static const VisitPhoto photo(later_visit());
    return photo;
}

// Mean distance in mm between carried points and where those places of the skin lie.
inline double off_mm(const QVector<QPointF>& carried, const VisitPhoto& to) {
    const auto wanted = to.line_px();
    BOOST_REQUIRE_EQUAL(static_cast<std::size_t>(carried.size()), wanted.size());
    double sum = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const QPointF p = carried[static_cast<qsizetype>(i)];
        sum += std::hypot(p.x() - wanted[i].x, p.y() - wanted[i].y) / to.calibration().px_per_mm;
    }
    return sum / static_cast<double>(wanted.size());
}

}  // namespace kempt::tests
