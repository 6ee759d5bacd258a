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
    QByteArray bytes;
    double printer_scale = 1;
};

[[nodiscard]] Result<PhotoData> photo_data(Book& book, Id photo, const Progress& progress);

}  // namespace kempt::desk
