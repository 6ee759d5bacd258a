// What was measured, as it is drawn over the photo and told beside it.
#include <QLabel>
#include <QSignalSpy>
#include <boost/test/unit_test.hpp>

#include "colour/colour.h"
#include "desk/look/colours.h"
#include "desk/photo/measured_overlay.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/readings_panel.h"
#include "desk/photo/strand_box.h"
#include "desk/photo/strand_list.h"
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

ShownStrand strand(QPolygonF path, int colour, double length_mm) {
    ShownStrand s;
    s.path = std::move(path);
    s.length_mm = length_mm;
    s.low = length_mm - 2;
    s.high = length_mm + 2;
    s.colour = colour;
    return s;
}

// Two strands over a grey photo of 400 x 300, shown at two window pixels for a photo pixel, with a whole sheet asked
// for.
struct Strands {
    Strands() {
        QImage image(400, 300, QImage::Format_RGB32);
        image.fill(QColor(128, 128, 128));
        canvas.resize(800, 600);
        canvas.show();
        canvas.set_picture(picture_from(image));
        marks.sheet = "combings";
        canvas.set_marks(marks);
        canvas.set_tool(Tool::combings);
        overlay.combings = StrandsOverlay{
            {strand({{50, 50}, {350, 50}}, 0, 120), strand({{50, 150}, {350, 150}}, 1, 80)}, {{{50, 250}, {350, 250}}}};
        canvas.set_overlay(overlay, marks);
        canvas.set_overlay_shown(true);
    }
    PhotoCanvas canvas;
    Marks marks;
    Overlay overlay;

    [[nodiscard]] QColor at(QPointF photo) {
        return canvas.grab().toImage().pixelColor(canvas.map().window_from_photo(photo).toPoint());
    }
    void click(QPointF photo) {
        QTest::mouseClick(&canvas, Qt::LeftButton, {}, canvas.map().window_from_photo(photo).toPoint());
    }
};

// The strand colour that a pixel is; -1 when it is nearer to the grey photo or to the casing. A stroke is thinner than
// two pixels, so that it is seen mixed with its casing.
int colour_seen(const QColor& seen) {
    double nearest = std::min(colour::ciede2000(lab_of(seen), lab_of(QColor(128, 128, 128))),
                              colour::ciede2000(lab_of(seen), lab_of(QColor(mark_colours().casing.rgb()))));
    int best = -1;
    for (int i = 0; i < strand_colours().size(); ++i)
        if (const double d = colour::ciede2000(lab_of(seen), lab_of(strand_colours()[i])); d < nearest) {
            nearest = d;
            best = i;
        }
    return best;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(overlay)

BOOST_AUTO_TEST_CASE(strand_colours_are_told_from_each_other_and_from_their_casing) {
    const auto& all = strand_colours();
    BOOST_TEST(all.size() >= 8);
    for (qsizetype i = 0; i < all.size(); ++i) {
        BOOST_TEST(contrast(all[i], QColor(mark_colours().casing.rgb())) >= 4.5);
        for (qsizetype j = 0; j < i; ++j)
            BOOST_TEST(colour::ciede2000(lab_of(all[i]), lab_of(all[j])) >= 15.0,
                       all[i].name().toStdString() << " and " << all[j].name().toStdString());
    }
}

BOOST_AUTO_TEST_CASE(strands_that_lie_together_get_different_colours_and_all_colours_are_used) {
    QVector<QPolygonF> paths;
    for (int i = 0; i < 9; ++i) paths.append({{0, 10.0 + i}, {300, 10.0 + i}});    // a bundle
    for (int i = 0; i < 9; ++i) paths.append({{0, 500.0 + i}, {300, 500.0 + i}});  // and another far off
    const QVector<int> chosen = colours_for(paths, 9, 20);
    for (int bundle : {0, 9}) {
        QSet<int> used;
        for (int i = 0; i < 9; ++i) used.insert(chosen[bundle + i]);
        BOOST_TEST(used.size() == 9);
    }
    // Two that cross far from their ends.
    const QVector<int> cross = colours_for({{{0, 0}, {100, 100}}, {{100, 0}, {0, 100}}}, 3, 2);
    BOOST_TEST(cross[0] != cross[1]);
}

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

    const Overlay out = overlay_from(result);
    BOOST_TEST_REQUIRE(out.shine.has_value());
    BOOST_TEST(out.shine->crest.size() == 2);
    BOOST_TEST(out.shine->half_zone.size() == 4);
    BOOST_TEST(out.shine->total.size() == 5);
    BOOST_TEST_REQUIRE(out.tone.has_value());
    BOOST_TEST(!out.tone->end.has_value());
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
    BOOST_TEST(out.combings->unresolved.size() == 1);
}

