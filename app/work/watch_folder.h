// A folder that another program writes into (the one her phone syncs to): what lies in it, and which of its files have
// been written to the end. Only looks: nothing in the folder is ever moved, changed or deleted.
#pragma once

#include <QDateTime>
#include <QHash>
#include <QString>
#include <QStringList>
#include <QVector>

#include "core/result.h"

namespace kempt::work {

struct FileSeen {
    QString path;
    qint64 bytes = 0;
    QDateTime changed;  // last modification, as the disk says
};

struct FolderLook {
    QVector<FileSeen> files;  // picture files by their ending, not the folders below; in the order of their names
    int older = 0;            // picture files last changed before `since`: counted, not listed
};
// since: invalid: no limit. Errors: not_found ("no-folder": it is not there, or may not be read).
[[nodiscard]] Result<FolderLook> look_into_folder(const QString& folder, const QDateTime& since = {});

// How many days back the folder is looked through unless she asks for more. A phone's folder may hold years of
// pictures that have nothing to do with hair; photos of a visit arrive within hours, a week leaves room for a phone
// that was off (own choice).
inline constexpr int watched_days = 7;
// Sync programs write in pieces; size and time stand still for this long before a file is opened. A piece that comes
// later changes the size, and the file is looked at again.
inline constexpr qint64 still_ms = 2000;

class SettledFiles {
  public:
    // files: all there are now. now_ms: of a clock that only goes forward. Gives the paths whose size and time have not
    // changed for still_ms, each once; a file that changes afterwards is given once more when it stands still again.
    [[nodiscard]] QStringList settled(const QVector<FileSeen>& files, qint64 now_ms);
    // Some file has not stood still yet.
    [[nodiscard]] bool waiting() const { return waiting_ > 0; }
    void forget();

  private:
    struct State {
        qint64 bytes = 0;
        QDateTime changed;
        qint64 since_ms = 0;
        bool given = false;
    };
    QHash<QString, State> states_;
    int waiting_ = 0;
};

}  // namespace kempt::work
