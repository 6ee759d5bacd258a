#include <lcms2.h>

#include <QColorSpace>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "app/intake/pictures.h"
#include "colour/colour.h"
#include "intake/intake.h"

using namespace kempt;
using namespace kempt::test;

BOOST_AUTO_TEST_SUITE(colours)

namespace {

cv::Mat patches() {
    cv::Mat row(1, 64, CV_8UC3);
    for (int i = 0; i < 64; ++i)
        row.at<cv::Vec3b>(0, i) = cv::Vec3b(uchar(i % 4 * 85), uchar(i / 4 % 4 * 85), uchar(i / 16 * 85));
    return row;
}

cv::Vec3d light_of(const Photo& photo, int col) {
    cv::Vec3f device;
    for (int c = 0; c < 3; ++c) {
        const int code = photo.pixels.depth() == CV_16U ? photo.pixels.at<cv::Vec3w>(0, col)[c]
                                                        : photo.pixels.at<cv::Vec3b>(0, col)[c];
        device[c] = photo.colour.linear[static_cast<std::size_t>(c)].at(static_cast<std::size_t>(code));
    }
    return photo.colour.srgb_from_device * device;
}

// The largest difference from lcms2's own way to linear sRGB, without bounds.
double worst_against_lcms(const Photo& photo, const QByteArray& icc) {
    const cmsCIExyY white{0.3127, 0.3290, 1};
    const cmsCIExyYTRIPLE primaries{{0.64, 0.33, 1}, {0.30, 0.60, 1}, {0.15, 0.06, 1}};
    cmsToneCurve* straight = cmsBuildGamma(nullptr, 1);
    cmsToneCurve* curves[3] = {straight, straight, straight};
    cmsHPROFILE linear = cmsCreateRGBProfile(&white, &primaries, curves);
    cmsHPROFILE source = cmsOpenProfileFromMem(icc.constData(), static_cast<cmsUInt32Number>(icc.size()));
    cmsHTRANSFORM transform = cmsCreateTransform(source, TYPE_RGB_DBL, linear, TYPE_RGB_DBL,
                                                 INTENT_RELATIVE_COLORIMETRIC, cmsFLAGS_NOOPTIMIZE | cmsFLAGS_NOCACHE);
    double worst = 0;
    for (int col = 0; col < photo.pixels.cols; ++col) {
        const cv::Vec3b code = photo.pixels.at<cv::Vec3b>(0, col);
        const double in[3] = {code[0] / 255.0, code[1] / 255.0, code[2] / 255.0};
        double out[3];
        cmsDoTransform(transform, in, out, 1);
        worst = std::max(worst, cv::norm(light_of(photo, col) - cv::Vec3d(out[0], out[1], out[2]), cv::NORM_INF));
    }
    cmsDeleteTransform(transform);
    cmsCloseProfile(source);
    cmsCloseProfile(linear);
    cmsFreeToneCurve(straight);
    return worst;
}

intake::Decoded decoded_or_fail(const QByteArray& file) {
    auto decoded = intake::decode(file);
    BOOST_REQUIRE_MESSAGE(decoded.ok(), (decoded.ok() ? "" : decoded.error().sentence()));
    return std::move(decoded.value());
}

bool noted(const intake::Decoded& decoded, const char* words) {
    return decoded.notes.join(';').contains(words);
}

}  // namespace

BOOST_AUTO_TEST_CASE(srgb_and_display_p3_reach_the_same_light_as_lcms2_in_every_container) {
    const QImage image = image_of(patches());
    for (const QByteArray& icc : {icc_srgb(), icc_display_p3()}) {
        QList<QByteArray> files = {png_with_icc(qt_file(image, "png"), icc),
                                   webp_with(qt_file(image, "webp"), image.size(), {}, icc)};
        QImage tagged = image;
        tagged.setColorSpace(QColorSpace::fromIccProfile(icc));
        files.append(qt_file(tagged, "tiff"));
        JpegOptions options;
        options.icc = icc;
        files.append(jpeg_file(patches(), options));
        for (const QByteArray& file : files) {
            const auto decoded = decoded_or_fail(file);
            BOOST_TEST(worst_against_lcms(decoded.photo, icc) < 1e-3, decoded.header.format.toStdString());
            BOOST_TEST(!noted(decoded, "taken as sRGB"));
        }
        if (const auto heic = heic_file(patches(), {.icc = icc}))
            BOOST_TEST(worst_against_lcms(decoded_or_fail(*heic).photo, icc) < 1e-3);
    }
}

