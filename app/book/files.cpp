#include "book/files.h"

#include <fcntl.h>
#include <unistd.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUuid>
#include <cerrno>
#include <cstring>

namespace kempt::sql::files {

namespace {

bool sync_one(const QString& path, int flags) {
    const int handle = ::open(QFile::encodeName(path).constData(), flags);
    if (handle < 0) return false;
    const bool done = ::fsync(handle) == 0 || errno == EINVAL;  // EINVAL: this file system cannot, and need not
    ::close(handle);
    return done;
}

}  // namespace

QString free_name(const QString& wanted) {
    QString name = wanted;
    for (int i = 2; QFileInfo::exists(name); ++i) name = QStringLiteral("%1-%2").arg(wanted).arg(i);
    return name;
}

QString temporary_name(const QString& path) {
    return path + ".part-" + QUuid::createUuid().toString(QUuid::Id128).left(12);
}

Status sync(const QString& path) {
    const QString folder = QFileInfo(path).absolutePath();
    if (sync_one(path, O_RDONLY | O_CLOEXEC) && sync_one(folder, O_RDONLY | O_DIRECTORY | O_CLOEXEC)) return Done{};
    return Error{ErrorKind::io, "disk-trouble",
                 quoted(path) + " could not be written to the disk (" + std::strerror(errno) + ").", "",
                 "Check the disk, its connection and the free space."};
}

Status rename_to_free(const QString& from, const QString& to) {
    QFile file(from);
    if (file.rename(to)) return sync(to);  // QFile refuses a name that is taken
    return Error{ErrorKind::io, "disk-trouble",
                 quoted(to) + " could not be written (" + file.errorString().toStdString() + ").", "",
                 "Check the name and that you may write in that folder."};
}

std::string quoted(const QString& path) {
    return QString('"' + QDir::toNativeSeparators(path) + '"').toStdString();
}

}  // namespace kempt::sql::files
