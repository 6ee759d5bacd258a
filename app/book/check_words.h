// What the records of services and of what a client told hold in words and days, read one by one.
#pragma once

#include <QStringList>

#include "book/sql.h"

namespace kempt::sql {

struct WordReport {
    QStringList problems;  // cannot be read at all: a day that is none, a section of the head that is none
    // Of no list of this Kempt: a kind of service, a question, where and what a grade is of. They stay in the book; the
    // care rules take the service as something that nobody knows, the grade as the whole head's, the answer as not
    // given.
    QStringList unknown;
};
// One sentence each, with the record's number. Changes nothing. Errors: damaged, busy, io.
[[nodiscard]] Result<WordReport> read_words(Connection& connection);

}  // namespace kempt::sql
