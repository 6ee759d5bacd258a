#include <QImage>
#include <QProcess>
#include <QTemporaryDir>
#include <boost/test/unit_test.hpp>

#include "app/report/pdf_tools.h"
#include "card/calibration.h"
#include "colour/colour.h"
#include "report/gauge_pdf.h"

using namespace kempt;
using report::GaugeOptions;

namespace {

QByteArray made(const GaugeOptions& options, const QString& name) {
    const Result<QByteArray> pdf = report::gauge_pdf(options);
    BOOST_REQUIRE_MESSAGE(pdf.ok(), (pdf.ok() ? std::string() : pdf.error().sentence()));
    report::tools::keep_for_looking(name + QStringLiteral(".pdf"), *pdf);
    return *pdf;
}

// The page as poppler renders it.
QImage rendered(const QByteArray& pdf, int dpi) {
    QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("gauge.pdf")));
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(pdf);
    file.close();
    QProcess process;
    process.start(QStringLiteral("pdftoppm"),
                  {QStringLiteral("-r"), QString::number(dpi), QStringLiteral("-png"), QStringLiteral("-singlefile"),
                   file.fileName(), folder.filePath(QStringLiteral("page"))});
    BOOST_REQUIRE(process.waitForFinished(120000) && process.exitCode() == 0);
    return QImage(folder.filePath(QStringLiteral("page.png"))).convertToFormat(QImage::Format_RGB888);
}

