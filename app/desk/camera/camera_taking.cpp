// What the camera took, into the book and under the gate.
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QPointer>
#include <QVBoxLayout>
#include <utility>

#include "desk/camera/camera_page.h"
#include "desk/camera/guide_view.h"
#include "desk/inbox/camera_files.h"
#include "desk/inbox/inbox.h"
#include "desk/photo/live_reading.h"
#include "desk/translations/said.h"
#include "desk/visit/view_tray.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"
#include "work/open_book.h"
#include "work/sort_take.h"

namespace kempt::desk {

void CameraPage::say(const QString& words, const char* tone) {
    auto* box = panel(tone);
    column_in(box, 2, 1)->addWidget(text(words));
    box->setAccessibleName(words);
    told_->addWidget(box);
}

QString CameraPage::told() const {
    QStringList words;
    for (int i = 0; i < told_->count(); ++i)
        if (told_->itemAt(i)->widget() != nullptr) words.append(told_->itemAt(i)->widget()->accessibleName());
    return words.join(QLatin1Char('\n'));
}

void CameraPage::ask_for_photo() {
    if (!source_ || awaiting_ || taking_ > 0 || data_.visit.id != place_.visit) return;
    asked_ = {place_, view_, data_.visit.date};
    awaiting_ = true;
    picked_since_ = false;
    await_limit_.start();
    source_->take();
}

void CameraPage::answered() {
    awaiting_ = false;
    await_limit_.stop();
    if (leaving_.isEmpty()) return;
    QTimer::singleShot(0, this, [this] {  // not from within the camera, which goes away with the page
        if (source_) source_->stop();
        source_.reset();
        for (const auto& then : std::exchange(leaving_, {})) then();
    });
}

// The file lies beside the book until the book has it: neither a closed window nor a failed import loses it.
void CameraPage::took(const QByteArray& photo) {
    empty_layout(told_);
    answered();
    Inbox& inbox = Inbox::of(session_);
    const QDateTime now = QDateTime::currentDateTime();
    const QDir folder(inbox.camera_folder());
    folder.mkpath(QStringLiteral("."));
    const QString path = folder.filePath(camera_file_name(now, asked_.view));
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(photo) != photo.size() || !file.flush()) {
        file.remove();
        return say(tr("The photo could not be written: %1").arg(file.errorString()), "worse");
    }
    file.close();
    work::TakeOptions options;
    options.client = asked_.place.client;
    options.visit = asked_.place.visit;
    options.day = asked_.day;
    const QString sha = QString::fromLatin1(QCryptographicHash::hash(photo, QCryptographicHash::Sha256).toHex());
    options.photos = {{path, asked_.view, sha, now}};
    ++taking_;
    // The tray hears the answer: it is there when the page is not.
    session_.bench().start(
        tr("Taking the photo in"), &inbox,
        [options, path](Book& book, const Progress& progress) {
            auto report = work::take_sorted(book, options, progress);
            if (report.ok() && report->import.failed == 0) drop_camera_file(path);  // the book has it now
            return report;
        },
        [page = QPointer<CameraPage>(this), &session = session_, &inbox, asked = asked_,
         path](const Result<work::TakeReport>& report) {
            work::ImportedFile came;
            if (report.ok()) came = report->import.files.front();
            if (!report.ok()) came.error = report.error();
            if (came.what == work::ImportedFile::What::failed) {
                inbox.bring({path}, {Where::visit, asked.place.client, asked.place.visit});
                emit session.trouble(
                    tr("The photo could not be taken into the visit. It waits among the new photos. %1")
                        .arg(said(came.error.sentence())));
            } else {
                session.changed(report->client, report->visit);
            }
            if (page) page->kept(asked, came);
        });
}

void CameraPage::kept(const Asked& asked, const work::ImportedFile& photo) {
    --taking_;
    if (asked.place.visit != place_.visit) return;
    if (photo.what == work::ImportedFile::What::failed)
        return say(
            tr("This photo is not in the record: it waits among the new photos. %1").arg(said(photo.error.sentence())),
            "worse");
    if (photo.what == work::ImportedFile::What::duplicate)
        return say(tr("The camera gave the same picture once more; it is in the book already."), "caution");
    say(tr("%1, shot %2 is kept. Put the camera down and lay the card anew before the next.")
            .arg(beginning(said(word_of(asked.view))))
            .arg(photo.shot),
        "better");
    look_at(photo.photo, photo.shot);
    load(false);
}

// The gate, while the client still sits in the chair.
void CameraPage::look_at(Id photo, int shot) {
    ++looking_;
    session_.bench().start(
        tr("Looking at a photo"), this,
        [photo, open = session_.open_photo()](Book& book, const Progress& progress) -> Result<Measured> {
            const auto bytes = work::photo_bytes(book, photo);
            if (!bytes.ok()) return bytes.error();
            const auto scale = work::printer_scale_of(book);
            if (!scale.ok()) return scale.error();
            const auto opened = open(bytes.value(), scale.value(), progress);
            if (!opened.ok()) return opened.error();
            return opened.value().measure(Marks{}, false, progress);
        },
        [this, shot, visit = place_.visit](Result<Measured> looked) {
            --looking_;
            if (visit != place_.visit) return;  // another client's page by now
            if (!looked.ok()) {
                if (looked.error().kind != ErrorKind::cancelled)
                    say(tr("Shot %1 is kept, but it could not be looked at: %2")
                            .arg(shot)
                            .arg(said(looked.error().sentence())),
                        "caution");
                return;
            }
            for (const ShownFinding& finding : looked->findings)
                if (finding.level != ShownFinding::Level::note)
                    told_->addWidget(finding_panel(finding, tr("Shot %1").arg(shot)));
        });
}

}  // namespace kempt::desk
