#include "intake/qt_reader.h"

#include <QBuffer>
#include <QColorSpace>
#include <QImage>
#include <QImageReader>
#include <mutex>

#include "intake/errors.h"

namespace kempt::intake {
namespace {

// Qt refuses pictures above 256 MB of pixels by itself. The limits of this room are checked before: 200 megapixels of
// 8 bytes are 1,600 MB.
void raise_allocation_limit() {
    static std::once_flag once;
    std::call_once(once, [] { QImageReader::setAllocationLimit(2048); });
}

bool is_deep(QImage::Format format) {
    switch (format) {
        case QImage::Format_RGBX64:
        case QImage::Format_RGBA64:
        case QImage::Format_RGBA64_Premultiplied:
        case QImage::Format_Grayscale16:
            return true;
        default:
            return false;
    }
}

Error failure(const QImageReader& reader, Format format) {
    const QString name = name_of(format);
    if (!QImageReader::supportedImageFormats().contains(name.toLatin1()))
        return unsupported(QStringLiteral("photo-plugin"),
                           QStringLiteral("This computer lacks the part of Qt that reads %1.").arg(name.toUpper()),
                           QStringLiteral("Install the package qt6-image-formats-plugins, or save the photo as JPEG."));
    if (reader.error() == QImageReader::InvalidDataError) return damaged(name.toUpper(), QString());
    return damaged(name.toUpper(), reader.errorString());
}

}  // namespace

Result<Loaded> read_with_qt(const QByteArray& bytes, Format format, const Layout& layout) {
    raise_allocation_limit();
    QBuffer buffer;
    buffer.setData(bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer, name_of(format).toLatin1());
    reader.setAutoTransform(false);
    reader.setDecideFormatFromContent(false);
    QImage image = reader.read();
    if (image.isNull()) return failure(reader, format);
    if (image.size() != layout.stored)
        return damaged(name_of(format).toUpper(), QStringLiteral("two sizes in one file"));

    const bool alpha = image.hasAlphaChannel(), deep = is_deep(image.format());
    Loaded loaded;
    loaded.ink = layout.grey ? Ink::grey : Ink::rgb;
    // Qt drops the profiles that it cannot use, but makes one of PNG's sRGB, gAMA and cHRM chunks.
    loaded.profile = Profile::from_icc(layout.icc.isEmpty() ? image.colorSpace().iccProfile() : layout.icc);
    image.convertTo(deep ? (alpha ? QImage::Format_RGBA64 : QImage::Format_RGBX64)
                         : (alpha ? QImage::Format_RGBA8888 : QImage::Format_RGBX8888));
    if (image.isNull()) return out_of_memory();
    // Only read from; cv::Mat has no constant view.
    const cv::Mat four(image.height(), image.width(), deep ? CV_16UC4 : CV_8UC4, const_cast<uchar*>(image.constBits()),
                       static_cast<std::size_t>(image.bytesPerLine()));
    loaded.pixels.create(four.rows, four.cols, deep ? CV_16UC3 : CV_8UC3);
    const int colours[] = {0, 0, 1, 1, 2, 2}, opacity[] = {3, 0};
    cv::mixChannels(&four, 1, &loaded.pixels, 1, colours, 3);
    if (alpha) {
        loaded.alpha.create(four.rows, four.cols, deep ? CV_16UC1 : CV_8UC1);
        cv::mixChannels(&four, 1, &loaded.alpha, 1, opacity, 1);
        keep_alpha_if_any(loaded);
    }
    return loaded;
}

}  // namespace kempt::intake
