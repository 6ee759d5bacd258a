#include "book/photo_store.h"

#include <QCryptographicHash>
#include <algorithm>

#include "book/store_help.h"
#include "domain/words.h"

namespace kempt::store {

namespace {

const QString columns = QStringLiteral(
    "id, visit, view, shot, file_name, format, sha256, width, height, taken, quality_level, quality_findings, "
    "thumbnail");

PhotoRecord photo_of(sql::Row& row) {
    PhotoRecord photo;
    photo.id = row.number();
    photo.visit = row.number();
    photo.view = row.view();
    photo.shot = row.small();
    photo.file_name = row.text();
    photo.format = row.text();
    photo.sha256 = row.text();
    const int width = row.small();
    photo.size = QSize(width, row.small());
    if (const std::optional<QString> taken = row.text_or_null()) {
        photo.taken = QDateTime::fromString(*taken, Qt::ISODateWithMs);
        if (!photo.taken->isValid()) row.mark_broken();
    }
    photo.quality_level = row.text();
    photo.quality_findings = row.text();
    photo.thumbnail = row.bytes();
    return photo;
}

// Without zone when the camera named none, else "Z" or the offset: comes back as it went in.
std::optional<QString> text_of(const std::optional<QDateTime>& moment) {
    if (!moment || !moment->isValid()) return {};
    if (moment->timeSpec() != Qt::TimeZone) return moment->toString(Qt::ISODateWithMs);
    return moment->toOffsetFromUtc(moment->offsetFromUtc()).toString(Qt::ISODateWithMs);
}

Status sensible(const PhotoRecord& p) {
    static const QStringList formats{"jpeg", "png", "webp", "tiff", "heic"};
    static const QStringList levels{"", "good", "usable", "refused"};
    if (p.shot < 1) return invalid("shot-number", "Shots of a view are counted from 1.", "Give a shot of 1 or more.");
    if (p.size.width() < 1 || p.size.height() < 1)
        return invalid("photo-size", "The photo's size in pixels is missing.", "Read the photo again.");
    if (!formats.contains(p.format))
        return invalid("photo-format", "The book does not keep photos of the kind " + in_quotes(p.format) + ".",
                       "Use JPEG, PNG, WebP, TIFF or HEIC.");
    if (!levels.contains(p.quality_level))
        return invalid("quality-level", in_quotes(p.quality_level) + " is no level of the quality gate.",
                       "Use good, usable or refused.");
    if (p.taken) return need_date(p.taken->date(), "photo");
    return Done{};
}

Error shot_taken(const PhotoRecord& p) {
    return invalid(
        "shot-taken",
        "Shot " + std::to_string(p.shot) + " of " + word_of(p.view).toStdString() + " is already there for this visit.",
        "Use the next number.");
}

}  // namespace

Result<Id> add_photo(Book& book, const PhotoRecord& p, const QByteArray& bytes) {
    if (Status good = sensible(p); !good) return good.error();
    if (bytes.isEmpty()) return invalid("photo-empty", "The photo has no content.", "Copy it from the camera again.");
    const QString sha256 = QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
    if (!p.sha256.isEmpty() && p.sha256 != sha256)
        return invalid("photo-hash", "The photo's bytes are not those that were read.", "Read the photo again.");

    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    auto same = find_photo_by_sha256(book, sha256);
    if (!same) return same.error();
    if (same->has_value())
        return invalid("photo-already-kept",
                       "This photo is already in the book (visit " + std::to_string((*same)->visit) + ", " +
                           word_of((*same)->view).toStdString() + ", shot " + std::to_string((*same)->shot) + ").",
                       "Choose another one; a copy is not a repeat shot.");
    auto id =
        sql::insert(book.connection(),
                    "INSERT INTO photo (visit, view, shot, file_name, format, sha256, width, height, taken, "
                    "quality_level, quality_findings, thumbnail) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                    sql::values(p.visit, p.view, p.shot, p.file_name, p.format, sha256, p.size.width(), p.size.height(),
                                text_of(p.taken), p.quality_level, p.quality_findings, p.thumbnail));
    if (!id) return told(told(id.error(), "missing-link", missing("visit", p.visit)), "already-there", shot_taken(p));
    auto kept =
        sql::change(book.connection(), "INSERT INTO photo_bytes (photo, bytes) VALUES (?, ?)", sql::values(*id, bytes));
    if (!kept) return kept.error();
    if (Status done = transaction->commit(); !done) return done.error();
    return id;
}

Status update_photo(Book& book, const PhotoRecord& p) {
    if (Status good = sensible(p); !good) return good;
    Status done = change_one(book, "photo", p.id,
                             "UPDATE photo SET visit = ?, view = ?, shot = ?, file_name = ?, taken = ?, "
                             "quality_level = ?, quality_findings = ?, thumbnail = ? WHERE id = ?",
                             sql::values(p.visit, p.view, p.shot, p.file_name, text_of(p.taken), p.quality_level,
                                         p.quality_findings, p.thumbnail, p.id));
    if (!done)
        return told(told(done.error(), "missing-link", missing("visit", p.visit)), "already-there", shot_taken(p));
    return done;
}

Status set_photo_quality(Book& book, Id photo, const QString& level, const QString& findings) {
    Status done =
        change_one(book, "photo", photo, "UPDATE photo SET quality_level = ?, quality_findings = ? WHERE id = ?",
                   sql::values(level, findings, photo));
    if (!done)
        return told(done.error(), "out-of-range",
                    invalid("quality-level", in_quotes(level) + " is no level of the quality gate.",
                            "Use good, usable or refused."));
    return done;
}

Result<PhotoRecord> get_photo(Book& book, Id id) {
    return get_one<PhotoRecord>(book, "photo", id, "SELECT " + columns + " FROM photo WHERE id = ?", photo_of);
}

Result<QByteArray> photo_bytes(Book& book, Id id) {
    return get_one<QByteArray>(
        book, "photo", id, "SELECT bytes FROM photo_bytes WHERE photo = ?", +[](sql::Row& row) { return row.bytes(); });
}

Result<std::optional<PhotoRecord>> find_photo_by_sha256(Book& book, const QString& sha256) {
    return sql::first<PhotoRecord>(book.connection(), "SELECT " + columns + " FROM photo WHERE sha256 = ?",
                                   sql::values(sha256.toLower()), photo_of);
}

Result<QVector<PhotoRecord>> photos_of_visit(Book& book, Id visit, std::optional<View> view) {
    const QString start = "SELECT " + columns + " FROM photo WHERE visit = ?";
    auto photos =
        view ? sql::all<PhotoRecord>(book.connection(), start + " AND view = ? ORDER BY shot",
                                     sql::values(visit, *view), photo_of)
             : sql::all<PhotoRecord>(book.connection(), start + " ORDER BY shot", sql::values(visit), photo_of);
    if (photos)
        std::stable_sort(photos->begin(), photos->end(),
                         [](const PhotoRecord& a, const PhotoRecord& b) { return a.view < b.view; });
    return photos;
}

Result<int> next_shot(Book& book, Id visit, View view) {
    auto last = sql::first<int>(
        book.connection(), "SELECT MAX(shot) FROM photo WHERE visit = ? AND view = ?", sql::values(visit, view),
        +[](sql::Row& row) { return row.small(); });
    if (!last) return last.error();
    return last->value_or(0) + 1;
}

Status erase_photo(Book& book, Id id) {
    return erase_one(book, "photo", "photo", id);
}

}  // namespace kempt::store
