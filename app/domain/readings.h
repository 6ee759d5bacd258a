// The readings by name: which belong together, what a person calls them, and which of them marks ask for.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

#include "domain/records.h"

namespace kempt {

// Readings that come from one kind of mark.
enum class ReadingGroup { edges, shine, tone, ends, combings, pattern };
[[nodiscard]] const QVector<ReadingGroup>& all_reading_groups();

[[nodiscard]] const QStringList& reading_names_of(ReadingGroup group);
[[nodiscard]] const QStringList& edge_reading_names();  // of ReadingGroup::edges
[[nodiscard]] const QStringList& all_reading_names();   // in the order of the groups

// For people: "edge coverage", "strands at the edge"...
[[nodiscard]] QString title_of_reading(const QString& name);
// One line saying what the reading is.
[[nodiscard]] QString meaning_of_reading(const QString& name);

// An edge line asks for edges, a shine region for shine, a strand line for tone; on the gauge sheet "hem" with its
// region asks for ends, "combings" for combed-out strands, "strand" for pattern. In the order of the groups.
[[nodiscard]] QVector<ReadingGroup> groups_asked_by(const Marks& marks);
// Whether two drawings ask the same of a group: all marks that its readings use are alike.
[[nodiscard]] bool same_marks_for(ReadingGroup group, const Marks& one, const Marks& other);

}  // namespace kempt
