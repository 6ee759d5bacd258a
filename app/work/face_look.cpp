#include "work/face_look.h"

#include <algorithm>

#include "book/photo_store.h"
#include "book/visit_store.h"
#include "work/draw_laid.h"
#include "work/errors.h"
#include "work/open_kept.h"

namespace kempt::work {

namespace {
constexpr double longest_px = 1200;  // as large as a dialog on most screens
}

Result<FaceLook> look_at_face(Book& book, Id client, Id photo, const Progress& progress) {
    return guarded([&]() -> Result<FaceLook> {
        const auto record = store::get_photo(book, photo);
        if (!record) return record.error();
        const auto visit = store::get_visit(book, record->visit);
        if (!visit) return visit.error();
        MeasureOptions how;
        how.with_sha256 = false;
        const auto open = open_kept(book, photo, how, part_of(progress, 0, 0.6));
        if (!open) return open.error();
        const cv::Mat& pixels = (*open)->decoded.photo.pixels;
        FaceLook look;
        look.view = record->view;
        look.date = visit->date;
        auto cover = face_cover(book, client, photo, **open, part_of(progress, 0.6, 0.9));
        if (!cover) return cover.error();
        look.cover = std::move(cover).value();
        look.picture_px = std::min(1.0, longest_px / std::max(pixels.cols, pixels.rows));
        PairSide side;
        side.photo = open->get();
        const double s = look.picture_px * finer;
        look.picture = draw_laid(side, {s, 0, 0, 0, s, 0, 0, 0, 1},
                                 {std::max(1, static_cast<int>(pixels.cols * look.picture_px)),
                                  std::max(1, static_cast<int>(pixels.rows * look.picture_px))},
                                 false);
        return look;
    });
}

}  // namespace kempt::work
