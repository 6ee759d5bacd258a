// Which view a new photo shows: by laying the skin beside the edge over that of the last photos of each view
// (align/align.h). On the demo's rendered photos, of visits six weeks apart, it found the view of 21 photos of 27 and
// never a wrong one (54 tries on another view, all refused); real photos were not to be had. What looks alike was tried
// as well and did not tell temples and nape apart (12 of 35, no better than chance).
#pragma once

#include <QDate>
#include <optional>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/measure_photo.h"

namespace kempt::work {

struct RecogniseOptions {
    QString path;            // of the new photo
    Id client = 0;           // whose it may be
    QDate day;               // compared with her photos up to that day
    QVector<View> likely;    // tried first: what her visit still lacks
    MeasureOptions measure;  // for finding the cards; the book's printer correction replaces its own
};
struct RecognisedView {
    std::optional<View> view;           // nothing: the skin fits none of them, or there is nothing to compare with
    std::optional<double> residual_mm;  // how well it fits
    QDate from_date;                    // of the photo it was compared with
    int tried = 0;                      // views it was compared with
};
// About a third of a second where it fits and up to two where it does not, for each view that has marks (a 2.7
// megapixel photo on one core). Errors: not_found (client), those of open_photo, cancelled.
[[nodiscard]] Result<RecognisedView> recognise_view(Book& book, const RecogniseOptions& options,
                                                    const Progress& progress = {});

// Views that the last visit before that day (or that visit itself) was followed by; those where edges are read when
// there was none before.
[[nodiscard]] Result<QVector<View>> views_expected(Book& book, Id client, Id visit, const QDate& day);
// Of the expected ones, those without a photo yet.
[[nodiscard]] Result<QVector<View>> views_missing(Book& book, Id client, Id visit, const QDate& day);

// What is left over when the photos of one sitting have been looked at: `known` holds a view for those that were
// recognised or chosen. When exactly one missing view is claimed by none of them, it is proposed for the photos that
// are open, as long as these are no more than the shots a view has (two or three: user guide); else they stay open.
[[nodiscard]] QVector<std::optional<View>> fill_last_view(const QVector<std::optional<View>>& known,
                                                          const QVector<View>& missing);

}  // namespace kempt::work
