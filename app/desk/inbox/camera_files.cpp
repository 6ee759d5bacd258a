#include "desk/inbox/camera_files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>

#include "domain/words.h"

namespace kempt::desk {

QString camera_file_name(const QDateTime& taken, View view) {
    return taken.toString(QStringLiteral("'camera-'yyyyMMdd-HHmmss-zzz-")) +
           word_of(view).replace(QLatin1Char(' '), QLatin1Char('-')) + QStringLiteral(".jpg");
}

std::optional<View> view_of_camera_file(const QString& path) {
    static const QRegularExpression form(QStringLiteral(R"(^camera-\d{8}-\d{6}-\d{3}-([a-z-]+)\.jpg$)"));
    const auto match = form.match(QFileInfo(path).fileName());
    if (!match.hasMatch()) return {};
    return view_from_word(match.captured(1).replace(QLatin1Char('-'), QLatin1Char(' ')));
}

void drop_camera_file(const QString& path) {
    QFile::remove(path);
    const QDir folder = QFileInfo(path).absoluteDir();
    folder.rmdir(folder.absolutePath());
}

}  // namespace kempt::desk
