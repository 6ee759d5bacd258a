// What has to be entered of a planned service, by its kind; only that is shown.
#pragma once

#include <QString>
#include <QVector>

#include "care/words.h"

namespace kempt::desk {

enum class PlanField {
    stretch,     // from, to, or the new growth only
    new_growth,  // can be a retouch
    sections,
    strength,
    minutes,  // planned, and the maker's maximum
    strand_test,
    patch_test,
    temperature,
    passes,
    wet,
    protectant,
    scalp,
    formaldehyde,
    data_sheet,
    at_home,
    tight,
    adds_hair,
    order  // it is put on, processes and is rinsed off: an order of work
};

[[nodiscard]] bool wants(care::Kind kind, PlanField field);

// A field that is answered by yes or no.
[[nodiscard]] bool is_yes_no(PlanField field);

// Kinds as they are offered, by what they do. Kinds that only a record knows (lye or not: nobody knows) are not.
struct KindGroup {
    QString name;
    QVector<care::Kind> kinds;
};
[[nodiscard]] QVector<KindGroup> kind_groups();

}  // namespace kempt::desk
