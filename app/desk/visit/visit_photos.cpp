// Bringing photos into a visit, looking at them through the gate, erasing.
#include "desk/translations/said.h"
#include "desk/visit/visit_page.h"
#include "desk/widgets/confirm.h"
#include "desk/widgets/parts.h"
#include "desk/widgets/photo_dialog.h"
#include "domain/words.h"
#include "work/import_photos.h"
#include "work/open_book.h"

namespace kempt::desk {

void VisitPage::choose(View view, bool folder) {
    const QString title = tr("Photos of the %1").arg(said(word_of(view)));
    const auto chosen = [this, view](const QStringList& paths) { take_files(view, paths); };
    if (folder)
        ask_for_photo_folder(this, title, chosen);
    else
        ask_for_photos(this, title, chosen);
}

void VisitPage::take_files(View view, const QStringList& paths) {
    if (paths.isEmpty() || visit_id_ == 0) return;
    work::ImportOptions options;
    options.visit = visit_id_;
    options.view = view;
    options.paths = paths;
    settled_ = false;
    const Id client = client_, visit = visit_id_;
    session_.ask(
        session_.bench(), tr("Taking photos in"), this,
        [options](Book& book, const Progress& progress) { return work::import_photos(book, options, progress); },
        [this, client, visit, view](const work::ImportReport& report) {
            QStringList words;
            if (report.imported > 0)
                words.append(tr("%1 taken into the %2.")
                                 .arg(counted(report.imported, tr("photo"), tr("photos")), said(word_of(view))));
            if (report.duplicates > 0)
                words.append(tr("%1 in the book already, left as it was.")
                                 .arg(counted(report.duplicates, tr("photo"), tr("photos"))));
            QStringList errors;
            for (const work::ImportedFile& file : report.files)
                if (file.what == work::ImportedFile::What::failed) errors.append(said(file.error.sentence()));
            if (errors.isEmpty())
                emit session_.news(words.join(QLatin1Char(' ')));
            else
                emit session_.trouble((words + errors).join(QLatin1Char(' ')));
            session_.changed(client, visit);
        },
        [this] { settled_ = true; });
}

// Photos that were never measured have no finding in the book: the gate looks at them now, so that a shot that is not
// good enough is known while the client still sits in the chair.
void VisitPage::look_at_new(const QVector<work::PhotoRow>& photos) {
    for (const work::PhotoRow& row : photos) {
        if (!row.photo.quality_level.isEmpty() || asked_looks_.contains(row.photo.id)) continue;
        const Id photo = row.photo.id, visit = visit_id_;
        asked_looks_.insert(photo);
        ++looking_;
        session_.bench().start(
            tr("Looking at a photo"), this,
            [photo, open = session_.open_photo()](Book& book, const Progress& progress) -> Result<Measured> {
                auto bytes = work::photo_bytes(book, photo);
                if (!bytes.ok()) return bytes.error();
                auto scale = work::printer_scale_of(book);
                if (!scale.ok()) return scale.error();
                auto opened = open(bytes.value(), scale.value(), progress);
                if (!opened.ok()) return opened.error();
                return opened.value().measure(Marks{}, false, progress);
            },
            [this, photo, visit](Result<Measured> looked) {
                --looking_;
                if (!looked.ok() || visit != visit_id_) return;
                looks_.insert(photo, {looked.value().quality, looked.value().findings});
                for (ViewTray* one : trays_) one->show_photos(photos_, looks_);
            });
    }
}

void VisitPage::ask_to_erase_photo(Id photo) {
    ask_before_erasing(
        this, tr("Erase this photo with its marks and readings?"), tr("This cannot be taken back."), [this, photo] {
            session_.keep(tr("Erasing a photo"), this, client_, visit_id_,
                          [photo](Book& book, const Progress&) { return work::erase_photo(book, photo); });
        });
}

void VisitPage::ask_to_erase_visit() {
    ask_before_erasing(this, tr("Erase this visit with its photos, marks and readings?"),
                       tr("This cannot be taken back."), [this] {
                           session_.ask(
                               session_.records(), tr("Erasing a visit"), this,
                               [id = visit_id_](Book& book, const Progress&) { return work::erase_visit(book, id); },
                               [this](Done) {
                                   session_.changed(client_, 0);
                                   emit go({Where::client, client_});
                               });
                       });
}

}  // namespace kempt::desk
