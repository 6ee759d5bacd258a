// What was measured, as it is drawn over the photo and told beside it.
#include <QLabel>
#include <boost/test/unit_test.hpp>

#include "colour/colour.h"
#include "desk/photo/measured_overlay.h"
#include "desk/photo/readings_panel.h"
#include "desk/photo/tone_details.h"
#include "room.h"
#include "shine/profile_luster.h"

using namespace kempt;
using namespace kempt::desk;

namespace {

colour::Lab lab_of(const QColor& c) {
    return colour::lab_from_linear_srgb({colour::linear_from_srgb(c.redF()), colour::linear_from_srgb(c.greenF()),
                                         colour::linear_from_srgb(c.blueF())});
}

}  // namespace

BOOST_AUTO_TEST_SUITE(overlay)

BOOST_AUTO_TEST_CASE(everything_that_a_measurement_found_passes_through_to_what_is_drawn) {
    work::MeasureResult result;
    result.header.size = QSize(400, 300);
    result.px_per_mm = 10;
    result.shine.emplace();
    result.shine->outline_px = {{10, 10}, {60, 10}, {60, 110}, {10, 110}};
    result.shine->crest_px = {{10, 60}, {60, 62}};
    result.shine->half_zone_px = {{10, 50}, {60, 50}, {60, 70}, {10, 70}};
    result.shine->fibre_axis_px = {{35, 20}, {35, 100}};
    result.shine->total = {0.2, 0.3, 0.6, 0.3, 0.2};
    result.shine->surface = {0, 0.1, 0.4, 0.1, 0};
    result.shine->step_mm = 2;
    result.tone.emplace();
    result.tone->root = colour::Lab{25, 6, 10};
    result.tone->profile = {{25, 6, 10}, {25, 6, 10}, {40, 8, 20}, {40, 8, 20}};
    result.tone->path_px = {{100, 10}, {100, 20}, {100, 30}, {100, 40}};
    result.tone->lane_px = {{70, 10}, {130, 10}, {130, 40}, {70, 40}};
    result.tone->step_mm = 1;
    result.tone->length_mm = 4;
    result.tone->lane_mm = 10;
    tone::Demarcation line;
    line.step = 12;
    line.at_mm = 38;
    line.at_low = 36;
    line.at_high = 40;
    line.at_px = {100, 25};
    result.tone->lines = {line};
    result.ends.emplace();
    result.ends->hem_px = {{10, 200}, {90, 205}};
    result.ends->cover = cv::Mat(10, 20, CV_8UC1, cv::Scalar(0));
    result.ends->cover(cv::Rect(5, 2, 4, 3)) = 255;
    result.ends->px_from_cover = cv::Matx33f(2, 0, 100, 0, 2, 200, 0, 0, 1);
    result.combings.emplace();
    combings::Strand found;
    found.path_px = {{10, 10}, {60, 10}, {110, 30}};
    found.length_mm = 10.4;
    found.doubtful = true;
    result.combings->strands = {found, found};
    result.combings->unresolved_px = {{{1, 2}, {3, 4}}};
    result.combings->dim_px = {{{5, 6}, {7, 8}}};

    const Overlay out = overlay_from(result);
    BOOST_TEST_REQUIRE(out.shine.has_value());
    BOOST_TEST(out.shine->crest.size() == 2);
    BOOST_TEST(out.shine->half_zone.size() == 4);
    BOOST_TEST(out.shine->total.size() == 5);
    BOOST_TEST_REQUIRE(out.tone.has_value());
    BOOST_TEST(!out.tone->end.has_value());
    BOOST_TEST(out.tone->mixed_over_mm == 0);
    result.tone->mixed = true;
    result.tone->lane_mm = 24;
    BOOST_TEST(overlay_from(result).tone->mixed_over_mm == 24);
    BOOST_TEST(colour::ciede2000(lab_of(out.tone->root->colour), {25, 6, 10}) < 1.0);  // eight bits of sRGB
    BOOST_TEST_REQUIRE(out.tone->lines.size() == 1);
    const QLineF tick = out.tone->lines[0].tick;  // across the lane, wider than it
    BOOST_TEST(std::abs(tick.dy()) < 1e-6);
    BOOST_TEST(tick.length() > 60.0);
    // 38 mm at the published rates of about 0.25 to 0.41 mm a day: some 13 to 22 weeks and a margin around them.
    BOOST_TEST(out.tone->lines[0].weeks_low < 14);
    BOOST_TEST(out.tone->lines[0].weeks_high > 20);
    BOOST_TEST_REQUIRE(out.ends.has_value());
    BOOST_TEST(out.ends->hem.size() == 2);
    // Cover pixel (5..8, 2..4) lies at photo pixel (110..118, 204..210).
    const Cover& cover = out.ends->cover;
    const auto alpha = [&cover](int x, int y) {
        return qAlpha(cover.tint.pixel(x - static_cast<int>(cover.where.x()), y - static_cast<int>(cover.where.y())));
    };
    BOOST_TEST(alpha(114, 206) > 100);
    BOOST_TEST(alpha(104, 206) == 0);
    BOOST_TEST(alpha(114, 215) == 0);
    BOOST_TEST_REQUIRE(out.combings.has_value());
    BOOST_TEST(out.combings->strands.size() == 2);
    BOOST_TEST(out.combings->strands[0].doubtful);
    BOOST_TEST(out.combings->strands[0].colour != out.combings->strands[1].colour);
    BOOST_TEST(out.combings->unresolved.size() == 2);  // with where a dim one may lie
}

