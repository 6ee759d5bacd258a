// Marks from one open photo to another, without a book: through the cards, or by what shows in both photos.
#pragma once

#include <QStringList>
#include <optional>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/measure_photo.h"

namespace kempt::work {

struct CarriedMarks {
    Marks marks;                        // not stored: id 0
    QString by;                         // "card", "skin", "anchors"
    std::optional<double> residual_mm;  // 95 % limit of the error at the edge line; by the card alone it is not known
    QStringList notes;                  // what was left out, or looks odd; sentences

    // One sentence for the person: how it was carried and how far off it may be.
    [[nodiscard]] QString told() const;
};

// Points of `marks` from one photo to the other: to_px_from_mm(from_mm_from_px(p)). Both calibrations need a card or
// sheet lying the same way on the head; right when the card was not moved between the shots, else off by as much as
// the card moved. Points that fall outside `to_size` are clipped to its border. Errors: refused (no card in one).
[[nodiscard]] Result<Marks> map_marks(const Marks& marks, const card::Calibration& from, const card::Calibration& to,
                                      QSize to_size);

enum class Between { shots, visits };

// What is carried: edge line, hair side, shine region, strand line, region, anchors, and colour taps where the new
// photo shows the same colour at the place (CIEDE2000 at most 8 after both cards' correction): a sample of skin on a
// strand would be worse than none. Corrections of a comb-out belong to their photo and stay there.
//   Between shots of one visit: through both cards; the skin is asked as well, and where it shows that the card was
// moved (by more than half a millimetre and more than it can tell), it decides.
//   Between visits: by anchors (to_marks, when that photo has as many as `marks`), else by the skin beside the edge
//   line
// (align/align.h); never through the cards, which are laid anew each time. Lines that leave the new photo end at its
// border.
// Errors: those of align::align; refused ("no-card-to-carry", "line-off-photo": less than 10 mm of the line would lie
// on the new photo); cancelled.
[[nodiscard]] Result<CarriedMarks> carry_between(const OpenPhoto& from, const Marks& marks, const OpenPhoto& to,
                                                 const std::optional<Marks>& to_marks, Between between,
                                                 const Progress& progress = {});

}  // namespace kempt::work
