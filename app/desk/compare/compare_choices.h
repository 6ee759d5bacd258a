// What can be compared: the visits of a client that have a marked photo of each view.
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
    [[nodiscard]] QVector<View> views() const;  // marked at two visits or more first, then the others
    [[nodiscard]] QVector<Visit> with_view(View view) const;
};

[[nodiscard]] Result<CompareChoices> compare_choices(Book& book, Id client, const Progress& progress);

}  // namespace kempt::desk
