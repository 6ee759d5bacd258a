// From an older schema to the newest, one numbered step after another.
#pragma once

#include <QString>
#include <QVector>

#include "book/sql.h"

namespace kempt::sql {

struct Step {
    int version = 0;  // the book's version once it is applied
    QString name;     // "001_first"
    QString text;     // SQL in the spelling of schema/
};

// The steps in schema/, in order, numbered 1, 2, 3 ...
[[nodiscard]] const QVector<Step>& shipped_steps();

// Applies every step above the book's version: all of them in one transaction, links checked before the commit, so that
// the book is at the old version or at the last one, never between. When the book already had a version, a copy is
// kept beside it first; gives the name of that copy, empty when there was nothing to keep.
[[nodiscard]] Result<QString> bring_up_to_date(Connection& connection, const QVector<Step>& steps);

}  // namespace kempt::sql