BOOST_AUTO_TEST_CASE(the_width_drawn_in_the_plot_is_the_width_that_was_read) {
    work::MeasureResult result;
    result.shine.emplace();
    shine::ShineReadings& shine = *result.shine;
    shine.step_mm = 0.5;
    for (int i = 0; i < 120; ++i) {
        const double highlight = 0.3 * std::exp(-std::pow((i - 50) / (i < 50 ? 9.0 : 15.0), 2));
        shine.surface.push_back(highlight);
        shine.total.push_back(0.1 + 0.001 * i + highlight);
    }
    const Overlay out = overlay_from(result);
    BOOST_TEST(out.shine->half_to_mm - out.shine->half_from_mm == shine::luster_of(shine.surface, shine.step_mm).width,
               boost::test_tools::tolerance(1e-9));
    // The dull light, 0.1 to 0.219, over a twentieth at each end.
    BOOST_TEST(out.shine->base_first == 0.1025, boost::test_tools::tolerance(1e-6));
    BOOST_TEST(out.shine->base_last == 0.2165, boost::test_tools::tolerance(1e-3));
}

BOOST_AUTO_TEST_CASE(the_panel_shows_what_was_asked_and_tells_what_else_could_be) {
    ReadingsPanel panel;
    panel.resize(300, 900);
    panel.set_view(View::lengths);
    Measured measured;
    measured.asked = {ReadingGroup::tone};
    measured.readings = {{"tone_spread", "dE00", 11.2, 10.1, 12.3, false, {}},
                         {"tone_level", "level", 0, 0, 0, true, "The mid-shaft is in shadow."}};
    measured.overlay.tone.emplace();
    measured.overlay.tone->root = ToneSwatch{QColor(60, 45, 38), 22, 7, 10};
    panel.show_measured(measured, true);
    panel.show();
    BOOST_TEST(panel.shown("tone_spread").startsWith("11"));
    BOOST_TEST(panel.shown("tone_level").isEmpty());
    BOOST_TEST(panel.section(ReadingGroup::tone)->isVisible());
    BOOST_TEST(!panel.section(ReadingGroup::edges)->isVisible());
    QStringList words;
    for (const QLabel* label : panel.findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    BOOST_TEST(words.contains("Not given: The mid-shaft is in shadow."));
    BOOST_TEST(words.join("|").contains("lightness 22, 7 towards red, 10 towards yellow"));
    BOOST_TEST(words.join("|").contains("Could be measured on this photo: shine."));
    BOOST_TEST(!words.contains("Tone"));  // a heading only where there are several
    BOOST_TEST(!words.join("|").contains("Mixed hair"));
    measured.overlay.tone->mixed_over_mm = 24;
    measured.asked.prepend(ReadingGroup::shine);
    measured.readings.prepend({"alignment", "-", 0.8, 0.7, 0.9, false, {}});
    panel.show_measured(measured, true);
    QTest::qWait(1);  // parts that are new to the window come to sight
    words.clear();
    for (const QLabel* label : panel.findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    BOOST_TEST(words.contains("Tone"));
    BOOST_TEST(words.contains("Shine"));
    BOOST_TEST(words.join("|").replace(QChar(QChar::Nbsp), u' ').contains("over a width of 24 mm"));
}

BOOST_AUTO_TEST_CASE(a_line_of_demarcation_is_told_with_its_place_its_step_and_the_weeks_it_took) {
    ToneLine line;
    line.step = 9.3;
    line.step_low = 8.4;
    line.step_high = 10.2;
    line.at_mm = 38;
    line.at_low = 36.8;
    line.at_high = 39.2;
    line.width_mm = 5;
    line.weeks_low = 11.2;
    line.weeks_high = 18.6;
    const QString words = words_of(line).replace(QChar(QChar::Nbsp), u' ');
    BOOST_TEST(words.contains("38 mm from the scalp (37 mm to 39 mm)"), words.toStdString());
    BOOST_TEST(words.contains("9.3 ΔE"));
    BOOST_TEST(words.contains("11 to 19 weeks"));
    line.weeks_high = 0;
    BOOST_TEST(!words_of(line).contains("weeks"));
}

BOOST_AUTO_TEST_SUITE_END()
