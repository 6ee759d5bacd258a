#include "desk/safe/keeping.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <algorithm>
#include <atomic>
#include <chrono>
#include <thread>

#include "work/free_file.h"
#include "work/keep_safe.h"
#include "work/open_book.h"

namespace kempt::desk {
namespace {

constexpr auto look_every = std::chrono::milliseconds(100);  // at the growing file; finer is not seen

Error stopped() {
    return {ErrorKind::cancelled, "cancelled", "The work was stopped.", "Nothing was changed.", ""};
}

// The copy is one statement of the database, which tells nothing of how far it is: its file is looked at meanwhile. A
// wish to stop is heard at once and obeyed when the copy is whole.
class Watch {
  public:
    Watch(const QString& folder, const QString& name, qint64 whole, const Progress& progress)
        : thread_([this, folder, name, whole, progress] {
              while (!done_) {
                  std::this_thread::sleep_for(look_every);
                  qint64 grown = 0;
                  for (const QFileInfo& file : QDir(folder).entryInfoList({name + QStringLiteral(".part*")}))
                      grown = std::max(grown, file.size());
                  const double share = whole > 0 ? static_cast<double>(grown) / static_cast<double>(whole) : 0;
                  if (tell(progress, std::min(share, 0.95), "copying the book") == Go::stop) stop_ = true;
              }
          }) {}
    ~Watch() {
        done_ = true;
        thread_.join();
    }
    [[nodiscard]] bool asked_to_stop() const { return stop_; }

  private:
    std::atomic<bool> done_{false}, stop_{false};
    std::thread thread_;
};

}  // namespace

Result<QString> make_backup(Book& book, const CopyOptions& options, const Progress& progress) {
    const QString path = work::free_file(options.folder, options.name);
    if (tell(progress, 0, "copying the book") == Go::stop) return stopped();
    bool stop = false;
    {
        const Watch watch(options.folder, QFileInfo(path).fileName(), QFileInfo(options.book).size(), progress);
        if (const Status made = work::backup_book(book, path); !made) return made.error();
        stop = watch.asked_to_stop();
    }
    if (stop || tell(progress, 1, "the copy is complete") == Go::stop) {
        QFile::remove(path);
        return stopped();
    }
    return path;
}

Result<CheckedBackup> check_backup(const QString& file, const Progress& progress) {
    if (!QFileInfo::exists(file))
        return Error{ErrorKind::not_found, "no-backup", "There is no file " + file.toStdString() + ".", "",
                     "Choose a backup that is there; connect the disk that it lies on."};
    const QTemporaryDir passing;
    if (!passing.isValid())
        return Error{ErrorKind::io, "no-room", "No folder could be made for a copy of the backup.",
                     "The backup was not touched.", "Make room on the system's disk."};
    if (tell(progress, 0.05, "copying the backup") == Go::stop) return stopped();
    const QString copy = passing.filePath(QStringLiteral("backup.kempt"));
    if (QFile original(file); !original.copy(copy))
        return Error{ErrorKind::io, "copy-failed",
                     "The backup could not be copied: " + original.errorString().toStdString() + ".",
                     "The backup was not touched.", "Check the disks and the room on the system's disk."};
    QFile::setPermissions(copy, QFile::ReadOwner | QFile::WriteOwner);
    if (tell(progress, 0.3, "reading the backup through") == Go::stop) return stopped();
    const auto book = work::open_book(copy);
    if (!book) {
        Error error = book.error();  // it names the copy; she knows the backup
        const std::string from = copy.toStdString(), to = file.toStdString();
        for (std::string* words : {&error.what, &error.remedy})
            if (const auto at = words->find(from); at != std::string::npos) words->replace(at, from.size(), to);
        error.kept = "The backup was not touched.";
        return error;
    }
    const auto report = work::check_book(
        **book, [&progress](double share, std::string_view step) { return tell(progress, 0.3 + 0.7 * share, step); });
    if (!report) return report.error();
    CheckedBackup checked;
    checked.sound = report->sound;
    checked.problems = report->problems.size();
    if (!report->problems.isEmpty()) checked.first_problem = report->problems.first();
    checked.clients = report->clients;
    checked.visits = report->visits;
    checked.photos = report->photos;
    checked.readings = report->readings;
    return checked;
}

Result<QString> restore_backup(const QString& file, const QString& to, const Progress& progress) {
    if (QFileInfo::exists(to))
        return Error{ErrorKind::invalid, "name-taken", "There already is a file " + to.toStdString() + ".",
                     "Nothing was replaced.", "Choose another name for the book that is brought back."};
    const auto restored = work::restore_book(file, to, progress);
    if (!restored) return restored.error();
    return restored->book;
}

}  // namespace kempt::desk
