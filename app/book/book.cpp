#include "book/book.h"

#include <QFile>
#include <QFileInfo>

#include "book/dialect.h"
#include "book/file_header.h"
#include "book/files.h"
#include "book/migrate.h"
#include "book/sql.h"

namespace kempt {

using sql::files::quoted;

namespace {

Error left_as_it_was(Error error) {
    error.kept = "The file was left as it is.";
    return error;
}

// A book in every way but its name.
Status make_file(const QString& path) {
    auto connection = sql::Connection::open(path, sql::Access::make);
    if (!connection) return connection.error();
    auto made = sql::bring_up_to_date(**connection, sql::shipped_steps());
    if (!made) return made.error();
    return Done{};
}

}  // namespace

Book::Book(std::unique_ptr<sql::Connection> connection) : connection_(std::move(connection)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

QString Book::path() const {
    return connection_->path;
}
int Book::version() const {
    const auto version = sql::dialect::version(*connection_);
    return version ? *version : 0;
}
int Book::newest_version() {
    return sql::shipped_steps().isEmpty() ? 0 : sql::shipped_steps().last().version;
}
const QString& Book::upgraded_from() const {
    return upgraded_from_;
}
sql::Connection& Book::connection() const {
    return *connection_;
}

Result<Book> Book::create(const QString& given) {
    const QString path = QFileInfo(given).absoluteFilePath();
    if (QFileInfo::exists(path))
        return Error{ErrorKind::invalid, "name-taken", "There already is a file " + quoted(path) + ".",
                     "It was left as it is.", "Choose another name, or open that file."};
    const QString making = sql::files::temporary_name(path);
    Status made = make_file(making);
    if (made) made = sql::files::sync(making);
    if (made) made = sql::files::rename_to_free(making, path);
    if (!made) {
        QFile::remove(making);
        for (const QString& side : sql::dialect::side_files(making)) QFile::remove(side);
        Error error = made.error();
        error.what = "The book " + quoted(path) + " could not be created. " + error.what;
        // Only a write to the disk can fail once the file has its name.
        error.kept =
            QFileInfo::exists(path) ? "A new book without clients was left there." : "No file was left behind.";
        return error;
    }
    return open(path);
}

Result<Book> Book::open(const QString& given) {
    const QString path = QFileInfo(given).absoluteFilePath();
    if (auto version = sql::usable_version_in_file(path, newest_version()); !version) return version.error();
    const QFileInfo info(path);
    if (!info.isWritable() || !QFileInfo(info.absolutePath()).isWritable())
        return Error{ErrorKind::io, "book-write-protected",
                     quoted(path) + " can be read but not written, or its folder cannot.",
                     "The file was left as it is.",
                     "Take away the write protection of the file and its folder, or copy the book to another place."};
    auto connection = sql::Connection::open(path, sql::Access::write);
    if (!connection) return left_as_it_was(connection.error());
    // Asked once more: the write-ahead file may know better than the file's header.
    auto version = sql::dialect::version(**connection);
    if (!version) return left_as_it_was(version.error());
    if (*version > newest_version())
        return Error{ErrorKind::version, "book-too-new", quoted(path) + " was written by a newer Kempt.",
                     "Nothing in the book was changed.", "Install the newer Kempt to open it."};
    auto noted = sql::first<int>(
        **connection, "SELECT version FROM schema_step ORDER BY version DESC", {},
        +[](sql::Row& row) { return row.small(); });
    if (!noted) return left_as_it_was(noted.error());
    if (noted->value_or(0) != *version)
        return Error{ErrorKind::damaged, "book-damaged", quoted(path) + " contradicts itself about its version.",
                     "The file was left as it is.", "Bring back the latest backup."};
    auto copy = sql::bring_up_to_date(**connection, sql::shipped_steps());
    if (!copy) return copy.error();
    Book book(std::move(*connection));
    book.upgraded_from_ = *copy;
    return book;
}

}  // namespace kempt
