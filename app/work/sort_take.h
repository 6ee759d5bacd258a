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

// Taken to the wrong client: what goes out of the book again.
struct TakenPhoto {
    Id photo = 0;
    QString path, sha256;
};
struct TakenBack {
    Id visit = 0;
    bool visit_opened = false;  // for these photos
    QVector<TakenPhoto> photos;
};
// Erases the photos in one transaction; true when the visit that was opened for them went too, because nothing else is in
// it. Those that are not in the book any more are passed over. Nothing is erased when one has marks ("worked-on") or its file is not
// there with the same bytes ("only-copy"); both are of kind refused. Else: not_found, io.
[[nodiscard]] Result<bool> take_back(Book& book, const TakenBack& taken);

}  // namespace kempt::work
