// A book as a salon has it after many years: 5,000 clients, 60,000 visits, 200,000 photos. Invented from a seed.
#pragma once

#include <QDate>
#include <QString>

#include "domain/records.h"

namespace bench {

struct LargeBookOptions {
    int clients = 5000, visits = 60000, photos = 200000;
    QDate today;         // last visits lie before it
    unsigned seed = 17;  // own choice
};
struct LargeBook {
    kempt::Id many_visits = 0;  // a client with 60 visits
    kempt::Id no_visits = 0;    // one with none
    kempt::Id many_photos = 0;  // a client of whose visits one has 40 photos
    kempt::Id many_photos_visit = 0;
    qint64 readings = 0, bytes = 0;  // rows; of the file
};
// Writes it in one transaction, straight into the tables: through the stores each row would wait for the disk. Photos
// are tiny JPEG files, each with bytes and SHA-256 of its own; their thumbnails, marks, runs and readings have the
// sizes that real ones have. Ends the program with a sentence when that fails.
[[nodiscard]] LargeBook make_large_book(const QString& path, const LargeBookOptions& options);
// Of a book that make_large_book wrote.
[[nodiscard]] LargeBook look_at_large_book(const QString& path);

}  // namespace bench
