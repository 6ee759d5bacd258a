// A name in a folder that nothing has yet.
#pragma once

#include <QDir>
#include <QFileInfo>
#include <QString>

namespace kempt::work {

// The path of `name` in `folder`; where it is taken, "name (2).ending", "name (3).ending" and so on.
[[nodiscard]] inline QString free_file(const QString& folder, const QString& name) {
    const QFileInfo wanted(QDir(folder), name);
    QString path = wanted.filePath();
    for (int i = 2; QFileInfo::exists(path); ++i)
        path = QDir(folder).filePath(
            QStringLiteral("%1 (%2).%3").arg(wanted.completeBaseName()).arg(i).arg(wanted.suffix()));
    return path;
}

}  // namespace kempt::work
