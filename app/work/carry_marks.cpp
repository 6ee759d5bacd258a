#include "work/carry_marks.h"

#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/visit_store.h"
#include "work/errors.h"
#include "work/open_kept.h"

namespace kempt::work {

Result<CarriedMarks> carry_marks(Book& book, const CarryOptions& options, const Progress& progress) {
    const auto from = store::get_photo(book, options.from_photo);
    if (!from) return from.error();
    const auto to = store::get_photo(book, options.to_photo);
    if (!to) return to.error();
    if (from->view != to->view)
        return invalid("other-view", "The two photos show different views.",
                       "Marks are carried between shots of one view.");
    const auto from_visit = store::get_visit(book, from->visit);
    if (!from_visit) return from_visit.error();
    const auto to_visit = store::get_visit(book, to->visit);
    if (!to_visit) return to_visit.error();
    if (from_visit->client != to_visit->client)
        return invalid("other-client", "The two photos belong to different clients.");
    const auto marks = store::latest_marks(book, from->id);
    if (!marks) return marks.error();
    if (!marks.value())
        return missing("no-marks", "Nothing has been drawn on the photo that the marks should come from.");
    const auto to_marks = store::latest_marks(book, to->id);
    if (!to_marks) return to_marks.error();
    MeasureOptions how = options.measure;
    how.with_sha256 = false;
    const auto from_open = open_kept(book, from->id, how, part_of(progress, 0, 0.35));
    if (!from_open) return from_open.error();
    const auto to_open = open_kept(book, to->id, how, part_of(progress, 0.35, 0.7));
    if (!to_open) return to_open.error();
    auto carried =
        carry_between(**from_open, *marks.value(), **to_open, to_marks.value(),
                      from->visit == to->visit ? Between::shots : Between::visits, part_of(progress, 0.7, 1));
    if (carried) carried->marks.photo = to->id;
    return carried;
}

}  // namespace kempt::work