BOOST_FIXTURE_TEST_CASE(each_strand_is_drawn_in_its_colour_while_the_switch_is_on, Strands) {
    BOOST_TEST(colour_seen(at({200, 50})) == 0);
    BOOST_TEST(colour_seen(at({200, 150})) == 1);
    canvas.set_overlay_shown(false);
    BOOST_TEST(colour_seen(at({200, 50})) == -1);
}

BOOST_FIXTURE_TEST_CASE(what_was_measured_with_other_marks_is_not_drawn, Strands) {
    canvas.ask_for_sheet(Tool::strand);
    BOOST_TEST(colour_seen(at({200, 50})) == -1);
    canvas.undo();
    BOOST_TEST(colour_seen(at({200, 50})) == 0);
    Marks with_edge = marks;  // another group's marks do not touch it
    with_edge.edge_line = {{10, 10}, {60, 12}};
    with_edge.hair_side = QPointF(30, 40);
    canvas.propose(with_edge);
    BOOST_TEST(colour_seen(at({200, 50})) == 0);
}

BOOST_FIXTURE_TEST_CASE(pressing_a_strand_picks_it_out_and_draws_nothing, Strands) {
    QSignalSpy chosen(&canvas, &PhotoCanvas::strand_chosen);
    click({200, 152});
    BOOST_TEST_REQUIRE(chosen.size() == 1);
    BOOST_TEST(chosen.first().first().toInt() == 1);
    BOOST_TEST(canvas.strand() == 1);
    click({200, 100});  // bare paper: the whole sheet stays asked for
    BOOST_TEST(canvas.marks().region.isEmpty());
    BOOST_TEST(!canvas.editor().can_undo());
}

BOOST_FIXTURE_TEST_CASE(a_strand_is_taken_out_and_two_are_joined_by_a_point_of_their_own, Strands) {
    canvas.drop_strand(1);
    BOOST_TEST_REQUIRE(canvas.marks().not_hair.size() == 1);
    BOOST_TEST(canvas.marks().not_hair[0].y() == 150);
    canvas.undo();
    BOOST_TEST(canvas.marks().not_hair.isEmpty());
    canvas.join_strands(0, 1);
    BOOST_TEST_REQUIRE(canvas.marks().joined.size() == 2);
    BOOST_TEST(canvas.marks().joined[0].y() == 50);
    BOOST_TEST(canvas.marks().joined[1].y() == 150);
    BOOST_TEST(colour_seen(at({100, 50})) == 0);  // they stay in sight until they are counted anew
    canvas.join_strands(1, 1);
    canvas.join_strands(0, 7);
    BOOST_TEST(canvas.marks().joined.size() == 2);
    // With the keyboard on the photo.
    click({100, 152});
    canvas.setFocus();
    QTest::keyClick(&canvas, Qt::Key_Delete);
    BOOST_TEST(canvas.marks().not_hair.size() == 1);
}

BOOST_AUTO_TEST_CASE(the_point_that_means_a_strand_lies_away_from_the_strands_that_cross_it) {
    const QVector<ShownStrand> strands = {strand({{0, 0}, {50, 0}, {100, 0}, {150, 0}, {200, 0}}, 0, 20),
                                          strand({{100, -50}, {100, 50}}, 1, 10), strand({{0, 5}, {60, 5}}, 2, 6)};
    BOOST_TEST(own_point(strands, 0).x() > 150);
    // Also where the path has no points of its own between its ends.
    const QVector<ShownStrand> bare = {strand({{0, 0}, {200, 0}}, 0, 20), strand({{180, -50}, {180, 50}}, 1, 10)};
    BOOST_TEST(std::abs(own_point(bare, 0).x() - 80) < 3);
}

