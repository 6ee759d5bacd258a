#include "work/set_marks.h"

#include <QSize>

#include "book/marks_store.h"
#include "book/photo_store.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

bool within(const QPointF& p, QSize photo) {
    return p.x() >= 0 && p.y() >= 0 && p.x() <= photo.width() && p.y() <= photo.height();
}

Status check_points(const QVector<QPointF>& points, const std::string& name, QSize photo) {
    for (const QPointF& p : points)
        if (!within(p, photo))
            return invalid("mark-outside",
                           "A point of " + name + " lies outside the photo, which is " + std::to_string(photo.width()) +
                               " x " + std::to_string(photo.height()) + " pixels.",
                           "Give points in pixels of the upright photo.");
    return Done{};
}

bool same(const Marks& a, const Marks& b) {
    return a.view == b.view && a.edge_line == b.edge_line && a.hair_side == b.hair_side && a.hair_taps == b.hair_taps &&
           a.scalp_taps == b.scalp_taps && a.shine_region == b.shine_region && a.strand_line == b.strand_line &&
           a.region == b.region && a.anchors == b.anchors && a.sheet == b.sheet && a.scale_points == b.scale_points &&
           a.scale_mm == b.scale_mm && a.not_hair == b.not_hair && a.joined == b.joined && a.whole == b.whole;
}

}  // namespace

Status check_marks(const Marks& marks, QSize photo) {
    const std::pair<const QVector<QPointF>*, const char*> lists[] = {
        {&marks.edge_line, "the edge line"},      {&marks.hair_taps, "the hair samples"},
        {&marks.scalp_taps, "the scalp samples"}, {&marks.shine_region, "the shine region"},
        {&marks.strand_line, "the strand line"},  {&marks.region, "the region"},
        {&marks.anchors, "the anchors"},          {&marks.scale_points, "the scale"},
        {&marks.not_hair, "what is no hair"},     {&marks.joined, "the joined strands"},
        {&marks.whole, "the whole strands"}};
    for (const auto& [points, name] : lists)
        if (const Status status = check_points(*points, name, photo); !status) return status;
    if (marks.hair_side)
        if (const Status status = check_points({*marks.hair_side}, "the hair side", photo); !status) return status;
    if (marks.edge_line.size() == 1)
        return invalid("edge-line-short", "The edge line has one point only.", "Draw it with two points or more.");
    if (!marks.edge_line.isEmpty() && !marks.hair_side)
        return invalid("hair-side-missing", "The edge line does not say on which side the hair is.",
                       "Tap once on the hair beside the line (hair_side).");
    if (marks.joined.size() % 2 != 0)
        return invalid("joined-odd", "Joined strands need two points each, one on each strand.");
    if (marks.scale_points.size() != 0 && (marks.scale_points.size() != 2 || !(marks.scale_mm > 0)))
        return invalid("scale-incomplete", "A scale needs two points and the distance between them in mm.");
    return Done{};
}

Result<Marks> set_marks(Book& book, Id photo, const Marks& marks) {
    const auto record = store::get_photo(book, photo);
    if (!record) return record.error();
    if (const Status status = check_marks(marks, record->size); !status) return status.error();
    const auto newest = store::latest_marks(book, photo);
    if (!newest) return newest.error();
    Marks to_keep = marks;
    to_keep.photo = photo;
    to_keep.view = record->view;  // the photo was taken into that view
    if (newest.value() && same(*newest.value(), to_keep)) return *newest.value();
    to_keep.id = 0;
    const auto id = store::add_marks(book, to_keep);
    if (!id) return id.error();
    to_keep.id = id.value();
    return to_keep;
}

Result<std::optional<Marks>> marks_of(Book& book, Id photo) {
    const auto record = store::get_photo(book, photo);
    if (!record) return record.error();
    return store::latest_marks(book, photo);
}

}  // namespace kempt::work
