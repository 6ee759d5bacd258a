// The bands that hide eyes in a photo, and what a client wishes of her face in pictures that leave the book. Kept among
// the book's settings, erased with photo and client.
#pragma once

#include <QVector>
#include <functional>
#include <optional>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/face_find.h"
#include "work/measure_photo.h"

namespace kempt::work {

// Beside her consent that photos leave at all, which stays decisive.
enum class FaceWish {
    not_asked,  // found eyes are hidden; a photo in which none was found leaves as it is
    hidden,     // no photo leaves that nobody has looked at
    shown       // only bands that were drawn by hand
};
[[nodiscard]] Result<FaceWish> face_wish_of(Book& book, Id client);
[[nodiscard]] Status keep_face_wish(Book& book, Id client, FaceWish wish);

// What was decided for a photo by somebody who looked at it; nothing while nobody has.
[[nodiscard]] Result<std::optional<QVector<EyeBand>>> kept_bands(Book& book, Id photo);
// No bands: looked at, and no eyes have to be hidden. Errors: not_found (photo), invalid (a band without size).
[[nodiscard]] Status keep_bands(Book& book, Id photo, const QVector<EyeBand>& bands);
// As if nobody had looked.
[[nodiscard]] Status forget_bands(Book& book, Id photo);
// What belongs to photos and clients that are no more, the language of her report too. Errors: io, whatever reading them gives; nothing is then erased
// of a photo or client that could not be looked up.
[[nodiscard]] Status forget_lost_faces(Book& book);

// What hides the eyes in one photo when it leaves.
struct FaceCover {
    Id photo = 0;
    QVector<EyeBand> bands;
    bool looked = false;        // by a person; else proposed by the cascades
    bool must_look = false;     // she does not want her face seen, and nobody has looked
    bool not_searched = false;  // nobody has looked and faces could not be searched for: `told` says why
    QString told;               // a sentence or two
};
// What belongs beside a picture that leaves: that eyes are hidden, or that nobody could search for them; else empty.
[[nodiscard]] QString note_of(const FaceCover& face);
using EyeFinder = std::function<Result<QVector<EyeBand>>(const cv::Mat& rgb, double px_per_mm, const Progress&)>;
// Errors: not_found, cancelled. A finder that fails (no cascades) is no error: not_searched.
[[nodiscard]] Result<FaceCover> face_cover(Book& book, Id client, Id photo, const OpenPhoto& open,
                                           const Progress& progress = {}, const EyeFinder& finder = find_eyes);
// The refusal of pictures with a photo that must be looked at first: code "look-at-face".
[[nodiscard]] Error look_first();

}  // namespace kempt::work
