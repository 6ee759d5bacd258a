#include <boost/test/unit_test.hpp>

#include "desk/look/colours.h"
#include "desk/look/measures.h"
#include "desk/look/style_sheet.h"

using namespace kempt::desk;

BOOST_AUTO_TEST_SUITE(look)

// WCAG 2.1, "relative luminance" and "contrast ratio"; black on white is 21:1 by definition, #777 on white 4.48:1 (from
// memory of the guideline's own often used example).
BOOST_AUTO_TEST_CASE(contrast_follows_the_published_formula) {
    BOOST_TEST(contrast(Qt::black, Qt::white) == 21.0, boost::test_tools::tolerance(1e-9));
    BOOST_TEST(contrast(QColor("#777777"), Qt::white) == 4.48, boost::test_tools::tolerance(0.002));
    BOOST_TEST(contrast(QColor("#123456"), QColor("#123456")) == 1.0, boost::test_tools::tolerance(1e-9));
}

BOOST_AUTO_TEST_CASE(every_text_of_both_palettes_reaches_four_and_a_half_to_one) {
    for (const Colours* c : {&light_colours(), &dark_colours()})
        for (const TextPair& pair : text_pairs(*c))
            BOOST_TEST(contrast(pair.text, pair.ground) >= 4.5, (c->dark ? "dark: " : "light: ")
                                                                    << pair.name.toStdString() << " is "
                                                                    << contrast(pair.text, pair.ground));
}

BOOST_AUTO_TEST_CASE(focus_ring_and_control_borders_reach_three_to_one) {
    for (const Colours* c : {&light_colours(), &dark_colours()})
        for (const QColor& ground : {c->ground, c->surface, c->raised, c->sunken}) {
            BOOST_TEST(contrast(c->focus, ground) >= 3.0);
            BOOST_TEST(contrast(c->outline, ground) >= 3.0, (c->dark ? "dark " : "light ")
                                                                << ground.name().toStdString() << ' '
                                                                << contrast(c->outline, ground));
        }
}

BOOST_AUTO_TEST_CASE(marks_stand_out_against_their_casing) {
    const MarkColours c;
    for (const QColor& core : {c.line, c.picked, c.hair, c.scalp, c.ruler})
        BOOST_TEST(contrast(core, QColor(c.casing.rgb())) >= 4.5);
}

BOOST_AUTO_TEST_CASE(style_sheet_leaves_no_word_unfilled_and_text_grows_with_the_scale) {
    for (const double scale : {1.0, 1.5, 2.0})
        for (const Colours* c : {&light_colours(), &dark_colours()})
            BOOST_TEST(!style_sheet(*c, Measures(scale)).contains('@'));
    BOOST_TEST(Measures(2.0).body == 2 * Measures(1.0).body);
    BOOST_TEST(Measures(9.0).text == 2.0);
    BOOST_TEST(Measures(0.1).text == 1.0);
    BOOST_TEST(Measures(1.0).target >= 24);  // WCAG 2.2, target size (minimum)
}

BOOST_AUTO_TEST_SUITE_END()
