// Readings, append-only: measuring again adds a run and leaves the earlier ones. Errors as in client_store.h.
#pragma once

#include <QVector>
#include <functional>

#include "book/book.h"
#include "domain/records.h"

namespace kempt::store {

// A reading with the circumstances a verdict asks for.
struct DatedReading {
    ReadingRecord reading;
    Id client = 0;
    Id visit = 0;
    QDate date;  // of the visit
    HairState hair;
    View view = View::front_hairline;
    int shot = 1;
    QString quality_level;    // of the photo
    bool drawn_anew = false;  // the photo got other marks since: the reading is not that of the line as it stands
};

// The readings of one measurement of one photo: all with the same photo, marks, analysis_version, options, card,
// details, photo_sha256 and measured_at, each name once. Gives the run's id. Errors: not_found (photo, or marks of that
// photo), invalid (no readings; unknown name or another unit than the name's; value outside its interval or not a
// number; a refusal without code and text; photo_sha256 not that of the photo).
[[nodiscard]] Result<Id> add_readings(Book& book, const QVector<ReadingRecord>& readings);

// Of the latest run, in the order they were added, refusals included; empty before the first measurement.
[[nodiscard]] Result<QVector<ReadingRecord>> latest_readings(Book& book, Id photo);
// Of every run, oldest run first.
[[nodiscard]] Result<QVector<ReadingRecord>> all_readings(Book& book, Id photo);

// Latest run of every photo of the client in that view; by date, visit, shot. Refusals included.
[[nodiscard]] Result<QVector<DatedReading>> readings_of_client(Book& book, Id client, View view, const QString& name);
// Which readings, refused ones too, the client has of which views; in no order.
struct MeasuredSeries {
    View view = View::front_hairline;
    QString name;
    bool operator==(const MeasuredSeries&) const = default;
};
[[nodiscard]] Result<QVector<MeasuredSeries>> series_of_client(Book& book, Id client);
// The same over the whole book, every view: the repeats behind the book's own within-visit SD. By client, view, date,
// visit, shot.
[[nodiscard]] Result<QVector<DatedReading>> readings_of_book(Book& book, const QString& name);

// A value that counts among repeat shots: of its photo's latest run, of the marks as they stand, not refused and the
// photo not either.
struct SoundValue {
    Id client = 0, visit = 0;
    View view = View::front_hairline;
    int shot = 1;
    double value = 0;
};
// What a measurement of a sound value found besides, row by row as the book gives them, in no order: of a large book they
// do not fit into memory beside each other.
struct SoundDetails {
    Id client = 0, visit = 0;
    QDate date;
    View view = View::front_hairline;
    int shot = 1;
    QString details;
};
[[nodiscard]] Status each_sound_details(Book& book, const QString& name,
                                        const std::function<void(const SoundDetails&)>& take);
// Of the last `most` readings of that name that were added, those that count; by client, view, visit, shot. For what
// needs many values but not all of a large book.
[[nodiscard]] Result<QVector<SoundValue>> newest_values_of_book(Book& book, const QString& name, int most);
// A text that is another one whenever newest_values_of_book may give something else, and stays through every other change
// of the book: it names the connection, the newest run and marks and the ends of that stretch of readings (numbers are
// never given twice; a photo's quality is only set together with a run).
[[nodiscard]] Result<QString> state_of_newest_values(Book& book, const QString& name, int most);

// The names the book knows, with their units.
struct ReadingName {
    QString name, unit;
};
[[nodiscard]] Result<QVector<ReadingName>> reading_names(Book& book);

}  // namespace kempt::store
