#include "book/target_store.h"

#include "book/store_help.h"
#include "domain/words.h"

namespace kempt::store {

namespace {

const QString columns = QStringLiteral("id, client, view, reading, value");

Target target_of(sql::Row& row) {
    Target target;
    target.id = row.number();
    target.client = row.number();
    target.view = row.view();
    target.reading = row.text();
    target.value = row.real();
    return target;
}

Status sensible(Book& book, const Target& t) {
    if (Status number = need_finite(t.value, "target"); !number) return number;
    if (t.value < 0) return invalid("target-value", "A target cannot be below 0.", "Give 0 or more.");
    struct Range {
        double lowest = 0;
        std::optional<double> highest;
        QString unit;
    };
    auto known = sql::first<Range>(
        book.connection(), "SELECT lowest, highest, unit FROM reading_name WHERE name = ?", sql::values(t.reading),
        +[](sql::Row& row) {
            Range range;
            range.lowest = row.real();
            range.highest = row.real_or_null();
            range.unit = row.text();
            return range;
        });
    if (!known) return known.error();
    if (!known->has_value())
        return invalid("reading-unknown", "The book does not know the reading " + in_quotes(t.reading) + ".",
                       "Use one of its names.");
    const Range& range = **known;
    if (t.value < range.lowest || (range.highest && t.value > *range.highest)) {
        const auto words = [&](double value) { return QString::number(value) + " " + range.unit; };
        const QString upper = range.highest ? " or above " + words(*range.highest) : QString();
        return invalid("target-value",
                       "A target for this reading cannot be below " + words(range.lowest).toStdString() +
                           upper.toStdString() + ".",
                       "Give a value that the reading can have.");
    }
    return Done{};
}

Error twice(const Target& t) {
    return invalid(
        "target-already-set",
        "There already is a target for " + t.reading.toStdString() + " at " + word_of(t.view).toStdString() + ".",
        "Change that one.");
}

}  // namespace

Result<Id> add_target(Book& book, const Target& t) {
    if (Status good = sensible(book, t); !good) return good.error();
    auto id = sql::insert(book.connection(), "INSERT INTO target (client, view, reading, value) VALUES (?, ?, ?, ?)",
                          sql::values(t.client, t.view, t.reading, t.value));
    if (!id) return told(told(id.error(), "missing-link", missing("client", t.client)), "already-there", twice(t));
    return id;
}

Status update_target(Book& book, const Target& t) {
    if (Status good = sensible(book, t); !good) return good;
    Status done = change_one(book, "target", t.id, "UPDATE target SET view = ?, reading = ?, value = ? WHERE id = ?",
                             sql::values(t.view, t.reading, t.value, t.id));
    if (!done) return told(done.error(), "already-there", twice(t));
    return done;
}

Result<Target> get_target(Book& book, Id id) {
    return get_one<Target>(book, "target", id, "SELECT " + columns + " FROM target WHERE id = ?", target_of);
}

Result<Id> put_target(Book& book, const Target& t) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    auto standing = sql::first<qint64>(
        book.connection(), "SELECT id FROM target WHERE client = ? AND view = ? AND reading = ?",
        sql::values(t.client, t.view, t.reading), +[](sql::Row& row) { return row.number(); });
    if (!standing) return standing.error();
    Target target = t;
    target.id = standing->value_or(0);
    if (target.id > 0) {
        if (Status done = update_target(book, target); !done) return done.error();
    } else {
        auto id = add_target(book, target);
        if (!id) return id;
        target.id = *id;
    }
    if (Status done = transaction->commit(); !done) return done.error();
    return target.id;
}

Result<QVector<Target>> targets_of_client(Book& book, Id client) {
    return sql::all<Target>(book.connection(), "SELECT " + columns + " FROM target WHERE client = ? ORDER BY id",
                            sql::values(client), target_of);
}

Status erase_target(Book& book, Id id) {
    return erase_one(book, "target", "target", id);
}

}  // namespace kempt::store