BOOST_AUTO_TEST_CASE(the_box_asks_for_the_other_part_of_a_join_and_goes_on_after_a_strand_is_gone) {
    StrandBox box(true);
    StrandsOverlay found{
        {strand({{0, 0}, {9, 9}}, 0, 120), strand({{0, 0}, {9, 9}}, 1, 80), strand({{0, 0}, {9, 9}}, 2, 60)}, {}};
    box.show_strands(found, {});
    box.show();
    QSignalSpy joined(&box, &StrandBox::join_asked), dropped(&box, &StrandBox::drop_asked);
    QTest::keyClick(box.list(), Qt::Key_J);  // nothing chosen yet
    BOOST_TEST(joined.isEmpty());
    box.list()->setCurrentRow(0);
    QTest::keyClick(box.list(), Qt::Key_J);
    box.choose(2);  // on the photo
    BOOST_TEST_REQUIRE(joined.size() == 1);
    BOOST_TEST(joined.first()[0].toInt() == 0);
    BOOST_TEST(joined.first()[1].toInt() == 2);
    box.choose(1);
    BOOST_TEST(joined.size() == 1);  // the join is over
    QTest::keyClick(box.list(), Qt::Key_Delete);
    BOOST_TEST_REQUIRE(dropped.size() == 1);
    BOOST_TEST(dropped.first()[0].toInt() == 1);
    found.strands.removeAt(1);
    Marks marks;
    marks.not_hair = {{3, 3}};
    box.show_strands(found, marks);
    BOOST_TEST(box.list()->currentRow() == 1);
    bool told = false;
    for (const QLabel* label : box.findChildren<QLabel*>())
        told = told || (label->isVisible() && label->text() == "1 strand taken out by hand.");
    BOOST_TEST(told);
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
    measured.asked.prepend(ReadingGroup::shine);
    measured.readings.prepend({"alignment", "-", 0.8, 0.7, 0.9, false, {}});
    panel.show_measured(measured, true);
    words.clear();
    for (const QLabel* label : panel.findChildren<QLabel*>())
        if (label->isVisible()) words.append(label->text());
    BOOST_TEST(words.contains("Tone"));
    BOOST_TEST(words.contains("Shine"));
}

BOOST_AUTO_TEST_CASE(the_list_and_the_photo_point_at_the_same_strand) {
    ReadingsPanel panel;
    Measured measured;
    measured.asked = {ReadingGroup::combings};
    measured.readings = {{"strands", "count", 2, 2, 2, false, {}}};
    ShownStrand cut = strand({{0, 0}, {9, 9}}, 1, 80);
    cut.cut_off = cut.doubtful = true;
    measured.overlay.combings = StrandsOverlay{{strand({{0, 0}, {9, 9}}, 0, 120), cut}, {}};
    panel.show_measured(measured, true);
    panel.show();
    StrandList* list = panel.strands(ReadingGroup::combings)->list();
    BOOST_TEST_REQUIRE(list->count() == 2);
    BOOST_TEST(list->item(0)->text().toStdString() == "120 mm");
    BOOST_TEST(list->item(1)->text().toStdString() == "80 mm or more, doubtful");
    QSignalSpy chosen(&panel, &ReadingsPanel::strand_chosen);
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Down);
    BOOST_TEST_REQUIRE(!chosen.isEmpty());
    BOOST_TEST(chosen.last().first().toInt() == 1);
    chosen.clear();
    panel.choose_strand(0);  // from the photo: not told back
    BOOST_TEST(list->currentRow() == 0);
    BOOST_TEST(chosen.isEmpty());
    panel.show_measured(measured, true);  // the same strands again: the choice stays
    BOOST_TEST(list->currentRow() == 0);
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
