// What can be compared: the visits of a client that have a photo of each view.
#pragma once

#include <QHash>
#include <QVector>

#include "core/progress.h"
#include "work/keep_records.h"

namespace kempt::desk {

struct CompareChoices {
    Client client;
    QVector<Visit> visits;                      // by date
    QHash<Id, QVector<View>> marked;            // views with marks, by visit
    QHash<Id, QVector<View>> taken;             // views with photos, by visit
    [[nodiscard]] QVector<View> views() const;  // at two visits or more first, then the others
    // With marks, where there are two such or more; else with a photo.
    [[nodiscard]] QVector<Visit> with_view(View view) const;
    [[nodiscard]] bool has_both_temples() const;  // at one visit or two
};

[[nodiscard]] Result<CompareChoices> compare_choices(Book& book, Id client, const Progress& progress);

}  // namespace kempt::desk