BOOST_AUTO_TEST_CASE(display_p3_red_has_the_linear_srgb_values_that_the_primaries_give) {
    // (1.2249, -0.0421, -0.0196): linear-light Display P3 to sRGB, CSS Color 4's matrices; from memory.
    cv::Mat red(1, 1, CV_8UC3, cv::Scalar(255, 0, 0));
    const auto decoded = decoded_or_fail(png_with_icc(qt_file(image_of(red), "png"), icc_display_p3()));
    const cv::Vec3d light = light_of(decoded.photo, 0);
    BOOST_TEST(std::abs(light[0] - 1.2249) < 2e-3);
    BOOST_TEST(std::abs(light[1] + 0.0421) < 2e-3);
    BOOST_TEST(std::abs(light[2] + 0.0196) < 2e-3);
}

BOOST_AUTO_TEST_CASE(heic_code_points_for_display_p3_are_honoured) {
    const auto file = heic_file(patches(), {.p3 = true});
    if (!file) {
        BOOST_TEST_MESSAGE("skipped: this libheif has no HEVC encoder");
        return;
    }
    const auto decoded = decoded_or_fail(*file);
    BOOST_TEST(decoded.photo.colour.name == "Display P3");
    BOOST_TEST(worst_against_lcms(decoded.photo, icc_display_p3()) < 1e-3);
}

BOOST_AUTO_TEST_CASE(without_a_profile_srgb_is_taken_and_noted) {
    const auto decoded = decoded_or_fail(jpeg_file(patches()));
    BOOST_TEST(noted(decoded, "taken as sRGB"));
    BOOST_TEST(worst_against_lcms(decoded.photo, icc_srgb()) < 1e-3);
}

BOOST_AUTO_TEST_CASE(adobe_rgb_is_taken_from_exif_where_no_profile_says_otherwise) {
    JpegOptions options;
    options.exif = exif_block({.colour_space = 0xffff, .interoperability = "R03"});
    const auto decoded = decoded_or_fail(jpeg_file(patches(), options));
    BOOST_TEST(decoded.photo.colour.name == "Adobe RGB (1998)");
    // Adobe RGB (1998) 4.3.4.2: gamma 2.19921875
    BOOST_TEST(std::abs(decoded.photo.colour.linear[1][128] - std::pow(128 / 255.0, 2.19921875)) < 1e-4);
    options.exif = exif_block({.colour_space = 0xffff});
    BOOST_TEST(decoded_or_fail(jpeg_file(patches(), options)).photo.colour.name == "sRGB");
}

BOOST_AUTO_TEST_CASE(grey_profile_gives_its_curve_to_all_channels) {
    cv::Mat grey(1, 256, CV_8UC1);
    for (int i = 0; i < 256; ++i) grey.at<uchar>(0, i) = uchar(i);
    JpegOptions options;
    options.icc = icc_grey(1.8);
    const QImage image(grey.data, 256, 1, 256, QImage::Format_Grayscale8);
    for (const QByteArray& file : {jpeg_file(grey, options), png_with_icc(qt_file(image, "png"), icc_grey(1.8))}) {
        const auto decoded = decoded_or_fail(file);
        BOOST_TEST(!noted(decoded, "taken as sRGB"), decoded.notes.join(';').toStdString());
        for (int col : {0, 64, 200, 255}) {
            const cv::Vec3b code = decoded.photo.pixels.at<cv::Vec3b>(0, col);
            BOOST_TEST((code[0] == code[1] && code[1] == code[2]));
            const cv::Vec3d light = light_of(decoded.photo, col);
            for (int c = 0; c < 3; ++c) BOOST_TEST(std::abs(light[c] - std::pow(code[0] / 255.0, 1.8)) < 1e-3);
        }
    }
}

