#include "work/errors.h"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

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

Progress part_of(const Progress& whole, double from, double to) {
    if (!whole) return {};
    return [whole, from, to](double fraction, std::string_view step) {
        return whole(from + (to - from) * fraction, step);
    };
}

Status write_file(const QString& path, const QByteArray& bytes) {
    const QDir folder = QFileInfo(path).absoluteDir();
    if (!folder.exists() && !QDir().mkpath(folder.path()))
        return disk(path, QStringLiteral("its folder could not be made"));
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return disk(path, file.errorString());
    return Done{};
}

}  // namespace kempt::work
