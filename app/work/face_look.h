// A photo to look at while its eye bands are set.
#pragma once

#include <QDate>
#include <QImage>

#include "work/face_keep.h"

namespace kempt::work {

struct FaceLook {
    QImage picture;         // upright, as the camera wrote it, the longest side at most 1200 px
    double picture_px = 1;  // of the picture for one of the photo
    FaceCover cover;        // in the photo's pixels: kept, else proposed
    View view = View::left_temple;
    QDate date;
};
// Errors: not_found (photo), those of opening it, cancelled.
[[nodiscard]] Result<FaceLook> look_at_face(Book& book, Id client, Id photo, const Progress& progress = {});

}  // namespace kempt::work
