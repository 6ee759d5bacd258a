#include "desk/window/walk_photos.h"

#include <QFile>
#include <QImage>
#include <QScrollArea>
#include <QScrollBar>
#include <QTemporaryDir>
#include <memory>

#include "desk/inbox/inbox.h"
#include "desk/window/book_view.h"
#include "desk/window/main_window.h"
#include "desk/window/page.h"
#include "work/keep_records.h"

namespace kempt::desk {

Result<PhotoSights> photo_sights(Book& book, const Place& visit, const Place& begun) {
    PhotoSights sights;
    sights.client = {Where::client, visit.client};
    sights.visit = visit;
    sights.begun = begun.visit > 0 ? begun : visit;
    if (visit.visit <= 0) return sights;  // a book without visits
    const auto there = work::visit_of(book, visit.visit);
    if (!there.ok()) return there.error();
    sights.day = there->date;
    const auto photos = work::list_photos(book, visit.visit);
    if (!photos.ok()) return photos.error();
    QVector<View> views;
    for (const work::PhotoRow& row : photos.value()) {
        if (views.contains(row.photo.view)) continue;
        views.append(row.photo.view);
        const auto bytes = work::photo_bytes(book, row.photo.id);
        if (!bytes.ok()) return bytes.error();
        sights.pictures.append(bytes.value());
    }
    return sights;
}

namespace {

// New to the book: the same pictures, compressed anew. The first comes as it is, and is recognised.
QStringList files_of(const PhotoSights& sights, const QTemporaryDir& folder) {
    QStringList paths;
    for (const QByteArray& bytes : sights.pictures) {
        const QString path = folder.filePath(QStringLiteral("IMG_%1.jpg").arg(4711 + paths.size()));
        if (!QImage::fromData(bytes).save(path, "JPG", 90)) continue;
        QFile file(path);
        if (file.open(QIODevice::ReadWrite))
            file.setFileTime(QDateTime(sights.day, QTime(10, 12 + 2 * static_cast<int>(paths.size()))),
                             QFileDevice::FileModificationTime);
        paths.append(path);
    }
    QFile known(folder.filePath(QStringLiteral("IMG_4700.jpg")));
    if (!sights.pictures.isEmpty() && known.open(QIODevice::WriteOnly)) {
        known.write(sights.pictures.first());
        paths.append(known.fileName());
    }
    return paths;
}

}  // namespace

QVector<PlanStep> photo_steps(MainWindow& window, const PhotoSights& sights) {
    auto folder = std::make_shared<QTemporaryDir>();
    const auto lower = [&window] {
        if (window.book()->page() == nullptr) return;
        for (QScrollArea* area : window.book()->page()->findChildren<QScrollArea*>())
            area->verticalScrollBar()->setValue(area->verticalScrollBar()->maximum());
    };
    return {{QStringLiteral("visit-steps"), [&window, place = sights.begun] { window.book()->go(place); }},
            {QStringLiteral("inbox"),
             [&window, sights, folder] {
                 Inbox::of(*window.session()).bring(files_of(sights, *folder), sights.client);
                 window.book()->go({Where::inbox});
             }},
            {QStringLiteral("inbox-lower"), lower},
            {QStringLiteral("camera-none"), [&window, place = sights.visit] {
                 window.book()->go({Where::camera, place.client, place.visit});
             }}};
}

}  // namespace kempt::desk
