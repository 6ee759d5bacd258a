#include "book/reading_store.h"

#include <QSet>
#include <algorithm>
#include <tuple>

#include "book/store_help.h"

namespace kempt::store {

namespace {

const QString columns = QStringLiteral(
    "r.id, m.photo, m.marks, r.name, n.unit, r.value, r.low, r.high, r.refusal_code, r.refusal_text, "
    "m.analysis_version, m.options, m.card, m.details, m.photo_sha256, m.measured_at");
const QString joined =
    QStringLiteral(" FROM reading r JOIN run m ON m.id = r.run JOIN reading_name n ON n.name = r.name");
const QString dated_columns = QStringLiteral(
    ", v.client, v.id, v.visited_on, v.wet, v.styled, v.product, p.view, p.shot, p.quality_level, "
    "CASE WHEN m.marks = (SELECT MAX(k.id) FROM marks k WHERE k.photo = m.photo) THEN 0 ELSE 1 END");
const QString dated_join = QStringLiteral(" JOIN photo p ON p.id = m.photo JOIN visit v ON v.id = p.visit");
// CROSS JOIN: from the client's visits to the readings, in this order. Left to itself SQLite goes the other way through
// every reading of that name in the book: 1.1 s for one client of 5,000, against 0.1 ms.
const QString from_visits = QStringLiteral(
    " FROM visit v CROSS JOIN photo p CROSS JOIN run m CROSS JOIN reading r CROSS JOIN reading_name n "
    "WHERE p.visit = v.id AND m.photo = p.id AND r.run = m.id AND n.name = r.name AND v.client = ?");
const QString of_marks_as_they_stand =
    QStringLiteral("m.marks = (SELECT MAX(k.id) FROM marks k WHERE k.photo = m.photo)");
const QString of_latest_run = QStringLiteral(" m.id = (SELECT MAX(l.id) FROM run l WHERE l.photo = m.photo)");

ReadingRecord reading_of(sql::Row& row) {
    ReadingRecord r;
    r.id = row.number();
    r.photo = row.number();
    r.marks = row.number();
    r.name = row.text();
    r.unit = row.text();
    const std::optional<double> value = row.real_or_null();
    r.refused = !value;
    r.value = value.value_or(0);
    r.low = row.real();
    r.high = row.real();
    r.refusal_code = row.text();
    r.refusal_text = row.text();
    r.analysis_version = row.small();
    r.options = row.text();
    r.card = row.text();
    r.details = row.text();
    r.photo_sha256 = row.text();
    r.measured_at = QDateTime::fromString(row.text(), Qt::ISODateWithMs);
    if (!r.measured_at.isValid()) row.mark_broken();
    return r;
}

SoundDetails sound_details_of(sql::Row& row) {
    SoundDetails one;
    one.client = row.number();
    one.visit = row.number();
    one.date = row.date();
    one.view = row.view();
    one.shot = row.small();
    one.details = row.text();
    return one;
}

DatedReading dated_of(sql::Row& row) {
    DatedReading d;
    d.reading = reading_of(row);
    d.client = row.number();
    d.visit = row.number();
    d.date = row.date();
    d.hair.wet = row.flag();
    d.hair.styled = row.flag();
    d.hair.product = row.flag();
    d.view = row.view();
    d.shot = row.small();
    d.quality_level = row.text();
    d.drawn_anew = row.flag();
    return d;
}

struct Known {
    ReadingName name;
    double lowest = 0;
    std::optional<double> highest;
};

Result<QVector<Known>> known_names(Book& book) {
    return sql::all<Known>(
        book.connection(), "SELECT name, unit, lowest, highest FROM reading_name ORDER BY name", {},
        +[](sql::Row& row) {
            Known known;
            known.name.name = row.text();
            known.name.unit = row.text();
            known.lowest = row.real();
            known.highest = row.real_or_null();
            return known;
        });
}

Status sensible(const ReadingRecord& r, const QVector<Known>& names) {
    const std::string title = "reading " + in_quotes(r.name);
    const auto known = std::find_if(names.begin(), names.end(), [&](const Known& k) { return k.name.name == r.name; });
    if (known == names.end())
        return invalid("reading-unknown", "The book does not know the " + title + ".", "Use one of its names.");
    if (r.refused) {
        if (!r.refusal_code.isEmpty() && !r.refusal_text.isEmpty()) return Done{};
        return invalid("refusal-reason", "The " + title + " is refused without a reason.", "Give code and text.");
    }
    if (r.unit != known->name.unit)
        return invalid(
            "reading-unit",
            "The " + title + " is kept in " + in_quotes(known->name.unit) + ", not in " + in_quotes(r.unit) + ".",
            "Convert it first.");
    if (!std::isfinite(r.value) || !std::isfinite(r.low) || !std::isfinite(r.high))
        return invalid("not-a-number", "The " + title + " is not a number.", "Measure again.");
    if (r.low > r.value || r.value > r.high)
        return invalid("reading-interval", "The " + title + " lies outside its own interval.", "Measure again.");
    if (r.value < known->lowest || (known->highest && r.value > *known->highest))
        return invalid("reading-range", "The " + title + " has a value that it cannot have.", "Measure again.");
    return Done{};
}

Status one_run(const QVector<ReadingRecord>& readings) {
    if (readings.isEmpty()) return invalid("readings-missing", "There are no readings to keep.", "Measure first.");
    const ReadingRecord& a = readings.first();
    QSet<QString> names;
    for (const ReadingRecord& b : readings) {
        const bool same = a.photo == b.photo && a.marks == b.marks && a.analysis_version == b.analysis_version &&
                          a.options == b.options && a.card == b.card && a.details == b.details &&
                          a.photo_sha256 == b.photo_sha256 && a.measured_at == b.measured_at;
        if (!same || names.contains(b.name))
            return invalid("readings-mixed", "These readings are not of one measurement of one photo.",
                           "Keep each measurement by itself.");
        names.insert(b.name);
    }
    if (a.analysis_version < 1 || !a.measured_at.isValid())
        return invalid("readings-origin", "The readings do not say when and by which version they were taken.",
                       "Measure again.");
    return need_date(a.measured_at.toUTC().date(), "measurement");
}

// The photo is there, has these bytes, and the marks are its own.
Status belongs(Book& book, const ReadingRecord& r) {
    auto sum = sql::first<QString>(
        book.connection(), "SELECT sha256 FROM photo WHERE id = ?", sql::values(r.photo),
        +[](sql::Row& row) { return row.text(); });
    if (!sum) return sum.error();
    if (!sum->has_value()) return missing("photo", r.photo);
    if (**sum != r.photo_sha256)
        return invalid("photo-hash", "The readings were taken from other bytes than those of the photo.",
                       "Measure the photo in the book.");
    auto marks = sql::first<qint64>(
        book.connection(), "SELECT id FROM marks WHERE id = ? AND photo = ?", sql::values(r.marks, r.photo),
        +[](sql::Row& row) { return row.number(); });
    if (!marks) return marks.error();
    if (!marks->has_value()) return missing("marks", r.marks);
    return Done{};
}

}  // namespace

Result<Id> add_readings(Book& book, const QVector<ReadingRecord>& readings) {
    if (Status good = one_run(readings); !good) return good.error();
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    auto names = known_names(book);
    if (!names) return names.error();
    for (const ReadingRecord& r : readings)
        if (Status good = sensible(r, *names); !good) return good.error();
    const ReadingRecord& a = readings.first();
    if (Status good = belongs(book, a); !good) return good.error();

    auto run = sql::insert(book.connection(),
                           "INSERT INTO run (photo, marks, analysis_version, options, card, details, photo_sha256, "
                           "measured_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                           sql::values(a.photo, a.marks, a.analysis_version, a.options, a.card, a.details,
                                       a.photo_sha256, a.measured_at.toUTC().toString(Qt::ISODateWithMs)));
    if (!run) return run.error();
    for (const ReadingRecord& r : readings) {
        const auto number = [&](double value) { return r.refused ? std::nullopt : std::optional(value); };
        const auto reason = [&](const QString& text) { return r.refused ? std::optional(text) : std::nullopt; };
        auto id = sql::insert(book.connection(),
                              "INSERT INTO reading (run, name, value, low, high, refusal_code, refusal_text) VALUES "
                              "(?, ?, ?, ?, ?, ?, ?)",
                              sql::values(*run, r.name, number(r.value), number(r.low), number(r.high),
                                          reason(r.refusal_code), reason(r.refusal_text)));
        if (!id) return id.error();
    }
    if (Status done = transaction->commit(); !done) return done.error();
    return run;
}

