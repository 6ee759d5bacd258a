#include "book/check.h"

#include <QCryptographicHash>

#include "book/check_words.h"
#include "book/dialect.h"
#include "book/soundness.h"

namespace kempt {

namespace sql {

namespace {

struct Kept {
    Id photo = 0;
    QString file_name, sha256;
};

Kept kept_of(Row& row) {
    Kept kept;
    kept.photo = row.number();
    kept.file_name = row.text();
    kept.sha256 = row.text();
    return kept;
}

// Damage becomes a problem of the report; only what keeps the check from going on stays an error.
Status note(CheckReport& report, const Result<QStringList>& problems) {
    if (problems) {
        report.problems << *problems;
    } else if (problems.error().kind == ErrorKind::damaged) {
        report.problems << QString::fromStdString(problems.error().what);
    } else {
        return problems.error();
    }
    return Done{};
}

Result<QStringList> photo_problems(Connection& connection, const Kept& kept) {
    auto bytes = first<QByteArray>(
        connection, "SELECT bytes FROM photo_bytes WHERE photo = ?", values(kept.photo),
        +[](Row& row) { return row.bytes(); });
    if (!bytes) return bytes.error();
    const QString name = QStringLiteral("Photo %1 (%2)").arg(kept.photo).arg(kept.file_name);
    if (!bytes->has_value()) return QStringList{name + " has lost its bytes."};
    const QByteArray sum = QCryptographicHash::hash(**bytes, QCryptographicHash::Sha256).toHex();
    if (QString::fromLatin1(sum) != kept.sha256)
        return QStringList{name + " is damaged: its bytes are not those that were stored."};
    return QStringList{};
}

}  // namespace

Result<CheckReport> soundness(Connection& connection, const Progress& progress) {
    const Error cancelled{ErrorKind::cancelled, "cancelled", "The check was stopped.", nothing_changed, ""};
    CheckReport report;
    if (tell(progress, 0, "reading the book's structure") == Go::stop) return cancelled;
    if (Status done = note(report, dialect::structure_problems(connection)); !done) return done.error();
    if (Status done = note(report, dialect::link_problems(connection)); !done) return done.error();

    auto photos = all<Kept>(connection, "SELECT id, file_name, sha256 FROM photo ORDER BY id", {}, kept_of);
    if (!photos) {
        if (Status done = note(report, photos.error()); !done) return done.error();
        return report;
    }
    for (const Kept& kept : *photos) {
        const double fraction = 0.1 + 0.9 * report.photos / double(photos->size());
        if (tell(progress, fraction, "comparing the photos") == Go::stop) return cancelled;
        if (Status done = note(report, photo_problems(connection, kept)); !done) return done.error();
        ++report.photos;
    }
    return report;
}

}  // namespace sql

Result<CheckReport> check(Book& book, const Progress& progress) {
    auto report = sql::soundness(book.connection(), progress);
    if (!report) return report;
    auto words = sql::read_words(book.connection());
    if (!words) {
        if (words.error().kind != ErrorKind::damaged) return words.error();
        report->problems << QString::fromStdString(words.error().what);
        return report;
    }
    report->problems << words->problems;
    report->unknown = words->unknown;
    return report;
}

}  // namespace kempt
