// What the camera took, into the book and under the gate.
#include <QCryptographicHash>
#include <QFile>
#include <QLabel>
#include <QVBoxLayout>

#include "desk/camera/camera_page.h"
#include "desk/camera/guide_view.h"
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

void CameraPage::took(const QByteArray& photo) {
    empty_layout(told_);
    const QString path = folder_.filePath(QStringLiteral("camera-%1.jpg").arg(++takes_));
    QFile file(path);
    if (!folder_.isValid() || !file.open(QIODevice::WriteOnly) || file.write(photo) != photo.size())
        return say(tr("The photo could not be written: %1").arg(file.errorString()), "worse");
    file.close();
    work::TakeOptions options;
    options.client = place_.client;
    options.visit = place_.visit;
    options.day = data_.visit.date;
    const QString sha = QString::fromLatin1(QCryptographicHash::hash(photo, QCryptographicHash::Sha256).toHex());
    options.photos = {{path, view_, sha, QDateTime::currentDateTime()}};
    ++taking_;
    session_.bench().start(
        tr("Taking the photo in"), this,
        [options](Book& book, const Progress& progress) { return work::take_sorted(book, options, progress); },
        [this, path, view = view_](Result<work::TakeReport> report) {
            --taking_;
            QFile::remove(path);  // our own copy: the book has it now
            if (!report.ok()) return session_.tell(report.error());
            const work::ImportedFile& kept = report->import.files.front();
            if (kept.what == work::ImportedFile::What::failed) return say(said(kept.error.sentence()), "worse");
            if (kept.what == work::ImportedFile::What::duplicate)
                return say(tr("The camera gave the same picture once more; it is in the book already."), "caution");
            say(tr("%1, shot %2 is kept. Put the camera down and lay the card anew before the next.")
                    .arg(beginning(said(word_of(view))))
                    .arg(kept.shot),
                "better");
            session_.changed(report->client, report->visit);
            look_at(kept.photo, kept.shot);
            load(false);
        });
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
        [this, shot](Result<Measured> looked) {
            --looking_;
            if (!looked.ok()) return;
            for (const ShownFinding& finding : looked->findings)
                if (finding.level != ShownFinding::Level::note)
                    told_->addWidget(finding_panel(finding, tr("Shot %1").arg(shot)));
        });
}

}  // namespace kempt::desk
