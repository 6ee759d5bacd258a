// Which shot of a view stands for a visit where pictures are compared.
#pragma once

#include <QDate>
#include <optional>

#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/compare_pictures.h"

namespace kempt::work {

struct ChosenShot {
    PhotoRecord photo;  // with its thumbnail
    Marks marks;        // empty when none were drawn
    QDate date;
    int rank = -1;  // shot_rank.h
};

// The shots of one view of a visit, the best of each kind of marks ("hem", "combings", "strand", "" for all others).
// Errors: not_found.
[[nodiscard]] Result<QVector<ChosenShot>> shots_of_view(Book& book, const Visit& visit, View view);
// One of each, both of the same kind where there is one in both, the best together. Neither may be empty.
[[nodiscard]] std::pair<ChosenShot, ChosenShot> alike(const QVector<ChosenShot>& one, const QVector<ChosenShot>& other);

// The side of a picture: the card's scale, else the two points'.
[[nodiscard]] Result<PairSide> side_of(const OpenPhoto& open, const Marks& marks, const QDate& date);

}  // namespace kempt::work
