#include <QCryptographicHash>
#include <QTemporaryDir>
#include <QTimeZone>
#include <boost/test/unit_test.hpp>

#include "app/intake/pictures.h"
#include "intake/intake.h"

using namespace kempt;
using namespace kempt::test;

BOOST_AUTO_TEST_SUITE(formats)

namespace {

intake::Decoded decoded_or_fail(const QByteArray& file) {
    auto decoded = intake::decode(file);
    BOOST_REQUIRE_MESSAGE(decoded.ok(), (decoded.ok() ? "" : decoded.error().sentence()));
    return std::move(decoded.value());
}

void refused(const QByteArray& file, ErrorKind kind, const std::string& code) {
    const auto decoded = intake::decode(file);
    BOOST_REQUIRE(!decoded.ok());
    BOOST_TEST((decoded.error().kind == kind), code << " came as " << decoded.error().code);
    BOOST_TEST(decoded.error().code == code);
    BOOST_TEST(!decoded.error().what.empty());
    BOOST_TEST(!decoded.error().remedy.empty());
    BOOST_TEST(!intake::read_header(file).ok());
}

QImage deep_image(QImage::Format format) {
    QImage image(7, 5, format);
    for (int y = 0; y < 5; ++y)
        for (int x = 0; x < 7; ++x)
            image.setPixelColor(
                x, y, QColor::fromRgba64(quint16(257 + x * 9001), quint16(3 + y * 13007), quint16(x * y * 2311)));
    return image;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_format_is_told_by_content) {
    const QImage image = image_of(scene(20, 10));
    BOOST_TEST((decoded_or_fail(jpeg_file(scene(20, 10))).header.format == "jpeg"));
    BOOST_TEST((decoded_or_fail(qt_file(image, "png")).header.format == "png"));
    BOOST_TEST((decoded_or_fail(qt_file(image, "webp")).header.format == "webp"));
    BOOST_TEST((decoded_or_fail(qt_file(image, "tiff")).header.format == "tiff"));
    if (const auto heic = heic_file(scene(64, 64))) BOOST_TEST((decoded_or_fail(*heic).header.format == "heic"));
}

BOOST_AUTO_TEST_CASE(a_png_named_jpg_is_read_as_what_it_is) {
    QTemporaryDir folder;
    const QString path = folder.filePath("photo.jpg");
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(qt_file(image_of(scene(20, 10)), "png"));
    file.close();
    const auto bytes = intake::read_file(path);
    BOOST_REQUIRE(bytes.ok());
    const auto decoded = decoded_or_fail(bytes.value());
    BOOST_TEST((decoded.header.format == "png"));
    BOOST_TEST(mean_difference(decoded.photo.pixels, scene(20, 10)) == 0);
    BOOST_TEST((decoded.sha256 == QCryptographicHash::hash(*bytes, QCryptographicHash::Sha256).toHex()));
    BOOST_TEST(decoded.sha256.size() == 64);
}

BOOST_AUTO_TEST_CASE(sixteen_bits_are_kept_to_the_last_code) {
    for (const char* format : {"png", "tiff"}) {
        const QImage image = deep_image(QImage::Format_RGBX64);
        const auto decoded = decoded_or_fail(qt_file(image, format));
        BOOST_REQUIRE((decoded.photo.pixels.type() == CV_16UC3));
        BOOST_TEST(decoded.photo.colour.linear[0].size() == 65536u);
        int wrong = 0;
        for (int y = 0; y < 5; ++y)
            for (int x = 0; x < 7; ++x) {
                const QRgba64 want = image.pixelColor(x, y).rgba64();
                wrong += decoded.photo.pixels.at<cv::Vec3w>(y, x) != cv::Vec3w(want.red(), want.green(), want.blue());
            }
        BOOST_TEST(wrong == 0, format);
    }
    QImage grey(300, 1, QImage::Format_Grayscale16);
    for (int x = 0; x < 300; ++x) reinterpret_cast<quint16*>(grey.scanLine(0))[x] = quint16(x * 219);
    for (const char* format : {"png", "tiff"}) {
        const auto decoded = decoded_or_fail(qt_file(grey, format));
        BOOST_REQUIRE((decoded.photo.pixels.type() == CV_16UC3));
        int wrong = 0;
        for (int x = 0; x < 300; ++x)
            for (int c = 0; c < 3; ++c) wrong += decoded.photo.pixels.at<cv::Vec3w>(0, x)[c] != x * 219;
        BOOST_TEST(wrong == 0, format);
    }
}

BOOST_AUTO_TEST_CASE(ten_bit_heic_is_spread_over_sixteen_bits) {
    const auto file = heic_file(scene(64, 48), {.ten_bits = true});
    if (!file) {
        BOOST_TEST_MESSAGE("skipped: this libheif has no HEVC encoder");
        return;
    }
    const auto decoded = decoded_or_fail(*file);
    BOOST_REQUIRE((decoded.photo.pixels.type() == CV_16UC3));
    cv::Mat eight;
    decoded.photo.pixels.convertTo(eight, CV_8U, 1 / 257.0);
    BOOST_TEST(mean_difference(eight, scene(64, 48)) < 3);
}

BOOST_AUTO_TEST_CASE(palette_one_bit_and_grey_are_spread_to_rgb) {
    QImage palette(4, 1, QImage::Format_Indexed8);
    palette.setColorTable({qRgb(250, 1, 2), qRgb(3, 240, 4), qRgb(5, 6, 230), qRgb(7, 8, 9)});
    for (int x = 0; x < 4; ++x) palette.setPixel(x, 0, uint(x));
    const auto colours = decoded_or_fail(qt_file(palette, "png"));
    BOOST_TEST((colours.photo.pixels.at<cv::Vec3b>(0, 0) == cv::Vec3b(250, 1, 2)));
    BOOST_TEST((colours.photo.pixels.at<cv::Vec3b>(0, 3) == cv::Vec3b(7, 8, 9)));

    QImage bits(9, 2, QImage::Format_Mono);
    bits.setColorTable({qRgb(0, 0, 0), qRgb(255, 255, 255)});
    bits.fill(0);
    bits.setPixel(8, 1, 1);
    for (const char* format : {"png", "tiff"}) {
        const auto decoded = decoded_or_fail(qt_file(bits, format));
        BOOST_TEST((decoded.photo.pixels.at<cv::Vec3b>(0, 0) == cv::Vec3b(0, 0, 0)), format);
        BOOST_TEST((decoded.photo.pixels.at<cv::Vec3b>(1, 8) == cv::Vec3b(255, 255, 255)), format);
    }
    cv::Mat grey(8, 8, CV_8UC1, cv::Scalar(77));
    const auto spread = decoded_or_fail(jpeg_file(grey));
    BOOST_TEST((spread.photo.pixels.at<cv::Vec3b>(3, 3) == cv::Vec3b(77, 77, 77)));
}

BOOST_AUTO_TEST_CASE(grey_png_of_two_and_four_bits_keeps_its_levels) {
    struct Case {
        int depth;
        QByteArray line;  // filter byte 0, then four pixels
        int codes[4];
    };
    for (const Case& one : {Case{2, QByteArray("\0\x1b", 2), {0, 85, 170, 255}},         // 0 1 2 3 of 3
                            Case{4, QByteArray("\0\x05\xaf", 3), {0, 85, 170, 255}}}) {  // 0 5 10 15 of 15
        const QByteArray head = QByteArray("\0\0\0\x04\0\0\0\x01", 8) + char(one.depth) + QByteArray(4, '\0');
        const QByteArray png = QByteArray("\x89PNG\r\n\x1a\n", 8) + png_chunk("IHDR", head) +
                               png_chunk("IDAT", qCompress(one.line).mid(4)) + png_chunk("IEND", {});
        const auto decoded = decoded_or_fail(png);
        for (int x = 0; x < 4; ++x)
            BOOST_TEST((decoded.photo.pixels.at<cv::Vec3b>(0, x) == cv::Vec3b::all(uchar(one.codes[x]))));
    }
}

BOOST_AUTO_TEST_CASE(capture_time_and_camera_come_from_every_container) {
    const QByteArray exif = exif_block(
        {.taken = "2026:03:04 10:11:12", .offset = "+02:00", .camera_maker = "Maker", .camera_model = "Maker M1"});
    const QImage image = image_of(scene(16, 8));
    JpegOptions options;
    options.exif = exif;
    QList<QByteArray> files = {jpeg_file(scene(16, 8), options), with_png_chunk(qt_file(image, "png"), "eXIf", exif),
                               webp_with(qt_file(image, "webp"), image.size(), exif, {}),
                               webp_with(qt_file(image, "webp"), image.size(), QByteArray("Exif\0\0", 6) + exif, {})};
    if (const auto heic = heic_file(scene(64, 64), {.exif = exif})) files.append(*heic);
    for (const QByteArray& file : files) {
        const auto header = intake::read_header(file);
        BOOST_REQUIRE(header.ok());
        BOOST_REQUIRE_MESSAGE(header->taken.has_value(), header->format.toStdString());
        BOOST_TEST((*header->taken == QDateTime(QDate(2026, 3, 4), QTime(8, 11, 12), Qt::UTC)));
        BOOST_TEST(header->taken->offsetFromUtc() == 7200);
        BOOST_TEST((header->camera == "Maker M1"));
    }
    options.exif = exif_block({.taken = "0000:00:00 00:00:00"});
    BOOST_TEST(!intake::read_header(jpeg_file(scene(16, 8), options))->taken.has_value());
    options.exif = exif_block({.taken = "2026:03:04 10:11:12"});
    const auto local = intake::read_header(jpeg_file(scene(16, 8), options));
    BOOST_TEST((local->taken->timeSpec() == Qt::LocalTime));
    BOOST_TEST((local->taken->time() == QTime(10, 11, 12)));
}

BOOST_AUTO_TEST_CASE(tiff_says_how_many_pages_it_has) {
    QByteArray file = qt_file(image_of(scene(16, 8)), "tiff");
    BOOST_REQUIRE(file.startsWith("II"));
    const auto u32 = [&file](qsizetype at) {
        return quint32(quint8(file[at]) | quint8(file[at + 1]) << 8 | quint8(file[at + 2]) << 16 |
                       quint8(file[at + 3]) << 24);
    };
    const qsizetype first = u32(4);
    const int entries = quint8(file[first]) | quint8(file[first + 1]) << 8;
    const qsizetype next = first + 2 + 12 * entries;
    if (file.size() % 2) file.append('\0');
    const quint32 second = quint32(file.size());
    file.append(file.mid(first, next - first) + QByteArray(4, '\0'));
    for (int i = 0; i < 4; ++i) file[next + i] = char(second >> (8 * i));
    BOOST_TEST(decoded_or_fail(file).notes.contains("page 1 of 2"));
    BOOST_TEST(!decoded_or_fail(qt_file(image_of(scene(16, 8)), "tiff")).notes.join(';').contains("page"));
    // a chain of pages that leads back to itself ends
    for (int i = 0; i < 4; ++i) file[file.size() - 4 + i] = char(second >> (8 * i));
    BOOST_TEST(decoded_or_fail(file).notes.join(';').contains("page 1 of"));
}

BOOST_AUTO_TEST_CASE(animations_and_other_files_are_refused_with_a_remedy) {
    const QByteArray vp8x = QByteArray("RIFF\x16\0\0\0WEBPVP8X\x0a\0\0\0\x02\0\0\0\x0f\0\0\x0f\0\0", 30);
    refused(vp8x, ErrorKind::unsupported, "photo-animated");
    const QByteArray png = qt_file(image_of(scene(16, 8)), "png");
    refused(with_png_chunk(png, "acTL", QByteArray("\0\0\0\x03\0\0\0\0", 8)), ErrorKind::unsupported, "photo-animated");
    BOOST_TEST(intake::decode(with_png_chunk(png, "acTL", QByteArray("\0\0\0\x01\0\0\0\0", 8))).ok());
    refused(with_png_chunk(qt_file(deep_image(QImage::Format_RGBX64), "png"), "tRNS", QByteArray(6, '\0')),
            ErrorKind::unsupported, "photo-png-kind");
    refused(QByteArray("\0\0\0\x18"
                       "ftyphevc\0\0\0\0msf1hevc",
                       24),
            ErrorKind::unsupported, "photo-animated");
    refused(QByteArray("\0\0\0\x14"
                       "ftypavif\0\0\0\0mif1",
                       20),
            ErrorKind::unsupported, "photo-format");
    refused(QByteArray("\0\0\0\x14"
                       "ftypqt  \0\0\0\0qt  ",
                       20),
            ErrorKind::unsupported, "photo-format");
    refused("GIF89a\x01\0\x01", ErrorKind::unsupported, "photo-format");
    refused("BM123456789", ErrorKind::unsupported, "photo-format");
    refused("%PDF-1.7", ErrorKind::unsupported, "photo-format");
    refused("Dear diary, today my hair", ErrorKind::unsupported, "photo-format");
    refused("x", ErrorKind::unsupported, "photo-format");
    refused("", ErrorKind::damaged, "photo-empty");
}

BOOST_AUTO_TEST_CASE(thumbnails_are_srgb_jpegs_of_the_right_size) {
    const auto decoded = decoded_or_fail(jpeg_file(scene(900, 600)));
    const QByteArray small = intake::thumbnail_of(decoded.photo);
    const auto again = decoded_or_fail(small);
    BOOST_TEST((again.header.format == "jpeg"));
    BOOST_TEST((again.header.size == QSize(320, 213)));
    BOOST_TEST(mean_difference(again.photo.pixels, scene(320, 213)) < 3);
    // a Display P3 photo of a colour that sRGB also has shows the same colour
    const cv::Mat flat(40, 40, CV_8UC3, cv::Scalar(150, 120, 100));
    const auto wide = decoded_or_fail(png_with_icc(qt_file(image_of(flat), "png"), icc_display_p3()));
    const cv::Vec3b shown = decoded_or_fail(intake::thumbnail_of(wide.photo)).photo.pixels.at<cv::Vec3b>(20, 20);
    BOOST_TEST((shown[0] > 152 && shown[0] < 162));  // the same red needs a higher sRGB code
    const auto tiny = decoded_or_fail(intake::thumbnail_of(decoded_or_fail(jpeg_file(scene(5, 2000))).photo));
    BOOST_TEST((tiny.header.size == QSize(1, 320)));
    BOOST_TEST(intake::thumbnail_of(Photo{}).isEmpty());
}

BOOST_AUTO_TEST_SUITE_END()
