#include "intake/errors.h"

namespace kempt::intake {
namespace {

const char* const untouched = "The file was left as it is.";

Error make(ErrorKind kind, const QString& code, const QString& what, const QString& remedy) {
    return {kind, code.toStdString(), what.toStdString(), untouched, remedy.toStdString()};
}

QString millions(qint64 count) {
    return QString::number(static_cast<double>(count) / 1e6, 'f', count < 10'000'000 ? 1 : 0);
}

}  // namespace

Error empty_file() {
    return make(ErrorKind::damaged, QStringLiteral("photo-empty"), QStringLiteral("The file is empty."),
                QStringLiteral("Copy it from the camera or phone again."));
}

Error truncated(const QString& format) {
    return make(ErrorKind::damaged, QStringLiteral("photo-truncated"),
                QStringLiteral("The %1 photo ends too early: part of it is missing.").arg(format),
                QStringLiteral("Copy it from the camera or phone again."));
}

Error damaged(const QString& format, const QString& detail) {
    const QString why = detail.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(detail);
    return make(ErrorKind::damaged, QStringLiteral("photo-damaged"),
                QStringLiteral("The %1 photo is damaged and cannot be read in full%2.").arg(format, why),
                QStringLiteral("Copy it from the camera or phone again."));
}

Error unsupported(const QString& code, const QString& what, const QString& remedy) {
    return make(ErrorKind::unsupported, code, what, remedy);
}

Error animated() {
    return unsupported(QStringLiteral("photo-animated"),
                       QStringLiteral("The file is an animation or a burst of pictures, not one photo."),
                       QStringLiteral("Save the one picture that is wanted as JPEG or PNG."));
}

Error too_many_pixels(qint64 width, qint64 height, qint64 limit) {
    return make(ErrorKind::too_large, QStringLiteral("photo-too-large"),
                QStringLiteral("The photo has %1 x %2 pixels (%3 megapixels); the limit is %4 megapixels.")
                    .arg(width)
                    .arg(height)
                    .arg(millions(width * height), millions(limit)),
                QStringLiteral("Save a smaller or cropped copy."));
}

Error too_many_bytes(qint64 bytes, qint64 limit) {
    return make(ErrorKind::too_large, QStringLiteral("file-too-large"),
                QStringLiteral("The file has %1 MB; the limit is %2 MB.").arg(millions(bytes), millions(limit)),
                QStringLiteral("Save a smaller or cropped copy, or one as JPEG."));
}

Error out_of_memory() {
    return make(ErrorKind::too_large, QStringLiteral("photo-memory"),
                QStringLiteral("There is not enough memory to open the photo."),
                QStringLiteral("Close other programs, or save a smaller copy."));
}

}  // namespace kempt::intake
