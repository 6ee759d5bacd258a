// Bytes to pixels: JPEG, PNG, WebP, TIFF and HEIC; upright, with capture time and colour profile, within limits.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QSize>
#include <QString>
#include <optional>

#include "core/photo.h"
#include "core/result.h"

namespace kempt::intake {

struct Limits {
    qint64 bytes = 200ll * 1000 * 1000;   // of the file
    qint64 pixels = 200ll * 1000 * 1000;  // checked from the header before decoding
};

struct Header {
    QString format;                  // "jpeg", "png", "webp", "tiff", "heic": by content, never by the file's name
    QSize size;                      // upright
    int orientation = 1;             // EXIF 1..8
    std::optional<QDateTime> taken;  // EXIF DateTimeOriginal (with offset when given), else DateTime
    QString camera;                  // make and model, may be empty
};

struct Decoded {
    Header header;
    Photo photo;        // upright, 8 or 16 bit RGB; alpha laid over white; grey spread to RGB; CMYK through its profile
    QString sha256;     // of the bytes, lower-case hex; empty when it was not wanted
    QStringList notes;  // "alpha laid over white", ...
};

// Reads only the header. Errors: damaged, unsupported, too_large.
[[nodiscard]] Result<Header> read_header(const QByteArray& bytes, const Limits& limits = {});
// The SHA-256 costs a third of the time that the pixels of a JPEG do.
enum class CheckSum { wanted, skipped };
// Decodes. Errors: damaged (truncated, zero bytes), unsupported (not a picture, animated), too_large.
[[nodiscard]] Result<Decoded> decode(const QByteArray& bytes, const Limits& limits = {},
                                     CheckSum check_sum = CheckSum::wanted);
// Reads a file within the size limit. Errors: not_found, io, too_large.
[[nodiscard]] Result<QByteArray> read_file(const QString& path, const Limits& limits = {});
// JPEG thumbnail, sRGB, longest side `side` px.
[[nodiscard]] QByteArray thumbnail_of(const Photo& photo, int side = 320);

}  // namespace kempt::intake
