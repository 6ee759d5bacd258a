#include "work/face_keep.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <cmath>

#include "book/client_store.h"
#include "book/photo_store.h"
#include "book/setting_store.h"
#include "work/errors.h"
#include "work/report_language.h"

namespace kempt::work {

namespace {

const QString photo_key = QStringLiteral("eye-bands-of-photo-"), client_key = QStringLiteral("face-wish-of-client-");

QString key_of_photo(Id photo) {
    return photo_key + QString::number(photo);
}

QString key_of_client(Id client) {
    return client_key + QString::number(client);
}

bool sound(const EyeBand& band) {
    const auto finite = [](double v) { return std::isfinite(v) && std::abs(v) < 1e6; };
    return finite(band.middle.x()) && finite(band.middle.y()) && finite(band.turn_deg) && finite(band.length) &&
           finite(band.height) && band.length > 0 && band.height > 0;
}

// Only "not found" means gone: a busy book or a bad disk must not cost her wish.
template <class T>
Result<bool> is_there(const Result<T>& read) {
    if (!read && read.error().kind != ErrorKind::not_found) return read.error();
    return read.ok();
}

QString nobody_searched(const Error& why) {
    return QStringLiteral("This photo was not searched for faces; no eyes are hidden in it: ") +
           QString::fromStdString(Error{why.kind, why.code, why.what, {}, why.remedy}.sentence());
}

}  // namespace

Result<FaceWish> face_wish_of(Book& book, Id client) {
    const auto kept = store::get_setting(book, key_of_client(client));
    if (!kept) return kept.error();
    const QString word = kept->value_or(QString());
    return word == u"hidden" ? FaceWish::hidden : word == u"shown" ? FaceWish::shown : FaceWish::not_asked;
}

Status keep_face_wish(Book& book, Id client, FaceWish wish) {
    if (const auto known = store::get_client(book, client); !known) return known.error();
    if (wish == FaceWish::not_asked) return store::erase_setting(book, key_of_client(client));
    return store::put_setting(book, key_of_client(client),
                              wish == FaceWish::hidden ? QStringLiteral("hidden") : QStringLiteral("shown"));
}

Result<std::optional<QVector<EyeBand>>> kept_bands(Book& book, Id photo) {
    const auto kept = store::get_setting(book, key_of_photo(photo));
    if (!kept) return kept.error();
    if (!kept.value()) return std::optional<QVector<EyeBand>>();
    const QJsonDocument json = QJsonDocument::fromJson(kept.value()->toUtf8());
    if (!json.isArray()) return std::optional<QVector<EyeBand>>();  // unreadable: as if nobody had looked
    QVector<EyeBand> bands;
    for (const QJsonValue& one : json.array()) {
        const EyeBand band{QPointF(one["x"].toDouble(), one["y"].toDouble()), one["length"].toDouble(),
                           one["height"].toDouble(), one["turn_deg"].toDouble()};
        if (!sound(band)) return std::optional<QVector<EyeBand>>();
        bands.append(band);
    }
    return std::optional(bands);
}

Status keep_bands(Book& book, Id photo, const QVector<EyeBand>& bands) {
    if (const auto known = store::get_photo(book, photo); !known) return known.error();
    QJsonArray json;
    for (const EyeBand& band : bands) {
        if (!sound(band)) return invalid("eye-band", "A band over the eyes has no size.", "Draw it anew.");
        json.append(QJsonObject{{"x", band.middle.x()},
                                {"y", band.middle.y()},
                                {"length", band.length},
                                {"height", band.height},
                                {"turn_deg", band.turn_deg}});
    }
    return store::put_setting(book, key_of_photo(photo),
                              QString::fromUtf8(QJsonDocument(json).toJson(QJsonDocument::Compact)));
}

Status forget_bands(Book& book, Id photo) {
    return store::erase_setting(book, key_of_photo(photo));
}

Status forget_lost_faces(Book& book) {
    const auto all = store::list_settings(book);
    if (!all) return all.error();
    for (auto it = all->keyBegin(); it != all->keyEnd(); ++it) {
        Result<bool> known = true;
        if (it->startsWith(photo_key)) known = is_there(store::get_photo(book, it->mid(photo_key.size()).toLongLong()));
        for (const QString& key : {client_key, report_language_key()})
            if (it->startsWith(key)) known = is_there(store::get_client(book, it->mid(key.size()).toLongLong()));
        if (!known) return known.error();
        if (known.value()) continue;
        if (const Status erased = store::erase_setting(book, *it); !erased) return erased;
    }
    return Done{};
}

QString note_of(const FaceCover& face) {
    return face.not_searched || !face.bands.isEmpty() ? face.told : QString();
}

Result<FaceCover> face_cover(Book& book, Id client, Id photo, const OpenPhoto& open, const Progress& progress,
                             const EyeFinder& finder) {
    const auto wish = face_wish_of(book, client);
    if (!wish) return wish.error();
    const auto kept = kept_bands(book, photo);
    if (!kept) return kept.error();
    FaceCover cover;
    cover.photo = photo;
    if (kept.value()) {
        cover.bands = **kept;
        cover.looked = true;
        cover.told = cover.bands.isEmpty() ? QStringLiteral("Looked at: no eyes to hide.")
                                           : QStringLiteral("Eyes hidden as you set it.");
        return cover;
    }
    if (*wish == FaceWish::shown) {
        cover.told = QStringLiteral("She agrees that her face is seen.");
        return cover;
    }
    const bool scaled = open.card.card_found || open.card.sheet_found;
    const auto found = finder(open.decoded.photo.pixels, scaled ? open.card.px_per_mm : 0, progress);
    if (!found && found.error().kind == ErrorKind::cancelled) return found.error();
    if (found) cover.bands = *found;
    cover.must_look = *wish == FaceWish::hidden;
    cover.not_searched = !found.ok();
    cover.told = !cover.bands.isEmpty() ? QStringLiteral("A face was found: its eyes are hidden. Look whether it fits.")
                 : found ? QStringLiteral("No face was found. That is no proof that there is none: look yourself.")
                         : nobody_searched(found.error());
    return cover;
}

Error look_first() {
    return {ErrorKind::refused, "look-at-face",
            "She does not want her face seen, and nobody has looked at every one of these photos yet.",
            "Nothing left the book.", "Open the eyes in the pictures, set or confirm the bands, and try again."};
}

}  // namespace kempt::work
