#include "book/backup.h"

#include <unistd.h>

#include <QFile>
#include <QFileInfo>
#include <cstdio>

#include "book/dialect.h"
#include "book/file_header.h"
#include "book/files.h"
#include "book/soundness.h"
#include "book/sql.h"

namespace kempt {

using sql::files::quoted;

namespace {

// Removes the file unless it got its final name.
struct Scrap {
    QString path;
    ~Scrap() { QFile::remove(path); }
};

Status read_back(const QString& path) {
    auto connection = sql::Connection::open(path, sql::Access::frozen);
    if (!connection) return connection.error();
    auto problems = sql::dialect::structure_problems(**connection);
    if (!problems) return problems.error();
    if (problems->isEmpty()) return Done{};
    return Error{ErrorKind::damaged, "book-damaged", problems->first().toStdString(), "",
                 "Check the disk and try again; if it stays, check the book."};
}

Status sound(const QString& path) {
    auto connection = sql::Connection::open(path, sql::Access::frozen);
    if (!connection) return connection.error();
    auto report = sql::soundness(**connection, {});
    if (!report) return report.error();
    if (report->sound()) return Done{};
    return Error{ErrorKind::damaged, "book-damaged", report->problems.first().toStdString(), "",
                 "Choose another backup."};
}

// Everything of the book at `path` into its one file, and nobody else using it. A file that is no book, or a damaged
// one, is nobody's: it is set aside as it is.
Status take_over(const QString& path) {
    if (!sql::version_in_file(path)) return Done{};
    auto connection = sql::Connection::open(path, sql::Access::write);
    if (!connection) return connection.error().kind == ErrorKind::busy ? Status(connection.error()) : Done{};
    const Status alone = sql::dialect::fold_to_one_file(**connection);
    if (!alone && alone.error().kind == ErrorKind::busy)
        return Error{ErrorKind::busy, "book-busy", quoted(path) + " is open in another window or program.", "",
                     "Close it there and try again."};
    return Done{};
}

// Both names for one file where the file system can: then the book's name is never without a file.
Status set_aside(const QString& path, const QString& aside) {
    if (::link(QFile::encodeName(path).constData(), QFile::encodeName(aside).constData()) == 0) return Done{};
    return sql::files::rename_to_free(path, aside);
}

Status put_in_place(const QString& ready, const QString& to) {
    if (std::rename(QFile::encodeName(ready).constData(), QFile::encodeName(to).constData()) == 0) return Done{};
    return Error{ErrorKind::io, "disk-trouble", quoted(to) + " could not be written.", "",
                 "Check that you may write in that folder."};
}

std::string former_in(const QString& aside) {
    return "The book as it was is kept in " + quoted(aside) + ".";
}

Error with_kept(Error error, const std::string& before, const std::string& kept) {
    error.what = before + error.what;
    error.kept = kept;
    return error;
}

}  // namespace

Status backup(Book& book, const QString& given) {
    const QString path = QFileInfo(given).absoluteFilePath();
    const std::string kept = "The book itself was not changed, and no backup was left half-written.";
    if (QFileInfo::exists(path))
        return Error{ErrorKind::invalid, "name-taken", "There already is a file " + quoted(path) + ".",
                     "It was left as it is.", "Choose another name for the backup."};
    if (book.connection().depth > 0)
        return Error{ErrorKind::invalid, "transaction-open", "A change to the book is not finished yet.", kept,
                     "Make the backup afterwards."};
    if (!QFileInfo(QFileInfo(path).absolutePath()).isDir())
        return Error{ErrorKind::io, "folder-missing",
                     "There is no folder " + quoted(QFileInfo(path).absolutePath()) + ".", kept,
                     "Choose another place for the backup."};
    const Scrap scrap{sql::files::temporary_name(path)};
    Status done = sql::dialect::copy_into(book.connection(), scrap.path);
    if (done) done = sql::files::sync(scrap.path);
    if (done) done = read_back(scrap.path);
    if (done) done = sql::files::rename_to_free(scrap.path, path);
    if (!done) return with_kept(done.error(), "The backup " + quoted(path) + " could not be made. ", kept);
    return Done{};
}

Result<QString> restore(const QString& given_from, const QString& given_to) {
    const QString from = QFileInfo(given_from).absoluteFilePath();
    const QString to = QFileInfo(given_to).absoluteFilePath();
    const std::string kept = "Nothing was replaced.";
    const std::string before = "The book could not be brought back from " + quoted(from) + ". ";
    if (QFileInfo(from).canonicalFilePath() == QFileInfo(to).canonicalFilePath() && QFileInfo::exists(from))
        return Error{ErrorKind::invalid, "same-file", "The backup and the book are the same file.", kept,
                     "Name the backup first and the book second."};
    if (auto version = sql::usable_version_in_file(from, Book::newest_version()); !version)
        return with_kept(version.error(), before, kept);
    if (QFileInfo(from + "-wal").size() > 0)
        return Error{ErrorKind::busy, "book-busy", quoted(from) + " is open, or was not closed properly.", kept,
                     "Open it in Kempt and make a backup of it, then bring back that one."};

    const Scrap scrap{sql::files::temporary_name(to)};
    QFile source(from);
    if (!source.copy(scrap.path))
        return Error{ErrorKind::io, "disk-trouble", before + source.errorString().toStdString() + ".", kept,
                     "Check the disk, the folder and the free space."};
    // A copy of a write-protected file is one too.
    QFile::setPermissions(scrap.path, QFile::permissions(scrap.path) | QFile::ReadOwner | QFile::WriteOwner);
    Status done = sound(scrap.path);
    if (done) done = sql::files::sync(scrap.path);
    if (done && QFileInfo::exists(to)) done = take_over(to);
    if (!done) return with_kept(done.error(), before, kept);

    QString aside;
    if (QFileInfo::exists(to)) {
        aside = sql::files::free_name(to + ".before-restore");
        done = set_aside(to, aside);
        if (!done) {
            const bool stands = QFileInfo::exists(to) || QFile::rename(aside, to);
            return with_kept(done.error(), before, stands ? kept : former_in(aside));
        }
    }
    const QStringList sides = sql::dialect::side_files(to);
    const QStringList sides_aside = sql::dialect::side_files(aside.isEmpty() ? to + ".before-restore" : aside);
    for (int i = 0; i < sides.size(); ++i)
        if (QFileInfo::exists(sides[i])) QFile::rename(sides[i], sql::files::free_name(sides_aside[i]));
    done = put_in_place(scrap.path, to);
    if (!done) {
        const bool stands = QFileInfo::exists(to);
        if (stands && !aside.isEmpty()) QFile::remove(aside);  // the second name of the same file
        const bool back = stands || aside.isEmpty() || QFile::rename(aside, to);
        return with_kept(done.error(), before, back ? kept : former_in(aside));
    }
    // The backup stands at the book's name now, so whatever comes the former book stays where it was set aside.
    if (done = sql::files::sync(to); !done)
        return with_kept(done.error(), quoted(to) + " was brought back, but may be lost when the power fails. ",
                         aside.isEmpty() ? "The backup is unchanged." : former_in(aside));
    return aside;
}

}  // namespace kempt
