#include "work/choose_shot.h"

#include <algorithm>

#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "work/errors.h"
#include "work/shot_rank.h"

namespace kempt::work {

Result<QVector<ChosenShot>> shots_of_view(Book& book, const Visit& visit, View view) {
    const auto photos = store::photos_of_visit(book, visit.id, view);
    if (!photos) return photos.error();
    QVector<ChosenShot> best;
    for (const PhotoRecord& photo : photos.value()) {
        const auto marks = store::latest_marks(book, photo.id);
        if (!marks) return marks.error();
        const auto readings = store::latest_readings(book, photo.id);
        if (!readings) return readings.error();
        ChosenShot shot{photo, marks->value_or(Marks{}), visit.date,
                        rank_of(photo, marks->has_value(), readings.value())};
        const auto same = std::find_if(best.begin(), best.end(),
                                       [&](const ChosenShot& other) { return other.marks.sheet == shot.marks.sheet; });
        if (same == best.end())
            best.append(shot);
        else if (shot.rank > same->rank)
            *same = shot;
    }
    return best;
}

std::pair<ChosenShot, ChosenShot> alike(const QVector<ChosenShot>& one, const QVector<ChosenShot>& other) {
    const ChosenShot *a = nullptr, *b = nullptr;
    for (const ChosenShot& first : one)
        for (const ChosenShot& second : other)
            if (first.marks.sheet == second.marks.sheet && (!a || first.rank + second.rank > a->rank + b->rank)) {
                a = &first;
                b = &second;
            }
    const auto by_rank = [](const ChosenShot& x, const ChosenShot& y) { return x.rank < y.rank; };
    if (!a) a = &*std::max_element(one.begin(), one.end(), by_rank);
    if (!b) b = &*std::max_element(other.begin(), other.end(), by_rank);
    return {*a, *b};
}

Result<PairSide> side_of(const OpenPhoto& open, const Marks& marks, const QDate& date) {
    PairSide side;
    side.photo = &open;
    side.calibration = open.card;
    side.marks = marks;
    side.date = date;
    if (!open.card.card_found && !open.card.sheet_found && marks.scale_points.size() == 2) {
        const QPointF a = marks.scale_points[0], b = marks.scale_points[1];
        auto scaled = card::calibrate_two_points({a.x(), a.y()}, {b.x(), b.y()}, marks.scale_mm);
        if (!scaled) return scaled.error();
        side.calibration = std::move(scaled).value();
    }
    return side;
}

}  // namespace kempt::work
