// What this computer remembers of the backups of a book, and when it reminds of the next one. Kept in the person's own
// settings, by the book's path: the book itself is not touched by being copied.
#pragma once

#include <QDateTime>
#include <QString>
#include <optional>

namespace kempt::desk {

struct MadeBackup {
    QDateTime when;
    QString file;
};
[[nodiscard]] std::optional<MadeBackup> last_backup(const QString& book);
void remember_backup(const QString& book, const MadeBackup& made);

// A week: what a week brought is still remembered, and can be entered again (own choice). 0: never.
inline constexpr int usual_reminder_days = 7, most_reminder_days = 90;
[[nodiscard]] int reminder_days();
void set_reminder_days(int days);

// "12 March 2026, 8 days ago", or that there is none.
[[nodiscard]] QString last_backup_words(const QString& book);
// Why to remind now; empty: no reason to. A book that was first opened here less than the time ago is left alone.
[[nodiscard]] QString reminder_for(const QString& book, const QDateTime& now);

// "clients, backup of 2026-03-12 1405.kempt" in the folder: a name that sorts by day.
[[nodiscard]] QString backup_name(const QString& book, const QDateTime& now);

}  // namespace kempt::desk
