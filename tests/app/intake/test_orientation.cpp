// EXIF 2.32, tag 274: what the eight numbers mean.
#include <QBuffer>
#include <QImageReader>
#include <boost/test/unit_test.hpp>

#include "app/intake/pictures.h"
#include "intake/intake.h"

using namespace kempt;
using namespace kempt::test;

BOOST_AUTO_TEST_SUITE(orientation)

namespace {

// 150 x 97: more rows than one strip, and odd numbers of rows and columns.
const cv::Mat& picture() {
    static const cv::Mat pixels = scene(150, 97);
    return pixels;
}

void comes_upright(const QByteArray& file, int number, int said, double tolerance) {
    const auto header = intake::read_header(file);
    BOOST_REQUIRE_MESSAGE(header.ok(), number << ": " << (header.ok() ? "" : header.error().sentence()));
    BOOST_TEST((header->size == QSize(150, 97)), "size at " << number);
    BOOST_TEST(header->orientation == said);
    const auto decoded = intake::decode(file);
    BOOST_REQUIRE_MESSAGE(decoded.ok(), number << ": " << (decoded.ok() ? "" : decoded.error().sentence()));
    BOOST_TEST(mean_difference(decoded->photo.pixels, picture()) <= tolerance, "orientation " << number);
}

}  // namespace

BOOST_AUTO_TEST_CASE(jpeg_of_all_eight_comes_upright_and_as_qt_turns_it) {
    for (int number = 1; number <= 8; ++number) {
        JpegOptions options;
        options.exif = exif_block({.orientation = number});
        const QByteArray file = jpeg_file(stored_for(picture(), number), options);
        comes_upright(file, number, number, 1.0);
        // Qt turns by code of its own.
        QBuffer buffer;
        buffer.setData(file);
        buffer.open(QIODevice::ReadOnly);
        QImageReader reader(&buffer, "jpg");
        reader.setAutoTransform(true);
        const QImage theirs = reader.read().convertToFormat(QImage::Format_RGB888);
        const cv::Mat view(theirs.height(), theirs.width(), CV_8UC3, const_cast<uchar*>(theirs.constBits()),
                           static_cast<std::size_t>(theirs.bytesPerLine()));
        BOOST_TEST(mean_difference(intake::decode(file)->photo.pixels, view) <= 0.5);
    }
}

BOOST_AUTO_TEST_CASE(png_webp_and_tiff_of_all_eight_come_upright_to_the_last_code) {
    for (int number = 1; number <= 8; ++number) {
        const QImage stored = image_of(stored_for(picture(), number));
        const QByteArray exif = exif_block({.orientation = number});
        comes_upright(with_png_chunk(qt_file(stored, "png"), "eXIf", exif), number, number, 0);
        comes_upright(webp_with(qt_file(stored, "webp"), stored.size(), exif, {}), number, number, 0);
        comes_upright(qt_file(stored, "tiff", number), number, number, 0);
    }
}

BOOST_AUTO_TEST_CASE(heic_is_turned_once_by_its_container_and_not_again_by_exif) {
    for (int number = 1; number <= 8; ++number) {
        HeicOptions options;
        options.turn = number;
        options.exif = exif_block({.orientation = number});
        const auto file = heic_file(stored_for(picture(), number), options);
        if (!file) {
            BOOST_TEST_MESSAGE("skipped: this libheif has no HEVC encoder");
            return;
        }
        comes_upright(*file, number, 1, 3.0);
    }
}

BOOST_AUTO_TEST_CASE(an_orientation_that_does_not_exist_counts_as_upright) {
    for (int number : {0, 9, 255}) {
        JpegOptions options;
        options.exif = exif_block({.orientation = number});
        comes_upright(jpeg_file(picture(), options), number, 1, 1.0);
    }
}

BOOST_AUTO_TEST_SUITE_END()
