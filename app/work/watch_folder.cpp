#include "work/watch_folder.h"

#include <QDir>
#include <QFileInfo>

#include "work/errors.h"
#include "work/import_photos.h"

namespace kempt::work {

Result<FolderLook> look_into_folder(const QString& folder, const QDateTime& since) {
    const QFileInfo place(folder);
    if (folder.isEmpty() || !place.isDir() || !place.isReadable())
        return missing("no-folder", "The watched folder " + folder.toStdString() + " cannot be read.",
                       "See whether its disk is there, or choose another folder in the settings.");
    FolderLook look;
    for (const QFileInfo& file : QDir(folder).entryInfoList(picture_endings(), QDir::Files, QDir::Name)) {
        if (since.isValid() && file.lastModified() < since)
            ++look.older;
        else
            look.files.append({file.absoluteFilePath(), file.size(), file.lastModified()});
    }
    return look;
}

QStringList SettledFiles::settled(const QVector<FileSeen>& files, qint64 now_ms) {
    QStringList out;
    QHash<QString, State> now;
    waiting_ = 0;
    for (const FileSeen& file : files) {
        State state = states_.value(file.path, {-1, {}, now_ms, false});
        if (state.bytes != file.bytes || state.changed != file.changed)
            state = {file.bytes, file.changed, now_ms, false};
        // An empty file has only been begun.
        if (!state.given && state.bytes > 0 && now_ms - state.since_ms >= still_ms) {
            state.given = true;
            out.append(file.path);
        }
        if (!state.given) ++waiting_;
        now.insert(file.path, state);
    }
    states_ = now;  // a file that is gone is forgotten
    return out;
}

void SettledFiles::forget() {
    states_.clear();
    waiting_ = 0;
}

}  // namespace kempt::work