Result<QVector<ReadingRecord>> latest_readings(Book& book, Id photo) {
    return sql::all<ReadingRecord>(
        book.connection(), "SELECT " + columns + joined + " WHERE m.photo = ? AND" + of_latest_run + " ORDER BY r.id",
        sql::values(photo), reading_of);
}

Result<QVector<ReadingRecord>> all_readings(Book& book, Id photo) {
    return sql::all<ReadingRecord>(book.connection(),
                                   "SELECT " + columns + joined + " WHERE m.photo = ? ORDER BY m.id, r.id",
                                   sql::values(photo), reading_of);
}

Result<QVector<DatedReading>> readings_of_client(Book& book, Id client, View view, const QString& name) {
    return sql::all<DatedReading>(book.connection(),
                                  "SELECT " + columns + dated_columns + from_visits +
                                      " AND p.view = ? AND r.name = ? AND" + of_latest_run +
                                      " ORDER BY v.visited_on, v.id, p.shot",
                                  sql::values(client, view, name), dated_of);
}

Result<QVector<MeasuredSeries>> series_of_client(Book& book, Id client) {
    return sql::all<MeasuredSeries>(
        book.connection(), "SELECT DISTINCT p.view, r.name" + from_visits, sql::values(client), +[](sql::Row& row) {
            MeasuredSeries series;
            series.view = row.view();
            series.name = row.text();
            return series;
        });
}

