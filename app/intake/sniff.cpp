#include "intake/sniff.h"

#include <QList>
#include <algorithm>
#include <initializer_list>

#include "intake/byte_reader.h"
#include "intake/errors.h"

namespace kempt::intake {
namespace {

Error not_read(const QString& what) {
    return unsupported(QStringLiteral("photo-format"), what,
                       QStringLiteral("Save it as JPEG, PNG, WebP, TIFF or HEIC and add it again."));
}

// ISO base media files: the main brand says what is inside; "mif1" leaves it to the compatible brands
// (ISO/IEC 23008-12, annex B).
Result<Format> sniff_boxes(const QByteArray& bytes) {
    const ByteReader reader(bytes, true);
    const qint64 end = std::min<qint64>(reader.u32(0), 512);
    QList<QByteArray> brands = {bytes.mid(8, 4)};
    for (qint64 at = 16; at + 4 <= std::min<qint64>(end, bytes.size()); at += 4) brands.append(bytes.mid(at, 4));
    const auto any_of = [](const QList<QByteArray>& list, std::initializer_list<const char*> wanted) {
        for (const char* brand : wanted)
            if (list.contains(brand)) return true;
        return false;
    };
    const QList<QByteArray> main = {brands.first()};
    if (any_of(main, {"hevc", "hevx", "hevm", "hevs", "msf1", "avis"})) return animated();
    if (any_of(main, {"heic", "heix", "heim", "heis"})) return Format::heic;
    if (any_of(main, {"avif"}) || (any_of(main, {"mif1"}) && any_of(brands, {"avif"})))
        return not_read(QStringLiteral("The file is an AVIF picture, which Kempt does not read."));
    if (any_of(main, {"mif1"}) && any_of(brands, {"heic", "heix", "heim", "heis"})) return Format::heic;
    if (any_of(main, {"crx "}))
        return unsupported(QStringLiteral("photo-raw"), QStringLiteral("The file is a camera's raw file."),
                           QStringLiteral("Develop it and save it as 16-bit TIFF or as JPEG."));
    return not_read(QStringLiteral("The file is a film or another kind of media, not a photo."));
}

}  // namespace

QString name_of(Format format) {
    switch (format) {
        case Format::jpeg:
            return QStringLiteral("jpeg");
        case Format::png:
            return QStringLiteral("png");
        case Format::webp:
            return QStringLiteral("webp");
        case Format::tiff:
            return QStringLiteral("tiff");
        case Format::heic:
            return QStringLiteral("heic");
    }
    return {};
}

Result<Format> sniff(const QByteArray& bytes) {
    if (bytes.isEmpty()) return empty_file();
    if (bytes.startsWith("\xff\xd8\xff")) return Format::jpeg;
    if (bytes.startsWith("\x89PNG\r\n\x1a\n")) return Format::png;
    if (bytes.startsWith("RIFF") && bytes.mid(8, 4) == "WEBP") return Format::webp;
    const QByteArray four = bytes.left(4);
    if (four == QByteArray("II*\0", 4) || four == QByteArray("MM\0*", 4) || four == QByteArray("II+\0", 4) ||
        four == QByteArray("MM\0+", 4))
        return Format::tiff;
    if (bytes.size() >= 12 && bytes.mid(4, 4) == "ftyp") return sniff_boxes(bytes);
    if (bytes.startsWith("GIF8"))
        return not_read(QStringLiteral("The file is a GIF, which holds too few colours to measure from."));
    if (bytes.startsWith("%PDF")) return not_read(QStringLiteral("The file is a PDF document, not a photo."));
    if (bytes.startsWith("BM"))
        return not_read(QStringLiteral("The file is a BMP picture, which Kempt does not read."));
    return not_read(QStringLiteral("The file is not a photo that Kempt can read."));
}

}  // namespace kempt::intake
