// Painting: what should be there is there, on screen and in a PDF; colours can be told from their ground.
// With KEMPT_CHART_SAMPLES set to a folder, every sample is also written there as PNG, to be looked at.
#include <QBuffer>
#include <QDir>
#include <QFontMetricsF>
#include <QImage>
#include <QPdfWriter>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "app/charts/samples.h"

using namespace kempt::charts;
using namespace kempt::charts::samples;

namespace {

// WCAG 2.1 relative luminance and contrast ratio.
double luminance(const QColor& colour) {
    const auto linear = [](double code) {
        return code <= 0.04045 ? code / 12.92 : std::pow((code + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}
double contrast(const QColor& one, const QColor& two) {
    const double a = luminance(one), b = luminance(two);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QImage painted(const ChartData& data, int width, int height, double scale, const Palette& palette) {
    ChartStyle style;
    style.font = QFont(QStringLiteral("DejaVu Sans"));
    style.font.setPixelSize(static_cast<int>(13 * scale));
    style.palette = palette;
    if (height == 0) height = static_cast<int>(good_height(data, width, style));
    QImage image(width, height, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    paint(painter, data, QRectF(0, 0, width, height), style);
    return image;
}

int pixels_near(const QImage& image, const QColor& colour, int tolerance = 24) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QColor at = image.pixelColor(x, y);
            count += std::abs(at.red() - colour.red()) + std::abs(at.green() - colour.green()) +
                         std::abs(at.blue() - colour.blue()) <
                     tolerance;
        }
    return count;
}

}  // namespace

BOOST_AUTO_TEST_CASE(both_palettes_keep_the_contrast_of_wcag_2_1) {
    for (const Palette& p : {light_palette(), dark_palette()}) {
        for (const QColor& text : {p.ink, p.ink_soft, p.service}) BOOST_TEST(contrast(text, p.ground) >= 4.5);
        for (const QColor& shape : {p.reading, p.shot, p.band_edge, p.target, p.trend, p.service}) {
            BOOST_TEST(contrast(shape, p.ground) >= 3, shape.name().toStdString());
            BOOST_TEST(contrast(shape, p.band) >= 3, shape.name().toStdString() << " on the band");
        }
    }
}

BOOST_AUTO_TEST_CASE(everything_the_data_hold_is_painted) {
    for (const Palette& p : {light_palette(), dark_palette()}) {
        const QImage image = painted(recovering(6), 900, 0, 1, p);
        for (const QColor& colour : {p.ground, p.reading, p.shot, p.band, p.target, p.trend, p.service})
            BOOST_TEST(pixels_near(image, colour) > 15, colour.name().toStdString());
        BOOST_TEST(pixels_near(image, Qt::magenta) == 0);
        ChartData bare = recovering(6);
        bare.noise.reset();
        bare.target.reset();
        bare.trend.reset();
        bare.forecast.reset();
        bare.services.clear();
        const QImage without = painted(bare, 900, 0, 1, p);
        BOOST_TEST(pixels_near(without, p.band, 6) == 0);
        BOOST_TEST(pixels_near(without, p.target, 6) == 0);
        BOOST_TEST(pixels_near(without, p.reading) > 50);
    }
}

BOOST_AUTO_TEST_CASE(an_empty_chart_paints_its_sentence_without_a_frame) {
    const Palette p = light_palette();
    const QImage image = painted(empty(), 640, 300, 1, p);
    BOOST_TEST(pixels_near(image, p.ink_soft, 60) > 200);
    BOOST_TEST(pixels_near(image, p.grid, 6) == 0);
}

BOOST_AUTO_TEST_CASE(the_same_chart_goes_into_a_pdf) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    BOOST_REQUIRE(buffer.open(QIODevice::WriteOnly));
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(600);
        QPainter painter(&writer);
        ChartStyle style;
        style.font = QFont(QStringLiteral("DejaVu Sans"), 9);
        const Layout layout = paint(painter, recovering(6), QRectF(0, 0, 4000, 3000), style);
        // 9 points at 600 dots an inch are 75 dots; a line of text is 1.1 to 1.4 times that.
        BOOST_TEST(layout.em > 75);
        BOOST_TEST(layout.em < 110);
    }
    BOOST_TEST(bytes.startsWith("%PDF"));
    BOOST_TEST(bytes.size() > 3000);
}

BOOST_AUTO_TEST_CASE(painting_leaves_the_painter_as_it_was) {
    QImage image(400, 300, QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setPen(Qt::red);
    painter.setFont(QFont(QStringLiteral("DejaVu Sans"), 17));
    paint(painter, recovering(6), QRectF(0, 0, 400, 300), {});
    BOOST_TEST((painter.pen().color() == QColor(Qt::red)));
    BOOST_TEST(painter.font().pointSize() == 17);
    BOOST_TEST(!painter.testRenderHint(QPainter::Antialiasing));
}

BOOST_AUTO_TEST_CASE(the_chart_can_be_told_in_words) {
    const std::string words = in_words(recovering(6)).toStdString();
    for (const char* part :
         {"Left temple, edge coverage: 6 visits", "4 November 2025", "Target: 65", "Not comparable: 1",
          "cannot be told from chance", "Trend: up", "Target foreseen: ", "gloss"})
        BOOST_TEST(words.find(part) != std::string::npos, part << " in " << words);
    BOOST_TEST(in_words(empty()).toStdString() == "Left temple, edge coverage: no readings yet.");
    BOOST_TEST(in_words(recovering(1)).contains(QStringLiteral("one visit")));
    BOOST_TEST(in_words(open_end()).contains(QStringLiteral("no latest date")));
}

BOOST_AUTO_TEST_CASE(samples_of_every_size_paint) {
    const QString folder = qEnvironmentVariable("KEMPT_CHART_SAMPLES");
    const QVector<QPair<QString, ChartData>> samples = {
        {QStringLiteral("none"), empty()},      {QStringLiteral("01"), recovering(1)},
        {QStringLiteral("02"), recovering(2)},  {QStringLiteral("06"), recovering(6)},
        {QStringLiteral("60"), recovering(60)}, {QStringLiteral("crowded"), crowded()},
        {QStringLiteral("open"), open_end()}};
    for (const auto& [name, data] : samples)
        for (const int width : {360, 1000})
            for (const double scale : {1.0, 2.0})
                for (const bool dark : {false, true}) {
                    const Palette palette = dark ? dark_palette() : light_palette();
                    const QImage image = painted(data, width, 0, scale, palette);
                    BOOST_TEST(pixels_near(image, palette.ground, 6) > image.width() * image.height() / 4);
                    if (folder.isEmpty()) continue;
                    BOOST_TEST(image.save(QDir(folder).filePath(QStringLiteral("%1-%2-%3%4.png")
                                                                    .arg(name)
                                                                    .arg(width)
                                                                    .arg(static_cast<int>(100 * scale))
                                                                    .arg(dark ? QStringLiteral("-dark") : QString()))));
                }
}
