#include "work/carry_marks.h"

#include <algorithm>

#include "book/marks_store.h"
#include "book/photo_store.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

class Carrier {
  public:
    Carrier(const card::Calibration& from, const card::Calibration& to, QSize to_size)
        : from_(from), to_(to), to_size_(to_size) {}

    [[nodiscard]] QPointF operator()(const QPointF& p) const {
        const cv::Point2d px = card::px_from_mm(to_, card::mm_from_px(from_, {p.x(), p.y()}));
        return {std::clamp(px.x, 0.0, static_cast<double>(to_size_.width())),
                std::clamp(px.y, 0.0, static_cast<double>(to_size_.height()))};
    }
    void carry(QVector<QPointF>& points) const {
        for (QPointF& p : points) p = (*this)(p);
    }

  private:
    const card::Calibration& from_;
    const card::Calibration& to_;
    QSize to_size_;
};

}  // namespace

Result<Marks> map_marks(const Marks& marks, const card::Calibration& from, const card::Calibration& to, QSize to_size) {
    const bool cards = from.card_found && to.card_found, sheets = from.sheet_found && to.sheet_found;
    if (!cards && !sheets)
        return Error{ErrorKind::refused, "no-card-to-carry",
                     "Marks can only be carried between two photos that both show the gauge card.", "",
                     "Draw the marks on this photo by hand."};
    const Carrier carrier(from, to, to_size);
    Marks carried = marks;
    carried.id = 0;
    carried.photo = 0;
    for (QVector<QPointF>* points : {&carried.edge_line, &carried.hair_taps, &carried.scalp_taps, &carried.shine_region,
                                     &carried.strand_line, &carried.region, &carried.anchors})
        carrier.carry(*points);
    if (carried.hair_side) carried.hair_side = carrier(*carried.hair_side);
    // They belong to the strands of that photo.
    carried.not_hair.clear();
    carried.joined.clear();
    carried.scale_points.clear();  // the card gives the scale
    carried.scale_mm = 0;
    return carried;
}

Result<Marks> carry_marks(Book& book, const CarryOptions& options, const Progress& progress) {
    const auto from = store::get_photo(book, options.from_photo);
    if (!from) return from.error();
    const auto to = store::get_photo(book, options.to_photo);
    if (!to) return to.error();
    if (from->view != to->view)
        return invalid("other-view", "The two photos show different views.",
                       "Marks are carried between shots of one view.");
    const auto marks = store::latest_marks(book, from->id);
    if (!marks) return marks.error();
    if (!marks.value())
        return missing("no-marks", "Nothing has been drawn on the photo that the marks should come from.");
    const auto from_bytes = store::photo_bytes(book, from->id);
    if (!from_bytes) return from_bytes.error();
    const auto to_bytes = store::photo_bytes(book, to->id);
    if (!to_bytes) return to_bytes.error();
    const auto from_open = open_photo(from_bytes.value(), options.measure, part_of(progress, 0, 0.5));
    if (!from_open) return from_open.error();
    const auto to_open = open_photo(to_bytes.value(), options.measure, part_of(progress, 0.5, 1));
    if (!to_open) return to_open.error();
    auto carried = map_marks(*marks.value(), (*from_open)->card, (*to_open)->card, to->size);
    if (carried) carried->photo = to->id;
    return carried;
}

}  // namespace kempt::work
