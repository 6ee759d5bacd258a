// Layout: nothing overlaps, nothing leaves its area, everything that is drawn lies inside the axes.
#include <QFontMetricsF>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "app/charts/samples.h"

using namespace kempt::charts;
using namespace kempt::charts::samples;

namespace {

ChartStyle style_of(double scale) {
    ChartStyle style;
    style.font = QFont(QStringLiteral("DejaVu Sans"));
    style.font.setPixelSize(static_cast<int>(13 * scale));
    return style;
}

QVector<ChartData> all_samples() {
    ChartData long_words = recovering(6);
    long_words.title = QStringLiteral("A view with quite a long name of its own that will not fit in a narrow chart");
    long_words.note =
        QStringLiteral("A note that is long enough to be broken into several lines when the chart is narrow.");
    ChartData same_day = recovering(3);
    for (Point& point : same_day.points) point.date = same_day.points.first().date;
    return {empty(),        recovering(1), recovering(2), recovering(3), recovering(6), recovering(12),
            recovering(60), crowded(),     open_end(),    long_words,    same_day};
}

void check(const Layout& layout, const std::string& what) {
    const auto rects = layout.text_rects();
    BOOST_TEST(!rects.isEmpty(), what);
    for (int i = 0; i < rects.size(); ++i) {
        BOOST_TEST(layout.area.adjusted(-1, -1, 1, 1).contains(rects[i]), what << ": text " << i << " leaves the area");
        for (int j = i + 1; j < rects.size(); ++j) {
            const QRectF both = rects[i] & rects[j];
            BOOST_TEST((both.isEmpty() || both.width() < 0.5 || both.height() < 0.5),
                       what << ": texts " << i << " and " << j << " overlap");
        }
        if (!layout.plot.isNull()) {
            const QRectF in_plot = rects[i] & layout.plot;
            BOOST_TEST((in_plot.isEmpty() || in_plot.height() < 0.5), what << ": text " << i << " lies in the plot");
        }
    }
}

}  // namespace

BOOST_AUTO_TEST_CASE(no_two_texts_overlap_at_any_size_or_font_size) {
    const auto samples = all_samples();
    for (const double scale : {1.0, 1.5, 2.0})
        for (const double width : {280.0, 420.0, 700.0, 1200.0})
            for (int i = 0; i < samples.size(); ++i) {
                const ChartStyle style = style_of(scale);
                for (const double height : {good_height(samples[i], width, style), 260 * scale})
                    check(lay_out(samples[i], QRectF(10, 20, width, height), style),
                          "sample " + std::to_string(i) + " width " + std::to_string(int(width)) + " height " +
                              std::to_string(int(height)) + " scale " + std::to_string(scale));
            }
}

BOOST_AUTO_TEST_CASE(every_visit_band_and_target_lies_inside_the_axes) {
    for (const ChartData& data : all_samples()) {
        const Layout layout = lay_out(data, QRectF(0, 0, 640, 420), style_of(1));
        if (data.points.isEmpty()) continue;
        const QRectF plot = layout.plot.adjusted(-0.01, -0.01, 0.01, 0.01);
        for (const Point& point : data.points)
            for (const double value : {point.value, point.low, point.high})
                BOOST_TEST(plot.contains(QPointF(layout.x_of(point.date), layout.y_of(value))));
        if (data.target) BOOST_TEST((layout.values.low <= *data.target && *data.target <= layout.values.high));
        if (data.noise) BOOST_TEST(layout.values.high - layout.values.low >= 2 * data.noise->half_width);
        BOOST_TEST(layout.values.low >= 0);
        BOOST_TEST(layout.plot.width() > 300);
    }
}

BOOST_AUTO_TEST_CASE(good_height_keeps_the_whole_key) {
    for (const double scale : {1.0, 2.0})
        for (const double width : {300.0, 900.0}) {
            const ChartData data = recovering(6);
            const Layout layout =
                lay_out(data, QRectF(0, 0, width, good_height(data, width, style_of(scale))), style_of(scale));
            BOOST_TEST(layout.plot.height() >= 8 * layout.em);
            QVector<KeyMark> marks;
            for (const KeyEntry& item : layout.key) marks.append(item.mark);
            for (const KeyMark mark : {KeyMark::reading, KeyMark::excluded, KeyMark::band, KeyMark::trend,
                                       KeyMark::target, KeyMark::forecast})
                BOOST_TEST(marks.contains(mark));
        }
}

