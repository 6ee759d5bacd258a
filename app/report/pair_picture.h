// A before/after picture: two photos of one view, already aligned and at one scale, side by side with their dates, one
// scale bar for both and one line of verdict. Painted in pixels, for PNG and for the windows; the report paints the
// same thing on paper. Needs a QGuiApplication.
#pragma once

#include <QByteArray>
#include <QDate>
#include <QImage>
#include <QString>

#include "core/result.h"
#include "domain/measure_units.h"
#include "speech/speech.h"

namespace kempt::report {

struct PairPicture {
    QImage before, after;  // of one size; pixels of the same place at the same position
    QDate before_date, after_date;
    QString before_word = QStringLiteral("Before"), after_word = QStringLiteral("After");
    double px_per_mm = 0;  // of both; 0: not known, no bar
    QString title;         // "left temple"; may be empty
    QString verdict;       // one line; wrapped when it is long; may be empty
    LengthUnit length = LengthUnit::millimetres;
    speech::Speech speech = {};     // of the words above, which are English, and of the picture's own
    int max_image_width_px = 1600;  // of one photo in the picture; larger photos are reduced, smaller ones kept
};

// Errors: invalid (no picture at all, sizes that differ), too_large.
[[nodiscard]] Result<QImage> paint_pair(const PairPicture& pair);
// The same as PNG bytes, with pixels per metre set when the scale is known. Errors: those above; io.
[[nodiscard]] Result<QByteArray> pair_png(const PairPicture& pair);

// A round length for a scale bar that takes no more than max_mm: 1, 2 or 5 times a power of ten mm, or 1/8, 1/4, 1/2,
// 1, 2, 5 in. length_mm is 0 when max_mm is too small for any.
struct ScaleBar {
    double length_mm = 0;
    QString label;  // "10 mm", "1/2 in"
};
[[nodiscard]] ScaleBar scale_bar_within(double max_mm, LengthUnit length);

}  // namespace kempt::report
