// Traced strands on the photo and in their list, and what she corrects in them.
#include <QLabel>
#include <QPushButton>
#include <QSet>
#include <QSignalSpy>
#include <boost/test/unit_test.hpp>

#include "colour/colour.h"
#include "desk/look/colours.h"
#include "desk/photo/photo_canvas.h"
#include "desk/photo/readings_panel.h"
#include "desk/photo/strand_box.h"
#include "desk/photo/strand_list.h"
#include "room.h"

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

BOOST_AUTO_TEST_SUITE(strands)

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

BOOST_FIXTURE_TEST_CASE(a_strand_is_said_to_be_whole_by_a_point_of_its_own_that_can_be_taken_away, Strands) {
    canvas.mark_whole(1);
    BOOST_TEST_REQUIRE(canvas.marks().whole.size() == 1);
    BOOST_TEST(canvas.marks().whole[0].y() == 150);
    BOOST_TEST(colour_seen(at({100, 50})) == 0);  // the strands stay in sight until they are counted anew
    canvas.mark_whole(7);
    BOOST_TEST(canvas.marks().whole.size() == 1);
    canvas.undo();
    BOOST_TEST(canvas.marks().whole.isEmpty());
    canvas.redo();
    canvas.clear_corrections();
    BOOST_TEST(canvas.marks().whole.isEmpty());
}

BOOST_AUTO_TEST_CASE(only_a_strand_that_looks_torn_off_can_be_said_to_be_whole) {
    StrandBox box(true);
    StrandsOverlay found{
        {strand({{0, 0}, {9, 9}}, 0, 120), strand({{0, 0}, {9, 9}}, 1, 80), strand({{0, 0}, {9, 9}}, 2, 60)}, {}};
    found.strands[1].looks_torn = found.strands[1].perhaps_longer = true;
    found.strands[2].perhaps_longer = found.strands[2].cut_off = true;
    box.show_strands(found, {});
    box.show();
    QSignalSpy whole(&box, &StrandBox::whole_asked);
    const auto button = [&] {
        for (QPushButton* one : box.findChildren<QPushButton*>())
            if (one->text() == "A hair of its own" && one->isVisible()) return one;
        return static_cast<QPushButton*>(nullptr);
    };
    for (const int row : {0, 2}) {
        box.list()->setCurrentRow(row);
        BOOST_TEST(button() == nullptr);
        QTest::keyClick(box.list(), Qt::Key_O);
        BOOST_TEST(whole.isEmpty());
    }
    box.list()->setCurrentRow(1);
    BOOST_TEST_REQUIRE(button() != nullptr);
    QTest::keyClick(box.list(), Qt::Key_O, Qt::ControlModifier);
    BOOST_TEST(whole.isEmpty());
    button()->setFocus();
    QTest::keyClick(button(), Qt::Key_Space);
    QTest::keyClick(box.list(), Qt::Key_O);  // said already
    BOOST_TEST_REQUIRE(whole.size() == 1);
    BOOST_TEST(whole.last()[0].toInt() == 1);
    BOOST_TEST(button() == nullptr);
    box.show_strands(found, {});  // and taken back
    QTest::keyClick(box.list(), Qt::Key_O);
    BOOST_TEST(whole.size() == 2);
    found.strands[1].looks_torn = found.strands[1].perhaps_longer = false;
    Marks marks;
    marks.whole = {{3, 3}};
    box.show_strands(found, marks);
    box.list()->setCurrentRow(1);
    BOOST_TEST(button() == nullptr);
    bool told = false;
    for (const QLabel* label : box.findChildren<QLabel*>())
        told = told || (label->isVisible() && label->text() == "1 hair of its own by hand.");
    BOOST_TEST(told);
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

BOOST_AUTO_TEST_CASE(the_list_and_the_photo_point_at_the_same_strand) {
    ReadingsPanel panel;
    Measured measured;
    measured.asked = {ReadingGroup::combings};
    measured.readings = {{"strands", "count", 2, 2, 2, false, {}}};
    ShownStrand cut = strand({{0, 0}, {9, 9}}, 1, 80);
    cut.cut_off = cut.doubtful = true;
    ShownStrand torn = strand({{0, 0}, {9, 9}}, 2, 60);
    torn.perhaps_longer = true;
    measured.overlay.combings = StrandsOverlay{{strand({{0, 0}, {9, 9}}, 0, 120), cut, torn}, {}};
    panel.show_measured(measured, true);
    panel.show();
    StrandList* list = panel.strands(ReadingGroup::combings)->list();
    BOOST_TEST_REQUIRE(list->count() == 3);
    BOOST_TEST(list->item(0)->text().toStdString() == "120\u00a0mm");
    BOOST_TEST(list->item(1)->text().toStdString() == "80\u00a0mm or more, doubtful");
    BOOST_TEST(list->item(2)->text().toStdString() == "60\u00a0mm, perhaps longer");
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

BOOST_AUTO_TEST_CASE(why_fewer_strands_are_counted_than_drawn_stands_under_the_list) {
    StrandBox box(true), pattern(false);
    const StrandsOverlay whole{{strand({{0, 0}, {9, 9}}, 0, 120), strand({{0, 0}, {9, 9}}, 1, 80)}, {}};
    StrandsOverlay torn = whole;
    torn.parts = 1;
    const auto told = [](const StrandBox& of) {
        for (const QLabel* label : of.findChildren<QLabel*>())
            if (label->isVisibleTo(&of) && label->text().contains(QStringLiteral("counted as"))) return label->text();
        return QString();
    };
    box.show_strands(whole, {});
    BOOST_TEST(told(box).isEmpty());
    box.show_strands(torn, {});
    BOOST_TEST(told(box).startsWith(QStringLiteral("2 lines traced, counted as 1:")), told(box).toStdString());
    box.show_strands(whole, {});  // she has joined them
    BOOST_TEST(told(box).isEmpty());
    pattern.show_strands(torn, {});
    BOOST_TEST(told(pattern).isEmpty());
}

BOOST_AUTO_TEST_CASE(a_row_of_the_list_is_as_high_as_its_words_need) {
    ShownStrand brief = strand({{0, 0}, {9, 9}}, 0, 120), wordy = strand({{0, 0}, {9, 9}}, 1, 80);
    wordy.curve_diameter_mm = 31;
    wordy.perhaps_longer = wordy.doubtful = true;
    StrandList list;
    list.resize(180, 200);
    list.show_strands(StrandsOverlay{{brief, wordy}, {}});
    list.show();
    const auto row = [&](int i) { return list.visualItemRect(list.item(i)).height(); };
    const int line = list.fontMetrics().height();
    BOOST_TEST(row(1) >= row(0) + 2 * line);  // three lines of it
    BOOST_TEST(list.height() >= row(0) + row(1));
    list.resize(600, 200);
    BOOST_TEST(row(1) == row(0));
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

BOOST_AUTO_TEST_SUITE_END()
