#include "book/grade_store.h"

#include "book/store_help.h"

namespace kempt::store {

namespace {

const QString columns = QStringLiteral("g.id, g.visit, g.zone, g.quality, g.value, g.round");

Grade grade_of(sql::Row& row) {
    Grade grade;
    grade.id = row.number();
    grade.visit = row.number();
    grade.zone = row.text();
    grade.quality = row.text();
    grade.value = row.small();
    grade.round = row.small();
    return grade;
}

DatedGrade dated_of(sql::Row& row) {
    DatedGrade dated;
    dated.grade = grade_of(row);
    dated.date = row.date();
    return dated;
}

ClientGrade of_client(sql::Row& row) {
    ClientGrade grade;
    grade.dated = dated_of(row);
    grade.client = row.number();
    return grade;
}

Status sensible(const Grade& g) {
    if (g.zone.trimmed().isEmpty() || g.quality.trimmed().isEmpty())
        return invalid("grade-zone", "The grade does not say where or of what it is.", "Give zone and quality.");
    if (g.value < 0 || g.value > 4)
        return invalid("grade-value", "A grade goes from 0 to 4, not " + std::to_string(g.value) + ".",
                       "Choose one of the five steps.");
    if (g.round < 1) return invalid("grade-round", "Gradings are counted from 1.", "Give a round of 1 or more.");
    return Done{};
}

Error twice(const Grade& g) {
    return invalid("already-graded",
                   "This visit already has a grade of " + g.quality.toStdString() + " at " + g.zone.toStdString() +
                       " in round " + std::to_string(g.round) + ".",
                   "Change that one, or grade again as the next round.");
}

}  // namespace

Result<Id> add_grade(Book& book, const Grade& g) {
    if (Status good = sensible(g); !good) return good.error();
    auto id =
        sql::insert(book.connection(), "INSERT INTO grade (visit, zone, quality, value, round) VALUES (?, ?, ?, ?, ?)",
                    sql::values(g.visit, g.zone, g.quality, g.value, g.round));
    if (!id) return told(told(id.error(), "missing-link", missing("visit", g.visit)), "already-there", twice(g));
    return id;
}

Status update_grade(Book& book, const Grade& g) {
    if (Status good = sensible(g); !good) return good;
    Status done =
        change_one(book, "grade", g.id, "UPDATE grade SET zone = ?, quality = ?, value = ?, round = ? WHERE id = ?",
                   sql::values(g.zone, g.quality, g.value, g.round, g.id));
    if (!done) return told(done.error(), "already-there", twice(g));
    return done;
}

Result<Grade> get_grade(Book& book, Id id) {
    return get_one<Grade>(book, "grade", id, "SELECT " + columns + " FROM grade g WHERE g.id = ?", grade_of);
}

Result<QVector<Grade>> grades_of_visit(Book& book, Id visit) {
    return sql::all<Grade>(book.connection(),
                           "SELECT " + columns + " FROM grade g WHERE g.visit = ? ORDER BY g.zone, g.quality, g.round",
                           sql::values(visit), grade_of);
}

Result<QVector<DatedGrade>> grades_of_client(Book& book, Id client) {
    return sql::all<DatedGrade>(book.connection(),
                                "SELECT " + columns +
                                    ", v.visited_on FROM grade g JOIN visit v ON v.id = g.visit WHERE v.client = ? "
                                    "ORDER BY v.visited_on, v.id, g.zone, g.quality, g.round",
                                sql::values(client), dated_of);
}

Result<QVector<ClientGrade>> grades_between(Book& book, QDate from, QDate to) {
    return sql::all<ClientGrade>(
        book.connection(),
        "SELECT g.id, g.visit, g.zone, g.quality, g.value, g.round, v.visited_on, v.client FROM grade g JOIN visit v "
        "ON v.id = g.visit WHERE v.visited_on >= ? AND v.visited_on <= ? AND g.quality IN ('breakage', 'porosity', "
        "'elasticity') ORDER BY v.client, v.visited_on, v.id, g.zone, g.quality, g.round",
        sql::values(from, to), of_client);
}

Status erase_grade(Book& book, Id id) {
    return erase_one(book, "grade", "grade", id);
}

}  // namespace kempt::store
