#include "app/intake/pictures.h"

#include <QBuffer>
#include <QImageWriter>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <cstdio>
#include <cstdlib>

#include <jpeglib.h>

namespace kempt::test {

cv::Mat scene(int width, int height) {
    cv::Mat pixels(height, width, CV_8UC3);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const double u = x / double(width), v = y / double(height);
            pixels.at<cv::Vec3b>(y, x) =
                cv::Vec3b(cv::saturate_cast<uchar>(40 + 180 * u), cv::saturate_cast<uchar>(30 + 150 * v * v + 30 * u),
                          cv::saturate_cast<uchar>(120 + 90 * std::sin(5 * u * v + v)));
        }
    return pixels;
}

cv::Mat stored_for(const cv::Mat& upright, int orientation) {
    const int w = upright.cols, h = upright.rows;
    const bool swapped = orientation >= 5;
    cv::Mat stored(swapped ? w : h, swapped ? h : w, upright.type());
    const auto size = upright.elemSize();
    for (int y = 0; y < h; ++y)
        for (int x = 0; x < w; ++x) {
            int row = y, col = x;
            switch (orientation) {
                case 2:
                    col = w - 1 - x;
                    break;
                case 3:
                    row = h - 1 - y, col = w - 1 - x;
                    break;
                case 4:
                    row = h - 1 - y;
                    break;
                case 5:  // row 0 is the left side, column 0 the top
                    row = x, col = y;
                    break;
                case 6:  // row 0 is the right side, column 0 the top
                    row = w - 1 - x, col = y;
                    break;
                case 7:  // row 0 is the right side, column 0 the bottom
                    row = w - 1 - x, col = h - 1 - y;
                    break;
                case 8:  // row 0 is the left side, column 0 the bottom
                    row = x, col = h - 1 - y;
                    break;
                default:
                    break;
            }
            std::copy_n(upright.ptr(y, x), size, stored.ptr(row, col));
        }
    return stored;
}

double mean_difference(const cv::Mat& one, const cv::Mat& two) {
    BOOST_REQUIRE((one.size() == two.size() && one.type() == two.type()));
    return cv::norm(one, two, cv::NORM_L1) /
           static_cast<double>(one.total() * static_cast<std::size_t>(one.channels()));
}

namespace {

void put(QByteArray& to, quint64 value, int size) {
    for (int i = 0; i < size; ++i) to.append(static_cast<char>(value >> (8 * i)));
}

struct Entry {
    int tag, type;
    QByteArray data;
};

// Little-endian directory at `at`; values longer than four bytes follow it.
QByteArray directory(const QList<Entry>& entries, int at) {
    QByteArray head, tail;
    put(head, static_cast<quint64>(entries.size()), 2);
    const int tail_at = at + 2 + 12 * static_cast<int>(entries.size()) + 4;
    for (const Entry& entry : entries) {
        put(head, static_cast<quint64>(entry.tag), 2);
        put(head, static_cast<quint64>(entry.type), 2);
        const int unit = entry.type == 3 ? 2 : entry.type == 4 ? 4 : 1;
        put(head, static_cast<quint64>(entry.data.size() / unit), 4);
        if (entry.data.size() <= 4) {
            head.append(entry.data.leftJustified(4, '\0'));
        } else {
            put(head, static_cast<quint64>(tail_at + tail.size()), 4);
            tail.append(entry.data);
            if (tail.size() % 2) tail.append('\0');
        }
    }
    put(head, 0, 4);
    return head + tail;
}

QByteArray number(int value, int size) {
    QByteArray bytes;
    put(bytes, static_cast<quint64>(value), size);
    return bytes;
}

QByteArray text(const QByteArray& words) {
    return words + '\0';
}

}  // namespace

QByteArray exif_block(const Exif& exif) {
    QList<Entry> main = {{0x0112, 3, number(exif.orientation, 2)}};
    if (!exif.camera_model.isEmpty()) main.prepend({0x0110, 2, text(exif.camera_model)});
    if (!exif.camera_maker.isEmpty()) main.prepend({0x010f, 2, text(exif.camera_maker)});
    QList<Entry> own;
    if (!exif.taken.isEmpty()) own.append({0x9003, 2, text(exif.taken)});
    if (!exif.offset.isEmpty()) own.append({0x9011, 2, text(exif.offset)});
    own.append({0xa001, 3, number(exif.colour_space, 2)});
    main.append({0x8769, 4, number(0, 4)});
    const int own_at = 8 + static_cast<int>(directory(main, 8).size());
    if (!exif.interoperability.isEmpty()) own.append({0xa005, 4, number(0, 4)});
    const int rules_at = own_at + static_cast<int>(directory(own, own_at).size());
    main.last().data = number(own_at, 4);
    if (!exif.interoperability.isEmpty()) own.last().data = number(rules_at, 4);
    QByteArray block = QByteArray("II*\0\x08\0\0\0", 8) + directory(main, 8) + directory(own, own_at);
    if (!exif.interoperability.isEmpty()) block += directory({{1, 2, text(exif.interoperability)}}, rules_at);
    return block;
}