Photo photo_of(const QImage& image) {
    Photo photo;
    photo.colour = colour::srgb_encoding();
    const cv::Mat view(image.height(), image.width(), CV_8UC3, const_cast<uchar*>(image.constBits()),
                       static_cast<size_t>(image.bytesPerLine()));
    photo.pixels = view.clone();
    return photo;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(gauge_pdf)

BOOST_AUTO_TEST_CASE(card_measures_right_on_the_page_with_and_without_correction) {
    for (const double scale : {1.0, 1.04}) {
        GaugeOptions options;
        options.printer_scale = scale;
        const Photo page = photo_of(rendered(made(options, QStringLiteral("gauge-card-%1").arg(scale)), 400));
        const card::Calibration found = card::calibrate(page);
        BOOST_REQUIRE(found.card_found);
        BOOST_CHECK_CLOSE(found.px_per_mm, 400 / 25.4 / scale, 0.1);
        BOOST_REQUIRE(found.light);
        BOOST_CHECK_LT(found.light->ramp_residual, 0.004);
        // Flat light and a straight tone curve: the printed greys are the layout's reflectances.
        for (int c = 0; c < 3; ++c) BOOST_CHECK_CLOSE(found.light->gains[c], 1, 1);
    }
}

BOOST_AUTO_TEST_CASE(check_line_is_50_mm_between_its_end_strokes) {
    const QImage page = rendered(made({}, QStringLiteral("gauge-card-line")), 400);
    // The longest dark run of all rows but the markers' (10 mm) is the line itself.
    int longest = 0;
    for (int y = page.height() / 4; y < page.height(); ++y) {
        int run = 0;
        for (int x = 0; x < page.width(); ++x) {
            run = qGray(page.pixel(x, y)) < 128 ? run + 1 : 0;
            longest = std::max(longest, run);
        }
    }
    // End strokes are 0.2 mm wide and stand with their middles on the line's ends.
    BOOST_CHECK_SMALL(longest / 400.0 * 25.4 - 50.2, 0.1);
}

BOOST_AUTO_TEST_CASE(sheets_have_their_paper_and_markers) {
    for (const card::Paper paper : {card::Paper::letter, card::Paper::a4}) {
        GaugeOptions options;
        options.kind = card::Kind::sheet;
        options.paper = paper;
        const QImage page = rendered(made(options, paper == card::Paper::a4 ? QStringLiteral("gauge-sheet-a4")
                                                                            : QStringLiteral("gauge-sheet-letter")),
                                     200);
        BOOST_CHECK_SMALL(page.width() / 200.0 * 25.4 - card::paper_size_mm(paper).width, 0.3);
        BOOST_CHECK_SMALL(page.height() / 200.0 * 25.4 - card::paper_size_mm(paper).height, 0.3);
        const card::Calibration found = card::calibrate(photo_of(page));
        BOOST_REQUIRE(found.sheet_found);
        BOOST_CHECK_CLOSE(found.px_per_mm, 200 / 25.4, 0.1);
    }
}

BOOST_AUTO_TEST_CASE(the_blue_sheet_is_a_vector_and_says_itself_that_it_is_blue) {
    for (const card::Paper paper : {card::Paper::letter, card::Paper::a4}) {
        GaugeOptions options;
        options.kind = card::Kind::sheet;
        options.paper = paper;
        options.ground = card::Ground::blue;
        const QString name =
            paper == card::Paper::a4 ? QStringLiteral("gauge-blue-a4") : QStringLiteral("gauge-blue-letter");
        const QByteArray pdf = made(options, name);
        BOOST_CHECK(!pdf.contains("/Subtype /Image"));
        BOOST_CHECK(report::tools::text_of(pdf).simplified().contains(QStringLiteral("Print in colour at 100 %")));
        const QImage page = rendered(pdf, 200);
        const card::Calibration found = card::calibrate(photo_of(page));
        BOOST_REQUIRE(found.sheet);
        BOOST_CHECK(found.sheet->ground == card::Ground::blue);
        BOOST_CHECK(found.sheet->paper == paper);
        BOOST_CHECK_CLOSE(found.px_per_mm, 200 / 25.4, 0.1);
        // Blue in the middle, white around the markers and along the rim.
        const auto at = [&](double x, double y) { return page.pixelColor(int(x * 200 / 25.4), int(y * 200 / 25.4)); };
        BOOST_CHECK_GT(at(100, 150).blue(), 3 * at(100, 150).red());
        for (const auto& [x, y] : {std::pair(3.0, 150.0), {27.0, 15.0}, {100.0, 270.0}, {100.0, 1.0}})
            BOOST_CHECK_GE(at(x, y).red(), 250);
    }
}

BOOST_AUTO_TEST_CASE(pages_are_vectors_and_say_what_to_do) {
    const QByteArray pdf = made({}, QStringLiteral("gauge-card-words"));
    BOOST_CHECK(!pdf.contains("/Subtype /Image"));
    const QString text = report::tools::text_of(pdf).simplified();
    BOOST_CHECK(text.contains(QStringLiteral("Check line: 50 mm")));
    BOOST_CHECK(text.contains(QStringLiteral("Print at 100 %")));
    BOOST_CHECK_EQUAL(report::tools::pages_of(pdf), 1);
}

BOOST_AUTO_TEST_CASE(a_book_is_never_written_over) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("b.kempt"));
    const QByteArray book("SQLite format 3\0 and all that is in it", 38);
    QFile file(path);
    BOOST_REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(book);
    file.close();
    const Status refused = report::write_gauge({}, path);
    BOOST_REQUIRE(!refused.ok());
    BOOST_TEST(refused.error().code == "target-is-a-book");
    BOOST_REQUIRE(file.open(QIODevice::ReadOnly));
    BOOST_TEST((file.readAll() == book));
    file.close();
    BOOST_TEST(file.remove());
    BOOST_TEST(report::write_gauge({}, path).ok());
    BOOST_TEST(report::write_gauge({}, path).ok());  // over its own
}

BOOST_AUTO_TEST_CASE(impossible_corrections_are_refused) {
    for (const double scale : {0.5, 1.2, std::nan("")}) {
        GaugeOptions options;
        options.printer_scale = scale;
        BOOST_CHECK(!report::gauge_pdf(options).ok());
    }
}

BOOST_AUTO_TEST_SUITE_END()
