// Photos of one view over all visits, each laid over one of them and cropped to the same place and scale.
#pragma once

#include <QByteArray>
#include <QDate>
#include <QImage>
#include <QVector>
#include <memory>
#include <optional>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/compare_pictures.h"
#include "work/pair_frame.h"

namespace kempt::work {

// One visit in the strip, before its picture is made.
struct StripPlace {
    Id visit = 0;
    QDate date;
    Id photo = 0;                          // 0: this visit has no photo of the view
    Id marks = 0;                          // that the picture is made from; 0: none
    QByteArray thumbnail;                  // of the photo as it was taken, until the picture is there
    std::optional<ReadingRecord> reading;  // of that photo: edge coverage, else the first that stands
};
struct StripPlan {
    QVector<StripPlace> places;  // in order of date
    int reference = -1;          // whose place, turn and scale all have; -1: no visit has a photo of the view
};
// Quick: opens no photo. `reference` 0: the newest visit with a marked photo, else the newest with a photo. The shots
// are of the reference's kind of marks where a visit has one. Errors: not_found (client).
[[nodiscard]] Result<StripPlan> strip_plan(Book& book, Id client, View view, Id reference_visit = 0);

struct StripOptions {
    AlignOptions align{640, 8, 26};  // a strip shows several at once, on a large screen up to 720 px wide
    MeasureOptions measure;
};
// The opened reference; kept while a strip is filled.
struct StripReference {
    std::shared_ptr<const OpenPhoto> open;
    PairSide side;  // points at `open`
    Frame frame;
    bool to_scale = false;
    Id photo = 0;
};
[[nodiscard]] Result<std::shared_ptr<const StripReference>> strip_reference(Book& book, const StripPlace& reference,
                                                                            const StripOptions& options,
                                                                            const Progress& progress = {});
struct StripPicture {
    QImage
        picture;  // of the frame's size in all visits; of photos without a scale the whole photo, to be looked at only
    bool laid = false;                  // the same place of skin or anchors at the same pixel
    std::optional<double> residual_mm;  // 95 % limit at the edge line
    QString told;                       // how it was laid, or why it could not be; a sentence
};
// Errors: not_found, those of opening a photo, cancelled. A photo that cannot be laid is no error: `told` says why.
[[nodiscard]] Result<StripPicture> strip_picture(Book& book, const StripPlace& place, const StripReference& reference,
                                                 const StripOptions& options, const Progress& progress = {});

}  // namespace kempt::work
