// The aligned before/after pair: both photos at one scale in the earlier photo's frame, laid over each other at the
// edge line, with one and the same tone mapping.
#pragma once

#include <QDate>
#include <QImage>
#include <QPolygonF>
#include <QString>
#include <QStringList>
#include <optional>

#include "card/calibration.h"
#include "core/progress.h"
#include "core/result.h"
#include "domain/measure_units.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/measure_photo.h"

namespace kempt::work {

struct PairSide {
    const OpenPhoto* photo = nullptr;
    card::Calibration calibration;
    Marks marks;
    QDate date;
};

struct AlignOptions {
    int longest_side_px = 1400;  // of each picture
    double margin_mm = 8;        // about the edge lines on the scalp's side and at the ends
    double band_mm = 26;         // shown on the hair's side, a little more than the 20 mm band
};

struct AlignedPair {
    QImage before, after;               // RGB888, same size; pixel (x, y) is the same place of the scalp in both.
                                        // At one scale they show what both photos show (common_area.h)
    double px_per_mm = 0;               // of both; 0: not to scale
    QPolygonF before_line, after_line;  // the edge lines in picture pixels
    bool light_matched = false;         // both rendered from their card's light; false: as the cameras wrote them
    QString by;                         // how they were laid: "skin", "anchors", "edge line"; empty: not to scale
    std::optional<double> residual_mm;  // 95 % limit of the error at the edge line; by the edge line it is not known
    double rms_mm = 0;                  // how far the lines lie apart after laying over
    QStringList notes;                  // what the viewer has to know ("no card: not to scale")
};

// Rigid in millimetres (turn and shift, never a change of size). Where both photos show the card: through two anchors
// or more that both carry in the same order, else by the skin beside the earlier edge line (align/align.h), which the
// hair cannot draw with it; the residual includes what a rigid laying leaves of a round head. Where that is refused, or
// the scale comes from two points: anchors, else the edge lines, and a note says so. Without a scale in both photos the
// pair is only shown side by side (px_per_mm 0). Errors: invalid (a side without a photo or an edge line), cancelled.
[[nodiscard]] Result<AlignedPair> align_pair(const PairSide& before, const PairSide& after,
                                             const AlignOptions& options = {}, const Progress& progress = {});

struct CompareOptions {
    Id client = 0;
    View view = View::left_temple;
    Id from_visit = 0, to_visit = 0;
    AlignOptions align;
    MeasureOptions measure;
    LengthUnit length = LengthUnit::millimetres;  // of the verdict's sentence and the scale bar
};
struct ComparedPictures {
    AlignedPair pair;
    View view = View::left_temple;
    Id before_photo = 0, after_photo = 0;
    QDate before_date, after_date;
    LengthUnit length = LengthUnit::millimetres;  // of the verdict and of the scale bar
    QString verdict;  // one line: edge coverage from .. to .., and whether the change is real
};
// The best measured shot of the view at each visit, the earlier visit first whichever was asked for first. Errors:
// not_found (visit, photo of that view, marks), invalid (visits of another client, a visit with itself), cancelled.
[[nodiscard]] Result<ComparedPictures> compare_pictures(Book& book, const CompareOptions& options,
                                                        const Progress& progress = {});
// Side by side with dates, scale bar and verdict (report/pair_picture.h). Needs a QGuiApplication.
[[nodiscard]] Result<QImage> compose_pair(const ComparedPictures& pictures);
// The same as PNG file, atomically. Errors: io.
[[nodiscard]] Status write_pair(const ComparedPictures& pictures, const QString& path);

}  // namespace kempt::work
