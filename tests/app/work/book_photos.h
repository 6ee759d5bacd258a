// Photos taken into a temporary book, marked and measured.
#pragma once

#include "app/work/card_photo.h"
#include "app/work/temporary_book.h"
#include "work/import_photos.h"
#include "work/measure_in_book.h"
#include "work/set_marks.h"

namespace kempt::tests {

// Small enough to be quick, large enough for the card and 20 mm of band.
inline CardPhoto small_photo(double strands_per_cm, unsigned seed) {
    CardPhoto what;
    what.px_per_mm = 20;
    what.size = QSize(1900, 1400);
    what.card_at = QPoint(100, 70);
    what.edge_y = 850;
    what.strands_per_cm = strands_per_cm;
    what.seed = seed;
    return what;
}

inline Id add_photo(TemporaryBook& in, const Visit& visit, const CardPhoto& what, View view = View::left_temple) {
    static int number = 0;
    work::ImportOptions options;
    options.visit = visit.id;
    options.view = view;
    options.paths = {in.write(QStringLiteral("photo-%1.jpg").arg(++number), photo_bytes_of(what))};
    const auto report = TemporaryBook::required(work::import_photos(*in.book, options));
    BOOST_REQUIRE_EQUAL(report.imported, 1);
    return report.files.front().photo;
}

inline Id add_measured(TemporaryBook& in, const Visit& visit, const CardPhoto& what, View view = View::left_temple) {
    const Id photo = add_photo(in, visit, what, view);
    TemporaryBook::required(work::set_marks(*in.book, photo, marks_for(what)));
    TemporaryBook::required(work::measure_in_book(*in.book, photo));
    return photo;
}

}  // namespace kempt::tests
