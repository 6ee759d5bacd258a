// Pictures and files made in memory, so that what is in them is known.
#pragma once

#include <QByteArray>
#include <QImage>
#include <opencv2/core.hpp>
#include <optional>

namespace kempt::test {

// Smooth and without symmetry, so that every turn of it shows; CV_8UC3, R G B.
[[nodiscard]] cv::Mat scene(int width, int height);
// The pixels a file must store so that `upright` comes out by EXIF orientation 1..8 (by the words of EXIF 2.32).
[[nodiscard]] cv::Mat stored_for(const cv::Mat& upright, int orientation);
[[nodiscard]] double mean_difference(const cv::Mat& one, const cv::Mat& two);

struct Exif {
    int orientation = 1;
    QByteArray taken = {}, offset = {}, camera_maker = {}, camera_model = {};
    int colour_space = 1;
    QByteArray interoperability = {};  // "R98", "R03"
};
// From the TIFF header on, without "Exif\0\0".
[[nodiscard]] QByteArray exif_block(const Exif& exif);

struct JpegOptions {
    QByteArray exif = {}, icc = {};
    bool progressive = false;
    bool inverted = true;  // CMYK as Adobe writes it
    int quality = 100;
};
// CV_8UC1 grey, CV_8UC3 RGB, CV_8UC4 CMYK (255: full ink).
[[nodiscard]] QByteArray jpeg_file(const cv::Mat& pixels, const JpegOptions& options = {});

[[nodiscard]] QImage image_of(const cv::Mat& rgb);
[[nodiscard]] QByteArray qt_file(const QImage& image, const char* format, int orientation = 1);
// One chunk with its length and check sum.
[[nodiscard]] QByteArray png_chunk(const QByteArray& type, const QByteArray& data);
// A chunk put in front of the first IDAT.
[[nodiscard]] QByteArray with_png_chunk(const QByteArray& png, const QByteArray& type, const QByteArray& data);
[[nodiscard]] QByteArray png_with_icc(const QByteArray& png, const QByteArray& icc);
// Lossless WebP as Qt writes it, with more chunks around it.
[[nodiscard]] QByteArray webp_with(const QByteArray& webp, QSize size, const QByteArray& exif, const QByteArray& icc);

struct HeicOptions {
    QByteArray exif = {}, icc = {};
    int turn = 1;     // EXIF number of the container's own turning
    bool p3 = false;  // says Display P3 by code points
    bool ten_bits = false;
};
// Nothing where this libheif has no HEVC encoder.
[[nodiscard]] std::optional<QByteArray> heic_file(const cv::Mat& rgb, const HeicOptions& options = {});

// ICC profiles made with lcms2.
[[nodiscard]] QByteArray icc_srgb();
[[nodiscard]] QByteArray icc_display_p3();
[[nodiscard]] QByteArray icc_grey(double gamma);
[[nodiscard]] QByteArray icc_rgb_by_table();  // a colour table instead of curves and a matrix
// CMYK by a colour table whose L* is 100 (1 - K)(1 - mean of C, M, Y), neutral.
[[nodiscard]] QByteArray icc_cmyk();

}  // namespace kempt::test