BOOST_AUTO_TEST_CASE(a_profile_of_colour_tables_is_converted_to_16_bit_srgb) {
    cv::Mat greys(1, 2, CV_8UC3);
    greys.at<cv::Vec3b>(0, 0) = cv::Vec3b(255, 255, 255);
    greys.at<cv::Vec3b>(0, 1) = cv::Vec3b(128, 128, 128);
    const auto decoded = decoded_or_fail(png_with_icc(qt_file(image_of(greys), "png"), icc_rgb_by_table()));
    BOOST_REQUIRE_MESSAGE((decoded.photo.pixels.type() == CV_16UC3), decoded.notes.join(';').toStdString());
    BOOST_TEST(noted(decoded, "converted"));
    // the table says L* = 100 mean(R, G, B): 50.2 for 128, Y = ((L* + 16) / 116)^3 by CIE 15
    const double y = std::pow((100 * 128 / 255.0 + 16) / 116, 3);
    for (int c = 0; c < 3; ++c) {
        BOOST_TEST(std::abs(light_of(decoded.photo, 0)[c] - 1) < 0.005);
        BOOST_TEST(std::abs(light_of(decoded.photo, 1)[c] - y) < 0.005);
    }
}

BOOST_AUTO_TEST_CASE(cmyk_jpeg_goes_through_its_profile_or_a_plain_rule_inverted_or_not) {
    cv::Mat inks(8, 24, CV_8UC4, cv::Scalar(0, 0, 0, 0));
    inks.colRange(8, 16).setTo(cv::Scalar(0, 0, 0, 128));
    inks.colRange(16, 24).setTo(cv::Scalar(0, 255, 255, 0));
    for (bool inverted : {true, false}) {
        JpegOptions options;
        options.inverted = inverted;
        const auto plain = decoded_or_fail(jpeg_file(inks, options));
        BOOST_REQUIRE((plain.photo.pixels.type() == CV_8UC3));
        BOOST_TEST(noted(plain, "approximate"));
        const cv::Vec3b paper = plain.photo.pixels.at<cv::Vec3b>(4, 4), half = plain.photo.pixels.at<cv::Vec3b>(4, 12),
                        red = plain.photo.pixels.at<cv::Vec3b>(4, 20);
        BOOST_TEST((paper[0] > 252 && paper[1] > 252 && paper[2] > 252));
        BOOST_TEST((std::abs(half[0] - 127) < 4 && std::abs(half[2] - 127) < 4));
        BOOST_TEST((red[0] > 250 && red[1] < 4 && red[2] < 4));

        options.icc = icc_cmyk();
        const auto exact = decoded_or_fail(jpeg_file(inks, options));
        BOOST_REQUIRE((exact.photo.pixels.type() == CV_16UC3));
        BOOST_TEST(light_of(exact.photo, 4)[1] > 0.98, "paper, inverted " << inverted);
        // L* = 100 (1 - 128/255), see icc_cmyk()
        const double y = std::pow((100 * (1 - 128 / 255.0) + 16) / 116, 3);
        BOOST_TEST(std::abs(light_of(exact.photo, 12)[1] - y) < 0.01);
    }
}

BOOST_AUTO_TEST_CASE(a_broken_profile_is_passed_over_and_noted) {
    JpegOptions options;
    options.icc = icc_display_p3();
    for (qsizetype i = 128; i < options.icc.size(); ++i) options.icc[i] = char(0xff);
    const auto decoded = decoded_or_fail(jpeg_file(patches(), options));
    BOOST_TEST(noted(decoded, "taken as sRGB"));
    BOOST_TEST(decoded.photo.colour.name == "sRGB");
}

BOOST_AUTO_TEST_CASE(alpha_is_laid_over_white_as_light_mixes) {
    QImage image(3, 1, QImage::Format_ARGB32);
    image.setPixel(0, 0, qRgba(10, 20, 30, 0));
    image.setPixel(1, 0, qRgba(100, 0, 200, 51));
    image.setPixel(2, 0, qRgba(100, 0, 200, 255));
    const auto decoded = decoded_or_fail(qt_file(image, "png"));
    BOOST_TEST(noted(decoded, "alpha"));
    BOOST_TEST((decoded.photo.pixels.at<cv::Vec3b>(0, 0) == cv::Vec3b(255, 255, 255)));
    BOOST_TEST((decoded.photo.pixels.at<cv::Vec3b>(0, 2) == cv::Vec3b(100, 0, 200)));
    for (int c = 0; c < 3; ++c) {
        const double light = 0.2 * colour::linear_from_srgb(cv::Vec3d(100, 0, 200)[c] / 255) + 0.8;
        BOOST_TEST(decoded.photo.pixels.at<cv::Vec3b>(0, 1)[c] == std::lround(255 * colour::srgb_from_linear(light)));
    }
    image.fill(qRgba(5, 6, 7, 255));
    BOOST_TEST(!noted(decoded_or_fail(qt_file(image, "png")), "alpha"));
}

BOOST_AUTO_TEST_SUITE_END()
