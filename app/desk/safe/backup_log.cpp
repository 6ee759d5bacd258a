#include "desk/safe/backup_log.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QFileInfo>
#include <QLocale>
#include <QSettings>
#include <algorithm>

#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

constexpr auto days_key = "safe/reminder_days";

struct Words {
    Q_DECLARE_TR_FUNCTIONS(kempt::desk::BackupLog)
};

// A path may hold what a settings key may not.
QString key_of(const QString& book, const char* member) {
    const QString path = QFileInfo(book).absoluteFilePath();
    const QByteArray hash = QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha256).toHex().left(16);
    return QStringLiteral("safe/%1/%2").arg(QString::fromLatin1(hash), QLatin1String(member));
}

QString ago(qint64 days) {
    return days <= 0   ? Words::tr("today")
           : days == 1 ? Words::tr("yesterday")
                       : Words::tr("%n days ago", nullptr, static_cast<int>(std::min<qint64>(days, 100000)));
}

}  // namespace

std::optional<MadeBackup> last_backup(const QString& book) {
    const QSettings settings;
    MadeBackup made{settings.value(key_of(book, "when")).toDateTime(), settings.value(key_of(book, "file")).toString()};
    if (!made.when.isValid()) return std::nullopt;
    return made;
}

void remember_backup(const QString& book, const MadeBackup& made) {
    QSettings settings;
    settings.setValue(key_of(book, "when"), made.when);
    settings.setValue(key_of(book, "file"), made.file);
}

int reminder_days() {
    return std::clamp(QSettings().value(days_key, usual_reminder_days).toInt(), 0, most_reminder_days);
}

void set_reminder_days(int days) {
    QSettings().setValue(days_key, days);
}

QString last_backup_words(const QString& book) {
    const auto made = last_backup(book);
    if (!made) return Words::tr("no backup was made on this computer yet");
    const QDateTime now = QDateTime::currentDateTime();
    return Words::tr("%1, %2").arg(date_words(made->when.date()), ago(made->when.date().daysTo(now.date())));
}

QString reminder_for(const QString& book, const QDateTime& now) {
    const int days = reminder_days();
    if (days == 0) return {};
    QSettings settings;
    const auto made = last_backup(book);
    QDateTime since = made ? made->when : settings.value(key_of(book, "first_seen")).toDateTime();
    if (!since.isValid()) {
        settings.setValue(key_of(book, "first_seen"), now);
        return {};
    }
    const qint64 passed = since.daysTo(now);
    if (passed < days) return {};
    return made ? Words::tr("The last backup of this book was made %1.").arg(ago(passed))
                : Words::tr("This book has no backup that was made on this computer.");
}

QString backup_name(const QString& book, const QDateTime& now) {
    return Words::tr("%1, backup of %2.kempt")
        .arg(QFileInfo(book).completeBaseName(), now.toString(QStringLiteral("yyyy-MM-dd HHmm")));
}

}  // namespace kempt::desk
