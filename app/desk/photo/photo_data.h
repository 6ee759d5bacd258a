// What the photo page needs of one photo, read in one go.
#pragma once

#include "core/progress.h"
#include "work/keep_records.h"

namespace kempt::desk {

struct PhotoData {
    Client client;
    Visit visit;
    work::PhotoRow row;
    QVector<work::PhotoRow> siblings;  // all photos of the visit
    std::optional<Marks> marks;
    // The latest earlier visit with a marked photo of this view; nothing when there is none.
    std::optional<Visit> marked_before;
    QByteArray bytes;
    double printer_scale = 1;
};

[[nodiscard]] Result<PhotoData> photo_data(Book& book, Id photo, const Progress& progress);

}  // namespace kempt::desk
