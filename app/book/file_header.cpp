#include "book/file_header.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QtEndian>

#include "book/dialect.h"
#include "book/files.h"

namespace kempt::sql {

namespace {

constexpr const char* left_alone = "The file was left as it is.";
using files::quoted;

Error not_a_book(const QString& path, const std::string& why) {
    return {ErrorKind::unsupported, "not-a-book", quoted(path) + " is not a Kempt book: " + why + ".", left_alone,
            "Choose the book's own file."};
}

// Written by the steps a later Kempt applied; empty when it cannot be read.
QString needed_kempt(const QString& path) {
    auto connection = Connection::open(path, Access::frozen);
    if (!connection) return {};
    auto word = first<QString>(
        **connection, "SELECT kempt FROM schema_step ORDER BY version DESC", {}, +[](Row& row) { return row.text(); });
    return word ? word->value_or(QString()) : QString();
}

}  // namespace

Result<int> version_in_file(const QString& path) {
    const QFileInfo info(path);
    if (!info.exists())
        return Error{ErrorKind::not_found, "book-missing", "There is no file " + quoted(path) + ".", "",
                     "Check the name, or create a new book."};
    if (info.isDir()) return not_a_book(path, "it is a folder");
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorKind::io, "book-unreadable",
                     quoted(path) + " could not be read (" + file.errorString().toStdString() + ").", left_alone,
                     "Check that you may read the file."};
    const QByteArray head = file.read(100);
    if (head.isEmpty()) return not_a_book(path, "it is empty");
    if (head.size() < 100 || !head.startsWith(QByteArray("SQLite format 3\0", 16)))
        return not_a_book(path, "its content is of another kind");
    const auto number_at = [&](int offset) { return qFromBigEndian<quint32>(head.constData() + offset); };
    if (number_at(68) != dialect::application_id) return not_a_book(path, "another program made it");

    const quint32 stored_page = qFromBigEndian<quint16>(head.constData() + 16);
    const qint64 page = stored_page == 1 ? 65536 : stored_page;
    // The count of pages holds only while the change counter agrees; a write-ahead file may carry the rest.
    const bool count_holds = number_at(24) == number_at(92);
    if (count_holds && QFileInfo(path + "-wal").size() == 0 && qint64(number_at(28)) * page > info.size())
        return Error{ErrorKind::damaged, "book-damaged", quoted(path) + " has been cut short.", left_alone,
                     "Bring back the latest backup."};
    const int version = int(number_at(60));
    if (version < 1)
        return Error{ErrorKind::damaged, "book-damaged", quoted(path) + " does not say which version it is.",
                     left_alone, "Bring back the latest backup."};
    return version;
}

Result<int> usable_version_in_file(const QString& path, int newest) {
    auto version = version_in_file(path);
    if (!version || *version <= newest) return version;
    const QString kempt = needed_kempt(path);
    const std::string needed = kempt.isEmpty() ? "a newer Kempt" : "Kempt " + kempt.toStdString() + " or newer";
    return Error{ErrorKind::version, "book-too-new",
                 quoted(path) + " was written by a newer Kempt (book version " + std::to_string(*version) +
                     "; this Kempt reads up to " + std::to_string(newest) + ").",
                 left_alone, "Install " + needed + " to open it."};
}

}  // namespace kempt::sql
