#include "work/propose_marks.h"

#include <algorithm>
#include <optional>

#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/visit_store.h"
#include "domain/words.h"
#include "work/errors.h"
#include "work/open_book.h"
#include "work/open_kept.h"
#include "work/shot_rank.h"

namespace kempt::work {

namespace {

struct Candidate {
    PhotoRecord photo;
    Marks marks;
    int rank = 0;
};

// Shots of one visit that carry an edge line, best first.
Result<std::vector<Candidate>> marked_shots(Book& book, Id visit, View view) {
    const auto photos = store::photos_of_visit(book, visit, view);
    if (!photos) return photos.error();
    std::vector<Candidate> found;
    for (const PhotoRecord& photo : photos.value()) {
        const auto marks = store::latest_marks(book, photo.id);
        if (!marks) return marks.error();
        if (!marks.value() || marks.value()->edge_line.size() < 2) continue;
        const auto readings = store::latest_readings(book, photo.id);
        if (!readings) return readings.error();
        found.push_back({photo, *marks.value(), rank_of(photo, true, readings.value())});
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Candidate& a, const Candidate& b) { return a.rank > b.rank; });
    return found;
}

// The latest visit before this one with such a shot.
Result<std::vector<Candidate>> last_shots(Book& book, const Visit& today, View view, Visit& from) {
    const auto visits = store::visits_of_client(book, today.client);
    if (!visits) return visits.error();
    for (auto visit = visits->crbegin(); visit != visits->crend(); ++visit) {
        if (std::pair(visit->date, visit->id) >= std::pair(today.date, today.id)) continue;
        auto shots = marked_shots(book, visit->id, view);
        if (!shots) return shots.error();
        if (shots->empty()) continue;
        from = *visit;
        return shots;
    }
    return missing("no-earlier-marks",
                   "No earlier visit has a photo of the " + word_of(view).toStdString() + " with an edge line.",
                   "Draw the edge line on this photo.");
}

}  // namespace

Result<ProposedMarks> propose_marks(Book& book, const ProposeOptions& options, const Progress& progress) {
    const auto photo = store::get_photo(book, options.photo);
    if (!photo) return photo.error();
    const auto today = store::get_visit(book, photo->visit);
    if (!today) return today.error();
    ProposedMarks out;
    Visit from;
    const auto shots = last_shots(book, today.value(), photo->view, from);
    if (!shots) return shots.error();
    const auto own = store::latest_marks(book, photo->id);
    if (!own) return own.error();
    const auto scale = printer_scale_of(book);
    if (!scale) return scale.error();
    MeasureOptions how = options.measure;
    how.with_sha256 = false;
    how.printer_scale = scale.value();
    const auto to = open_kept(book, photo->id, how, part_of(progress, 0, 0.3));
    if (!to) return to.error();
    const std::size_t tried = std::min(shots->size(), static_cast<std::size_t>(std::max(1, options.shots)));
    std::optional<Error> first;
    for (std::size_t k = 0; k < tried; ++k) {
        const Candidate& shot = shots.value()[k];
        const double begin = 0.3 + 0.7 * static_cast<double>(k) / static_cast<double>(tried),
                     step = 0.7 / static_cast<double>(tried);
        const auto open = open_kept(book, shot.photo.id, how, part_of(progress, begin, begin + 0.4 * step));
        if (!open) return open.error();
        auto carried = carry_between(**open, shot.marks, **to, own.value(), Between::visits,
                                     part_of(progress, begin + 0.4 * step, begin + step));
        if (carried) {
            out.carried = std::move(carried).value();
            out.carried.marks.photo = photo->id;
            out.from_photo = shot.photo.id;
            out.from_visit = from.id;
            out.from_date = from.date;
            return out;
        }
        if (carried.error().kind == ErrorKind::cancelled) return carried.error();
        if (!first) first = carried.error();
    }
    return *first;
}

}  // namespace kempt::work
