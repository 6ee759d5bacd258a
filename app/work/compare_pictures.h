// The aligned before/after pair: both photos at one scale in the earlier photo's frame, laid over each other at the
// edge line (or stood side by side by their marks), with one and the same tone mapping.
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
#include "speech/speech.h"
#include "work/book_fwd.h"
#include "work/edge_shift.h"
#include "work/face_keep.h"
#include "work/measure_photo.h"

namespace kempt::work {

struct PairSide {
    const OpenPhoto* photo = nullptr;
    card::Calibration calibration;
    Marks marks;
    QDate date;
    QVector<EyeBand> hidden;  // filled before the picture is drawn
    bool mirrored = false;    // its calibration's plane is: the other temple, shown as if it were this one
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
    // How they were laid: "skin", "anchors", "edge line"; "marks": stood by their marks, not over each other; empty:
    // not to scale.
    QString by;
    bool over = false;                  // pixel (x, y) is one place in both; else only to be looked at side by side
    QString why_apart;                  // when not over: a sentence
    std::optional<double> residual_mm;  // 95 % limit of the error at the edge line; by the edge line it is not known
    double rms_mm = 0;                  // how far the lines lie apart after laying over
    std::optional<EdgeShift> shift;     // how far the edge has moved; by skin or anchors only
    QStringList notes;                  // what the viewer has to know ("no card: not to scale")
};

// Rigid in millimetres (turn and shift, never a change of size). Where both photos show the card: through two anchors
// or more that both carry in the same order, else by the skin beside the earlier edge line (align/align.h), which the
// hair cannot draw with it; the residual includes what a rigid laying leaves of a round head. Where that is refused, or
// the scale comes from two points: anchors, else the edge lines, and a note says so. Photos without edge lines
// (lengths, ends) are laid by anchors only; else they are stood at one scale by what was marked, and are not `over`.
// Without a scale in both photos the pair is only shown side by side (px_per_mm 0). Errors: invalid (a side without a
// photo), cancelled.
[[nodiscard]] Result<AlignedPair> align_pair(const PairSide& before, const PairSide& after,
                                             const AlignOptions& options = {}, const Progress& progress = {});

struct CompareOptions {
    Id client = 0;
    View view = View::left_temple;
    Id from_visit = 0, to_visit = 0;
    std::optional<View> to_view;  // left and right temple: the later side's view, mirrored; the visits may be the same
    bool hide_eyes = true;
    EyeFinder find_eyes = work::find_eyes;  // of photos that nobody has looked at
    AlignOptions align;
    MeasureOptions measure;
    LengthUnit length = LengthUnit::millimetres;  // of the verdict's sentence and the scale bar
    speech::Speech speech = {};                   // of the words on a picture that is written
};
struct ComparedPictures {
    AlignedPair pair;
    View view = View::left_temple;
    Id before_photo = 0, after_photo = 0;
    QDate before_date, after_date;
    LengthUnit length = LengthUnit::millimetres;  // of the verdict and of the scale bar
    QString verdict;           // one line: edge coverage from .. to .., and whether the change is real
    QVector<FaceCover> faces;  // of the photos: before, after; empty when eyes were not to be hidden
    std::optional<View> after_view{};
    [[nodiscard]] bool must_look() const;  // she does not want her face seen and nobody has looked at a photo
};
// The best measured shot of the view at each visit, of one kind of marks where there are such, the earlier visit first
// whichever was asked for first. Errors: not_found (visit, photo of that view), invalid (visits of another client, a
// visit with itself, a second view that is not the other temple), cancelled.
[[nodiscard]] Result<ComparedPictures> compare_pictures(Book& book, const CompareOptions& options,
                                                        const Progress& progress = {});
// Side by side with dates, scale bar and verdict (report/pair_picture.h) as PNG file, atomically; eyes are hidden
// whatever was asked. Needs a QGuiApplication. Errors: those above; refused ("no-photo-consent", as the book says at
// that moment; "look-at-face" when must_look()), io.
[[nodiscard]] Result<ComparedPictures> write_pair(Book& book, const CompareOptions& options, const QString& path,
                                                  const Progress& progress = {});

}  // namespace kempt::work
