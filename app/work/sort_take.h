// Takes sorted photos into a client's record: finds the visit of that day or opens it, and imports each into its view.
#pragma once

#include <QVector>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/import_photos.h"

namespace kempt::work {

struct SortedPhoto {
    QString path;
    View view = View::front_hairline;
    QString sha256;                  // as she saw it; a file that has changed since is not taken
    std::optional<QDateTime> taken;  // kept where the file itself does not say (a camera's take); else nothing
};
struct TakeOptions {
    Id client = 0;
    Id visit = 0;  // 0: the visit of `day`, opened when there is none
    QDate day;
    QVector<SortedPhoto> photos;
    intake::Limits limits;
};
struct TakeReport {
    Id client = 0, visit = 0;  // visit 0: no photo was taken, and no visit opened for it
    bool visit_opened = false;
    ImportReport import;
};
// A visit that was opened for photos of which none could be taken is taken away again. Errors: not_found (client,
// visit, nothing to take), invalid (day), cancelled (the sentence says how many were kept).
[[nodiscard]] Result<TakeReport> take_sorted(Book& book, const TakeOptions& options, const Progress& progress = {});

}  // namespace kempt::work
