#include <QImage>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "app/report/example_model.h"
#include "app/report/pdf_tools.h"
#include "report/report_pages.h"
#include "report/report_pdf.h"

using namespace kempt;
using namespace kempt::report;

namespace {

std::shared_ptr<const ReportPages> laid_out(const Model& model, const Options& options) {
    const auto pages = ReportPages::lay_out(std::make_shared<const Model>(model), options);
    BOOST_REQUIRE(pages.ok());
    return *pages;
}

double dark_share(const QImage& image) {
    int dark = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, y)) < 160 ? 1 : 0;
    return static_cast<double>(dark) / (image.width() * image.height());
}

}  // namespace

BOOST_AUTO_TEST_SUITE(report_pages)

// poppler reads the PDF's bytes and paints them on its own; the window paints the pages with Qt.
BOOST_AUTO_TEST_CASE(what_the_window_shows_is_what_the_pdf_holds) {
    const Model model = example::six_visits();
    const Options options{Copy::client, Paper::a4, LengthUnit::millimetres};
    const auto pages = laid_out(model, options);
    const auto pdf = report_pdf(model, options);
    BOOST_REQUIRE(pdf.ok());
    BOOST_REQUIRE_EQUAL(pages->count(), tools::pages_of(*pdf));
    BOOST_CHECK_CLOSE(pages->size_points().width(), 595.28, 0.1);
    for (int page = 0; page < pages->count(); ++page) {
        const QImage theirs = tools::picture_of(*pdf, page + 1);
        const QImage ours =
            pages->picture(page, theirs.width()).scaled(theirs.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        // Letters are drawn by two rasterisers: compared over blocks of 8 x 8 pixels.
        const QSize blocks(theirs.width() / 8, theirs.height() / 8);
        const QImage a = ours.scaled(blocks, Qt::IgnoreAspectRatio, Qt::SmoothTransformation),
                     b = theirs.scaled(blocks, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        double apart = 0;
        for (int y = 0; y < blocks.height(); ++y)
            for (int x = 0; x < blocks.width(); ++x) apart += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y)));
        BOOST_TEST_MESSAGE("page " << page + 1 << ": " << apart / (blocks.width() * blocks.height()));
        BOOST_CHECK_LT(apart / (blocks.width() * blocks.height()), 6);
        BOOST_CHECK_GT(dark_share(ours), 0.002);
    }
    BOOST_CHECK(pages->picture(pages->count(), 300).isNull() || dark_share(pages->picture(pages->count(), 300)) == 0);
}

BOOST_AUTO_TEST_CASE(parts_are_left_out_one_by_one_and_what_always_stands_stays) {
    const Model model = example::six_visits();
    const struct {
        bool Parts::*part;
        const char* heading;
    } cases[] = {{&Parts::pictures, "Before and after"}, {&Parts::readings, "Smallest"},
                 {&Parts::charts, "Over the visits"},    {&Parts::targets, "The way to the client"},
                 {&Parts::services, "Services"},         {&Parts::grades, "grades"},
                 {&Parts::left_out, "Left out, and why"}};
    const auto text_with = [&](const Parts& parts) {
        Options options{Copy::client, Paper::a4, LengthUnit::millimetres};
        options.parts = parts;
        const auto pdf = report_pdf(model, options);
        BOOST_REQUIRE(pdf.ok());
        return tools::text_of(*pdf);
    };
    const QString whole = text_with({});
    Parts none;
    for (const auto& one : cases) {
        BOOST_CHECK_MESSAGE(whole.contains(QString::fromUtf8(one.heading)), one.heading << " is in the whole report");
        Parts parts;
        parts.*one.part = none.*one.part = false;
        if (one.part != &Parts::grades)  // other parts speak of grades too
            BOOST_CHECK_MESSAGE(!text_with(parts).contains(QString::fromUtf8(one.heading)),
                                one.heading << " is left out");
    }
    const QString bare = text_with(none);
    for (const char* stays : {"Condition report", "In short", "How it was measured", "Cautions"})
        BOOST_CHECK_MESSAGE(bare.contains(QString::fromUtf8(stays)), stays << " stays");
    BOOST_CHECK_LT(bare.size(), whole.size());
}

BOOST_AUTO_TEST_SUITE_END()