Result<QVector<DatedReading>> readings_of_book(Book& book, const QString& name) {
    return sql::all<DatedReading>(book.connection(),
                                  "SELECT " + columns + dated_columns + joined + dated_join + " WHERE r.name = ? AND" +
                                      of_latest_run + " ORDER BY v.client, p.view, v.visited_on, v.id, p.shot",
                                  sql::values(name), dated_of);
}

Status each_sound_details(Book& book, const QString& name, const std::function<void(const SoundDetails&)>& take) {
    return sql::each(book.connection(),
                     "SELECT v.client, v.id, v.visited_on, p.view, p.shot, m.details" + joined + dated_join +
                         " WHERE r.name = ? AND r.value IS NOT NULL AND p.quality_level <> 'refused' AND " +
                         of_marks_as_they_stand + " AND" + of_latest_run,
                     sql::values(name), sound_details_of, take);
}

Result<QVector<SoundValue>> newest_values_of_book(Book& book, const QString& name, int most) {
    auto values = sql::all<SoundValue>(
        book.connection(),
        "SELECT v.client, v.id, p.view, p.shot, r.value FROM (SELECT id FROM reading WHERE name = ? ORDER BY id DESC "
        "LIMIT ?) AS newest CROSS JOIN reading r CROSS JOIN run m CROSS JOIN photo p CROSS JOIN visit v "
        "WHERE r.id = newest.id AND m.id = r.run AND p.id = m.photo AND v.id = p.visit AND r.value IS NOT NULL "
        "AND p.quality_level <> 'refused' AND " +
            of_marks_as_they_stand + " AND" + of_latest_run,
        sql::values(name, most), +[](sql::Row& row) {
            SoundValue one;
            one.client = row.number();
            one.visit = row.number();
            one.view = row.view();
            one.shot = row.small();
            one.value = row.real();
            return one;
        });
    if (values)
        std::sort(values->begin(), values->end(), [](const SoundValue& a, const SoundValue& b) {
            return std::tie(a.client, a.view, a.visit, a.shot) < std::tie(b.client, b.view, b.visit, b.shot);
        });
    return values;
}

Result<QString> state_of_newest_values(Book& book, const QString& name, int most) {
    auto state = sql::first<QString>(
        book.connection(),
        "SELECT (SELECT MAX(id) FROM run), (SELECT MAX(id) FROM marks), COUNT(*), MIN(id), MAX(id) FROM (SELECT id "
        "FROM "
        "reading WHERE name = ? ORDER BY id DESC LIMIT ?) AS newest",
        sql::values(name, most), +[](sql::Row& row) {
            QStringList parts;
            for (int i = 0; i < 5; ++i) parts.append(row.text());
            return parts.join(QLatin1Char('/'));
        });
    if (!state) return state.error();
    return book.connection().database.connectionName() + QLatin1Char('/') + state->value_or(QString());
}

Result<QVector<ReadingName>> reading_names(Book& book) {
    auto known = known_names(book);
    if (!known) return known.error();
    QVector<ReadingName> names;
    for (const Known& k : *known) names.append(k.name);
    return names;
}

}  // namespace kempt::store
