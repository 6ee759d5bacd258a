#include "desk/camera/frame_image.h"

#include <QBuffer>
#include <QImageReader>
#include <algorithm>
#include <array>

namespace kempt::desk {
namespace {

// ITU-R BT.601, studio range (luma 16..235): what webcams give where they say nothing else. Sixteen bits after the
// point. For a preview only; the photo itself comes as the camera's JPEG.
QRgb rgb_of(int y, int u, int v) {
    const auto clamped = [](int value) { return std::clamp(value >> 16, 0, 255); };
    const int luma = 76309 * (y - 16) + 32768;  // 255/219
    const int cb = u - 128, cr = v - 128;
    // 2 (1 - Kr) and 2 (1 - Kb) by 255/224, with Kr = 0.299, Kb = 0.114; green from both.
    return qRgb(clamped(luma + 104597 * cr), clamped(luma - 25675 * cb - 53279 * cr), clamped(luma + 132201 * cb));
}

// Where the three values of a pixel lie in memory: y at row * line + column * step + first, and so on.
struct Part {
    int plane, first, step, columns_shared, rows_shared;
};
struct Layout {
    std::array<Part, 3> parts;  // Y, U, V
};

bool layout_of(QVideoFrameFormat::PixelFormat format, Layout& out) {
    switch (format) {
        case QVideoFrameFormat::Format_YUYV:
            out = {{{{0, 0, 2, 1, 1}, {0, 1, 4, 2, 1}, {0, 3, 4, 2, 1}}}};
            return true;
        case QVideoFrameFormat::Format_UYVY:
            out = {{{{0, 1, 2, 1, 1}, {0, 0, 4, 2, 1}, {0, 2, 4, 2, 1}}}};
            return true;
        case QVideoFrameFormat::Format_NV12:
            out = {{{{0, 0, 1, 1, 1}, {1, 0, 2, 2, 2}, {1, 1, 2, 2, 2}}}};
            return true;
        case QVideoFrameFormat::Format_NV21:
            out = {{{{0, 0, 1, 1, 1}, {1, 1, 2, 2, 2}, {1, 0, 2, 2, 2}}}};
            return true;
        case QVideoFrameFormat::Format_YUV420P:
            out = {{{{0, 0, 1, 1, 1}, {1, 0, 1, 2, 2}, {2, 0, 1, 2, 2}}}};
            return true;
        case QVideoFrameFormat::Format_YV12:
            out = {{{{0, 0, 1, 1, 1}, {2, 0, 1, 2, 2}, {1, 0, 1, 2, 2}}}};
            return true;
        default:
            return false;
    }
}

QImage from_yuv(const QVideoFrame& frame, const Layout& layout, int stride) {
    QImage image(frame.width() / stride, frame.height() / stride, QImage::Format_RGB32);
    const auto value = [&](const Part& part, int x, int y) -> int {
        const qsizetype at = qsizetype{y / part.rows_shared} * frame.bytesPerLine(part.plane) +
                             qsizetype{x / part.columns_shared} * part.step + part.first;
        return at < frame.mappedBytes(part.plane) ? frame.bits(part.plane)[at] : 128;
    };
    for (int row = 0; row < image.height(); ++row) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(row));
        for (int column = 0; column < image.width(); ++column) {
            const int x = column * stride, y = row * stride;
            line[column] =
                rgb_of(value(layout.parts[0], x, y), value(layout.parts[1], x, y), value(layout.parts[2], x, y));
        }
    }
    return image;
}

QImage from_jpeg(const QVideoFrame& frame, int stride) {
    QByteArray bytes(reinterpret_cast<const char*>(frame.bits(0)), frame.mappedBytes(0));
    QBuffer buffer(&bytes);
    QImageReader reader(&buffer, "jpeg");
    reader.setScaledSize(reader.size() / stride);
    return reader.read();
}

}  // namespace

QImage small_image(const QVideoFrame& given, int longest) {
    QVideoFrame frame(given);
    if (frame.handleType() != QVideoFrame::NoHandle || frame.width() <= 0 || frame.height() <= 0 || longest <= 0)
        return {};
    const auto kind = frame.pixelFormat();
    const QImage::Format plain = QVideoFrameFormat::imageFormatFromPixelFormat(kind);
    Layout layout{};
    const bool yuv = layout_of(kind, layout);
    if (!yuv && kind != QVideoFrameFormat::Format_Jpeg && plain == QImage::Format_Invalid) return {};
    if (!frame.map(QVideoFrame::ReadOnly)) return {};
    const int stride = std::max(1, (std::max(frame.width(), frame.height()) + longest - 1) / longest);
    QImage image;
    if (yuv)
        image = from_yuv(frame, layout, stride);
    else if (kind == QVideoFrameFormat::Format_Jpeg)
        image = from_jpeg(frame, stride);
    else
        image =
            QImage(frame.bits(0), frame.width(), frame.height(), frame.bytesPerLine(0), plain)
                .scaled(frame.width() / stride, frame.height() / stride, Qt::IgnoreAspectRatio, Qt::FastTransformation)
                .copy();
    frame.unmap();
    return frame.mirrored() ? image.mirrored(true, false) : image;
}

}  // namespace kempt::desk