QByteArray jpeg_file(const cv::Mat& pixels, const JpegOptions& options) {
    jpeg_compress_struct jpeg{};
    jpeg_error_mgr errors{};
    jpeg.err = jpeg_std_error(&errors);  // ends the test program: the input is ours
    jpeg_create_compress(&jpeg);
    unsigned char* out = nullptr;
    unsigned long size = 0;
    jpeg_mem_dest(&jpeg, &out, &size);
    jpeg.image_width = static_cast<JDIMENSION>(pixels.cols);
    jpeg.image_height = static_cast<JDIMENSION>(pixels.rows);
    jpeg.input_components = pixels.channels();
    jpeg.in_color_space = pixels.channels() == 1 ? JCS_GRAYSCALE : pixels.channels() == 3 ? JCS_RGB : JCS_CMYK;
    jpeg_set_defaults(&jpeg);
    jpeg_set_quality(&jpeg, options.quality, TRUE);
    for (int c = 0; c < jpeg.num_components; ++c) jpeg.comp_info[c].h_samp_factor = jpeg.comp_info[c].v_samp_factor = 1;
    if (pixels.channels() == 4) jpeg.write_Adobe_marker = options.inverted ? TRUE : FALSE;
    if (options.progressive) jpeg_simple_progression(&jpeg);
    jpeg_start_compress(&jpeg, TRUE);
    if (!options.exif.isEmpty()) {
        const QByteArray marker = QByteArray("Exif\0\0", 6) + options.exif;
        jpeg_write_marker(&jpeg, JPEG_APP0 + 1, reinterpret_cast<const JOCTET*>(marker.constData()),
                          static_cast<unsigned int>(marker.size()));
    }
    if (!options.icc.isEmpty())
        jpeg_write_icc_profile(&jpeg, reinterpret_cast<const JOCTET*>(options.icc.constData()),
                               static_cast<unsigned int>(options.icc.size()));
    cv::Mat coded;
    if (pixels.channels() == 4 && options.inverted)
        cv::bitwise_not(pixels, coded);
    else
        coded = pixels;
    for (int row = 0; row < coded.rows; ++row) {
        JSAMPROW line = coded.ptr(row);
        jpeg_write_scanlines(&jpeg, &line, 1);
    }
    jpeg_finish_compress(&jpeg);
    jpeg_destroy_compress(&jpeg);
    const QByteArray file(reinterpret_cast<const char*>(out), static_cast<qsizetype>(size));
    std::free(out);
    return file;
}

QImage image_of(const cv::Mat& rgb) {
    return QImage(rgb.data, rgb.cols, rgb.rows, static_cast<qsizetype>(rgb.step), QImage::Format_RGB888).copy();
}

QByteArray qt_file(const QImage& image, const char* format, int orientation) {
    // EXIF numbers in terms of Qt's turns.
    static const QImageIOHandler::Transformation turns[] = {
        QImageIOHandler::TransformationNone,     QImageIOHandler::TransformationNone,
        QImageIOHandler::TransformationMirror,   QImageIOHandler::TransformationRotate180,
        QImageIOHandler::TransformationFlip,     QImageIOHandler::TransformationFlipAndRotate90,
        QImageIOHandler::TransformationRotate90, QImageIOHandler::TransformationMirrorAndRotate90,
        QImageIOHandler::TransformationRotate270};
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QImageWriter writer(&buffer, format);
    writer.setQuality(100);
    if (orientation > 1) writer.setTransformation(turns[orientation]);
    BOOST_REQUIRE_MESSAGE(writer.write(image), format << ": " << writer.errorString().toStdString());
    return bytes;
}

namespace {

// ISO 3309, as PNG's annex D gives it.
quint32 crc_of(const QByteArray& bytes) {
    quint32 crc = 0xffffffff;
    for (char byte : bytes) {
        crc ^= static_cast<quint8>(byte);
        for (int bit = 0; bit < 8; ++bit) crc = crc & 1 ? 0xedb88320 ^ crc >> 1 : crc >> 1;
    }
    return ~crc;
}

QByteArray big_endian(quint32 value) {
    QByteArray bytes;
    for (int i = 3; i >= 0; --i) bytes.append(static_cast<char>(value >> (8 * i)));
    return bytes;
}

QByteArray riff_chunk(const char* type, const QByteArray& data) {
    QByteArray chunk = type;
    put(chunk, static_cast<quint64>(data.size()), 4);
    chunk += data;
    if (data.size() % 2) chunk.append('\0');
    return chunk;
}

}  // namespace

QByteArray png_chunk(const QByteArray& type, const QByteArray& data) {
    const QByteArray body = type + data;
    return big_endian(static_cast<quint32>(data.size())) + body + big_endian(crc_of(body));
}

QByteArray with_png_chunk(const QByteArray& png, const QByteArray& type, const QByteArray& data) {
    QByteArray file = png;
    file.insert(png.indexOf("IDAT") - 4, png_chunk(type, data));
    return file;
}

QByteArray png_with_icc(const QByteArray& png, const QByteArray& icc) {
    // qCompress puts a length of four bytes in front of the zlib stream.
    return with_png_chunk(png, "iCCP", QByteArray("profile\0\0", 9) + qCompress(icc).mid(4));
}

QByteArray webp_with(const QByteArray& webp, QSize size, const QByteArray& exif, const QByteArray& icc) {
    const qsizetype at = webp.indexOf("VP8L");
    BOOST_REQUIRE(at > 0);
    const qsizetype length = static_cast<quint8>(webp[at + 4]) | static_cast<quint8>(webp[at + 5]) << 8 |
                             static_cast<quint8>(webp[at + 6]) << 16;
    QByteArray head;
    put(head, (icc.isEmpty() ? 0u : 0x20u) | (exif.isEmpty() ? 0u : 0x08u), 4);
    put(head, static_cast<quint64>(size.width() - 1), 3);
    put(head, static_cast<quint64>(size.height() - 1), 3);
    QByteArray body = "WEBP" + riff_chunk("VP8X", head);
    if (!icc.isEmpty()) body += riff_chunk("ICCP", icc);
    body += riff_chunk("VP8L", webp.mid(at + 8, length));
    if (!exif.isEmpty()) body += riff_chunk("EXIF", exif);
    QByteArray file = "RIFF";
    put(file, static_cast<quint64>(body.size()), 4);
    return file + body;
}

}  // namespace kempt::test
