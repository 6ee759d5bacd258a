#include "work/errors.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

#include "domain/files_check.h"

namespace kempt::work {

Error stopped(const std::string& kept) {
    return {ErrorKind::cancelled, "cancelled", "The work was stopped.", kept, ""};
}

Error invalid(const std::string& code, const std::string& what, const std::string& remedy) {
    return {ErrorKind::invalid, code, what, "", remedy};
}

Error missing(const std::string& code, const std::string& what, const std::string& remedy) {
    return {ErrorKind::not_found, code, what, "", remedy};
}

Error disk(const QString& path, const QString& why) {
    return {ErrorKind::io, "file-not-written",
            "The file " + path.toStdString() + " could not be written: " + why.toStdString() + ".",
            "What stood there before is unchanged.", "Check that the folder exists, may be written to and has room."};
}

Error thrown(const char* what) {
    return {ErrorKind::unsupported, "photo-not-workable", std::string("This photo cannot be worked on (") + what + ").",
            "Nothing was changed.", "Take the photo again, or report the words in brackets."};
}

Error out_of_memory() {
    return {ErrorKind::too_large, "out-of-memory", "There is not enough memory for this photo.", "Nothing was changed.",
            "Close other programs, or take a smaller photo."};
}

Progress part_of(const Progress& whole, double from, double to) {
    if (!whole) return {};
    return [whole, from, to](double fraction, std::string_view step) {
        return whole(from + (to - from) * fraction, step);
    };
}

Status write_file(const QString& path, const QByteArray& bytes) {
    if (Status free = not_a_book(path); !free) return free;
    const QDir folder = QFileInfo(path).absoluteDir();
    if (!folder.exists() && !QDir().mkpath(folder.path()))
        return disk(path, QStringLiteral("its folder could not be made"));
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return disk(path, file.errorString());
    return Done{};
}

}  // namespace kempt::work