BOOST_AUTO_TEST_CASE(a_small_chart_gives_up_its_key_before_its_plot) {
    const Layout layout = lay_out(recovering(6), QRectF(0, 0, 300, 130), style_of(1));
    BOOST_TEST(layout.key.isEmpty());
    BOOST_TEST(layout.plot.height() > 2 * layout.em);
}

BOOST_AUTO_TEST_CASE(every_service_shows_with_its_label_or_a_letter_that_the_key_explains) {
    ChartData few = recovering(6);
    few.services = {{few.points[1].date, QStringLiteral("gloss")}, {few.points[4].date, QStringLiteral("trim")}};
    const Layout wide = lay_out(few, QRectF(0, 0, 900, 500), style_of(1));
    BOOST_REQUIRE(wide.tags.size() == 2);
    BOOST_TEST(wide.tags[0].text.toStdString() == "gloss");

    const ChartData data = recovering(6);
    const Layout narrow = lay_out(data, QRectF(0, 0, 320, 500), style_of(1));
    int lines = 0;
    for (const ServiceTag& tag : narrow.tags) lines += static_cast<int>(tag.xs.size());
    BOOST_TEST(lines == data.services.size());
    QStringList letters;
    for (const KeyEntry& item : narrow.key)
        if (item.mark == KeyMark::service) letters.append(item.letter + QStringLiteral(" ") + item.label.text);
    BOOST_TEST(letters.join(QStringLiteral(", ")).toStdString() == "A hydroxide straightener, B gloss, C trim");
}

BOOST_AUTO_TEST_CASE(a_service_years_before_the_first_visit_does_not_squeeze_the_chart) {
    ChartData data = recovering(6);
    data.services = {{QDate(2019, 5, 1), QStringLiteral("hydroxide straightener")}};
    const Layout layout = lay_out(data, QRectF(0, 0, 640, 420), style_of(1));
    BOOST_TEST(layout.tags.isEmpty());
    BOOST_TEST(layout.from.year() == 2025);
}

BOOST_AUTO_TEST_CASE(a_far_forecast_leaves_the_visits_two_fifths_of_the_width) {
    ChartData data = recovering(6);
    data.services.clear();
    data.forecast->latest = data.points.last().date.addYears(5);
    const Layout layout = lay_out(data, QRectF(0, 0, 640, 420), style_of(1));
    const double visits = layout.x_of(data.points.last().date) - layout.x_of(data.points.first().date);
    BOOST_TEST(visits >= 0.34 * layout.plot.width());
}

BOOST_AUTO_TEST_CASE(no_readings_give_a_sentence_and_no_axes) {
    const Layout layout = lay_out(empty(), QRectF(0, 0, 640, 420), style_of(1));
    BOOST_REQUIRE(layout.empty.has_value());
    BOOST_TEST(layout.empty->text.toStdString() ==
               "No readings yet. Photograph this view with the gauge card, and its chart begins here.");
    BOOST_TEST(layout.plot.isNull());
    BOOST_TEST(layout.value_labels.isEmpty());
    ChartData broken = empty();
    broken.points.append(visit(QDate(), 3, 1));
    broken.points.append(visit(QDate(2026, 1, 1), std::nan(""), 1));
    broken.empty_text = QStringLiteral("Nothing yet.");
    BOOST_TEST(lay_out(broken, QRectF(0, 0, 640, 420), style_of(1)).empty->text.toStdString() == "Nothing yet.");
}

BOOST_AUTO_TEST_CASE(the_pointer_finds_the_visit_under_it) {
    const ChartData data = recovering(6);
    const Layout layout = lay_out(data, QRectF(0, 0, 640, 420), style_of(1));
    for (int i = 0; i < data.points.size(); ++i) {
        const QPointF at(layout.x_of(data.points[i].date) + 2, layout.y_of(data.points[i].value) - 2);
        BOOST_TEST(point_at(layout, data, at, 10).value() == i);
    }
    BOOST_TEST(!point_at(layout, data, QPointF(0, 0), 10).has_value());
    BOOST_TEST(!point_at(lay_out(empty(), QRectF(0, 0, 640, 420), style_of(1)), empty(), QPointF(300, 200), 500));
}
