// Files that are cut, bent or too large: a clear error or a picture, never a crash.
#include <QDir>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>
#include <random>

#include "app/intake/pictures.h"
#include "intake/intake.h"

using namespace kempt;
using namespace kempt::test;

BOOST_AUTO_TEST_SUITE(broken)

namespace {

struct Named {
    const char* name;
    QByteArray file;
};

QList<Named> one_of_each(int width, int height) {
    const cv::Mat pixels = scene(width, height);
    const QImage image = image_of(pixels);
    JpegOptions with_all, progressive;
    with_all.exif = exif_block({.orientation = 6, .taken = "2026:03:04 10:11:12"});
    with_all.icc = icc_display_p3();
    progressive.progressive = true;
    QImage clear = image.convertToFormat(QImage::Format_ARGB32);
    clear.setPixel(1, 1, qRgba(1, 2, 3, 100));
    QList<Named> files = {{"jpeg", jpeg_file(pixels, with_all)},
                          {"progressive jpeg", jpeg_file(pixels, progressive)},
                          {"png", png_with_icc(qt_file(image, "png"), icc_display_p3())},
                          {"png with alpha", qt_file(clear, "png")},
                          {"webp", qt_file(image, "webp")},
                          {"tiff", qt_file(image, "tiff")}};
    if (const auto heic = heic_file(pixels, {.exif = with_all.exif, .icc = with_all.icc}))
        files.append({"heic", *heic});
    return files;
}

}  // namespace

BOOST_AUTO_TEST_CASE(files_cut_anywhere_are_damaged) {
    for (const Named& one : one_of_each(97, 80)) {
        BOOST_REQUIRE_MESSAGE(intake::decode(one.file).ok(), one.name);
        for (double share : {0.02, 0.1, 0.3, 0.5, 0.75, 0.9, 0.97, 0.995}) {
            const QByteArray cut = one.file.left(std::max<qsizetype>(16, qsizetype(share * double(one.file.size()))));
            const auto decoded = intake::decode(cut);
            BOOST_REQUIRE_MESSAGE(!decoded.ok(), one.name << " cut at " << share);
            BOOST_TEST((decoded.error().kind == ErrorKind::damaged),
                       one.name << " cut at " << share << ": " << decoded.error().sentence());
            BOOST_TEST(!decoded.error().remedy.empty());
        }
        const auto short_of_one = intake::decode(one.file.chopped(1));
        BOOST_TEST(!short_of_one.ok(), one.name << " short of one byte");
    }
}

BOOST_AUTO_TEST_CASE(a_baseline_jpeg_whose_rows_are_missing_is_not_taken_for_whole) {
    // libjpeg itself only warns and fills the rest with grey
    const QByteArray file = jpeg_file(scene(400, 400));
    const auto decoded = intake::decode(file.left(file.size() * 2 / 3));
    BOOST_REQUIRE(!decoded.ok());
    BOOST_TEST(decoded.error().code == "photo-truncated");
}

BOOST_AUTO_TEST_CASE(a_png_whose_check_sums_disagree_is_damaged) {
    const QByteArray good = png_with_icc(qt_file(image_of(scene(60, 40)), "png"), icc_display_p3());
    for (const char* chunk : {"iCCP", "IDAT", "IHDR"}) {
        QByteArray bad = good;
        const qsizetype at = good.indexOf(chunk) + 4 + (chunk[1] == 'H' ? 7 : 40);  // IHDR: the height
        bad[at] = char(bad[at] ^ 0x01);
        const auto decoded = intake::decode(bad);
        BOOST_REQUIRE_MESSAGE(!decoded.ok(), chunk);
        BOOST_TEST(decoded.error().code == "photo-damaged");
    }
}

BOOST_AUTO_TEST_CASE(two_thousand_bent_files_give_a_picture_or_an_error) {
    intake::Limits limits;
    limits.pixels = 1'000'000;  // a bent size must not make the test slow
    const QList<Named> files = one_of_each(41, 29);
    int pictures = 0, errors = 0;
    for (unsigned seed = 0; seed < 2000; ++seed) {
        std::mt19937 random(seed);
        QByteArray file = files[int(seed) % files.size()].file;
        const int changes = 1 + int(random() % 8);
        for (int i = 0; i < changes; ++i) file[qsizetype(random() % unsigned(file.size()))] = char(random());
        const auto header = intake::read_header(file, limits);
        const auto decoded = intake::decode(file, limits);
        if (decoded.ok()) {
            ++pictures;
            BOOST_REQUIRE(header.ok());
            const cv::Mat& pixels = decoded->photo.pixels;
            BOOST_REQUIRE((pixels.type() == CV_8UC3 || pixels.type() == CV_16UC3));
            BOOST_REQUIRE((QSize(pixels.cols, pixels.rows) == decoded->header.size));
            for (const auto& table : decoded->photo.colour.linear)
                BOOST_REQUIRE(table.size() == (pixels.depth() == CV_16U ? 65536u : 256u));
            BOOST_REQUIRE(cv::checkRange(cv::Mat(decoded->photo.colour.srgb_from_device)));
        } else {
            ++errors;
            BOOST_REQUIRE(!decoded.error().code.empty());
            BOOST_REQUIRE(!decoded.error().remedy.empty());
        }
    }
    BOOST_TEST_MESSAGE(pictures << " pictures, " << errors << " errors");
    BOOST_TEST(pictures > 0);
    BOOST_TEST(errors > 0);
}

BOOST_AUTO_TEST_CASE(a_header_beyond_the_limit_is_refused_before_decoding) {
    const QByteArray head = QByteArray("\0\0\x4e\x20\0\0\x4e\x20\x08\x02\0\0\0", 13);  // 20,000 x 20,000
    const QByteArray png =
        QByteArray("\x89PNG\r\n\x1a\n", 8) + png_chunk("IHDR", head) + png_chunk("IDAT", "x") + png_chunk("IEND", {});
    for (const auto& error : {intake::decode(png).error(), intake::read_header(png).error()}) {
        BOOST_TEST((error.kind == ErrorKind::too_large));
        BOOST_TEST(error.code == "photo-too-large");
        BOOST_TEST(error.what.find("400 megapixels") != std::string::npos, error.what);
    }
    intake::Limits tight;
    tight.pixels = 99;
    for (const Named& one : one_of_each(41, 29)) {
        const auto decoded = intake::decode(one.file, tight);
        BOOST_REQUIRE_MESSAGE(!decoded.ok(), one.name);
        BOOST_TEST(decoded.error().code == "photo-too-large", one.name);
    }
    tight = {};
    tight.bytes = 50;
    BOOST_TEST(intake::decode(jpeg_file(scene(20, 20)), tight).error().code == "file-too-large");
}

BOOST_AUTO_TEST_CASE(reading_files_says_what_is_wrong) {
    QTemporaryDir folder;
    BOOST_TEST((intake::read_file(folder.filePath("nothing.jpg")).error().kind == ErrorKind::not_found));
    BOOST_TEST((intake::read_file(folder.path()).error().kind == ErrorKind::io));
    QFile file(folder.filePath("big.jpg"));
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray(1000, 'x'));
    file.close();
    intake::Limits limits;
    limits.bytes = 999;
    BOOST_TEST((intake::read_file(file.fileName(), limits).error().kind == ErrorKind::too_large));
    limits.bytes = 1000;
    const auto bytes = intake::read_file(file.fileName(), limits);
    BOOST_REQUIRE(bytes.ok());
    BOOST_TEST(bytes->size() == 1000);
}

BOOST_AUTO_TEST_SUITE_END()
