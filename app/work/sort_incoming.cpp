#include "work/sort_incoming.h"

#include <QCryptographicHash>
#include <QFileInfo>
#include <algorithm>

#include "book/client_store.h"
#include "book/photo_store.h"
#include "book/setting_store.h"
#include "book/visit_store.h"
#include "work/errors.h"

namespace kempt::work {

namespace {

// One entry of the book's settings for each: found by its key, and it goes with the book to another computer.
QString left_key(const QString& sha256) {
    return QStringLiteral("left-photo-") + sha256.toLower();
}

Result<std::optional<InRecord>> find_in_record(Book& book, const QString& sha256) {
    const auto photo = store::find_photo_by_sha256(book, sha256);
    if (!photo) return photo.error();
    if (!photo.value()) return std::optional<InRecord>();
    const auto visit = store::get_visit(book, photo.value()->visit);
    if (!visit) return visit.error();
    const auto client = store::get_client(book, visit->client);
    if (!client) return client.error();
    return std::optional(InRecord{photo.value()->id, visit->id, client->id, client->name, visit->date,
                                  photo.value()->view, photo.value()->shot});
}

}  // namespace

QDate IncomingPhoto::day(const QDate& today) const {
    const QDate own = from == TakenFrom::file ? taken.toLocalTime().date() : taken.date();
    return own.isValid() ? std::min(own, today) : today;
}

Result<IncomingPhoto> look_at_incoming(Book& book, const QString& path, const intake::Limits& limits) {
    return guarded([&]() -> Result<IncomingPhoto> {
        const auto bytes = intake::read_file(path, limits);
        if (!bytes) return bytes.error();
        IncomingPhoto photo;
        photo.path = path;
        photo.sha256 = QString::fromLatin1(QCryptographicHash::hash(bytes.value(), QCryptographicHash::Sha256).toHex());
        const auto left = store::get_setting(book, left_key(photo.sha256));
        if (!left) return left.error();
        photo.left_before = left->has_value();
        const auto record = find_in_record(book, photo.sha256);
        if (!record) return record.error();
        photo.in_record = record.value();
        const auto decoded = intake::decode(bytes.value(), limits, intake::CheckSum::skipped);
        if (!decoded) return decoded.error();
        photo.format = decoded->header.format;
        photo.size = decoded->header.size;
        photo.thumbnail = intake::thumbnail_of(decoded->photo);
        if (decoded->header.taken) {
            photo.taken = *decoded->header.taken;
            photo.from = photo.taken.timeSpec() == Qt::LocalTime ? TakenFrom::camera : TakenFrom::camera_with_zone;
        } else {
            photo.taken = QFileInfo(path).lastModified();
        }
        return photo;
    });
}

Status leave_alone(Book& book, const QString& sha256, const QDate& today) {
    if (sha256.size() != 64) return invalid("photo-hash", "This is not the SHA-256 of a photo.");
    return store::put_setting(book, left_key(sha256), today.toString(Qt::ISODate));
}

Status bring_back(Book& book, const QString& sha256) {
    return store::erase_setting(book, left_key(sha256));
}

}  // namespace kempt::work
