// What the next dates of clients depend on, of all clients in one query each. Errors as in client_store.h.
#pragma once

#include <QHash>
#include <QVector>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// Of every client the newest daily life told until that day: whether heat tools were asked for, and how many there are.
struct HeatTold {
    Id client = 0;
    QDate date;
    bool asked = false;
    int tools = 0;
};
[[nodiscard]] Result<QVector<HeatTold>> heat_told(Book& book, QDate until);

// Of every client with photos the day of the last visit, until that day, that has some.
[[nodiscard]] Result<QHash<Id, QDate>> last_photographed(Book& book, QDate until);

}  // namespace kempt::store
