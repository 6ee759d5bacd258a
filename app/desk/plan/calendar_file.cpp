#include "desk/plan/calendar_file.h"

#include <QFileDialog>
#include <QSaveFile>

#include "desk/translations/said.h"
#include "domain/clock.h"
#include "speech/speech.h"

namespace kempt::desk {

void choose_calendar_file(QWidget* parent, const QString& name, std::function<void(const QString&)> chosen) {
    auto* dialog = new QFileDialog(parent, QObject::tr("Save for a calendar"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(QObject::tr("Calendar (*.ics)"));
    dialog->setDefaultSuffix(QStringLiteral("ics"));
    dialog->selectFile(name);
    QObject::connect(dialog, &QFileDialog::fileSelected, parent, std::move(chosen));
    dialog->open();
}

void write_calendar(Session& session, const QString& path, CalendarBytes bytes, bool names) {
    const work::CalendarOptions options{names, Clock().now(), speech_now()};
    session.ask(
        session.records(), QObject::tr("Writing the calendar file"), &session,
        [path, options, bytes = std::move(bytes)](Book& book, const Progress&) -> Status {
            const auto made = bytes(book, options);
            if (!made) return made.error();
            QSaveFile file(path);
            if (!file.open(QIODevice::WriteOnly) || file.write(*made) != made->size() || !file.commit())
                return Error{
                    ErrorKind::io, "calendar-unwritten",
                    QObject::tr("The calendar file could not be written: %1.").arg(file.errorString()).toStdString(),
                    QObject::tr("The dates are still in the book.").toStdString(),
                    QObject::tr("Choose another folder.").toStdString()};
            return Done{};
        },
        [session = &session, path](Done) {
            emit session->made_file(QObject::tr("The dates are saved as %1.").arg(path), path);
        });
}

}  // namespace kempt::desk
