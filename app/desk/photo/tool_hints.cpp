// What to do next with each tool, in words.
#include <QCoreApplication>

#include "desk/photo/mark_parts.h"
#include "desk/photo/tools.h"

namespace kempt::desk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(kempt::desk::Tool)
};

bool is_sheet_tool(Tool tool) {
    return tool == Tool::hem || tool == Tool::combings || tool == Tool::strand;
}

QString corners_left(qsizetype have) {
    return have == 3 ? Words::tr("One more corner.") : Words::tr("%1 more corners.").arg(4 - have);
}

QString crossing() {
    return Words::tr("The sides of the region cross. Drag its corners apart.");
}

QString edge_hint(const Marks& marks) {
    if (marks.edge_line.isEmpty()) return Words::tr("Click along the edge, where the first hairs leave the scalp.");
    if (marks.edge_line.size() == 1) return Words::tr("One point. Go on along the edge.");
    if (!marks.hair_side)
        return Words::tr(
            "Which side is the hair on? Press F once or twice until the teeth of the line point into the hair.");
    return Words::tr("The teeth must point into the hair. Drag a point to move it, click on the line to add one.");
}

QString shine_hint(const Marks& marks) {
    const qsizetype have = marks.shine_region.size();
    if (have == 0)
        return Words::tr(
            "Click four corners round smooth hair that holds the whole band of light, the two nearer to "
            "the roots first.");
    if (have < 4) return corners_left(have);
    if (crosses_itself(marks.shine_region)) return crossing();
    return Words::tr(
        "The comb stands on the side towards the roots; F turns it. The light band should lie well "
        "inside, dull hair above and below it.");
}

QString tone_hint(const Marks& marks) {
    if (marks.strand_line.isEmpty())
        return Words::tr("Click down the hair from the scalp to the ends; the first point lies on the scalp.");
    if (marks.strand_line.size() == 1) return Words::tr("The scalp end. Go on towards the ends.");
    return Words::tr("The ring is the scalp end; F turns it round. Click on the line to add a point.");
}

QString hem_hint(const Marks& marks) {
    const bool other = !marks.sheet.isEmpty() && marks.sheet != u"hem";
    if (other && marks.region.size() == 4) return Words::tr("This photo is measured as another kind of sheet.");
    const qsizetype have = marks.region.size();
    if (have == 0)
        return Words::tr(
            "Click four corners round the ends on the sheet: first the two in the hair, towards the "
            "roots, then the two on bare paper below the ends.");
    if (have < 4) return corners_left(have);
    if (crosses_itself(marks.region)) return crossing();
    return Words::tr("The hair comes in through the side with the comb; F turns it.");
}

QString sheet_hint(Tool tool, const Marks& marks) {
    const qsizetype have = marks.region.size();
    if (have > 0 && have < 4) return corners_left(have);
    if (crosses_itself(marks.region)) return crossing();
    if (!marks.sheet.isEmpty() && marks.sheet != sheet_of(tool))
        return Words::tr("This photo is measured as another kind of sheet.");
    if (marks.sheet.isEmpty())
        return tool == Tool::combings
                   ? Words::tr(
                         "Measures every strand on the gauge sheet. Click four corners first to look at a part "
                         "of the sheet only.")
                   : Words::tr(
                         "Measures the bends of single strands on the gauge sheet. Click four corners first to "
                         "look at a part of the sheet only.");
    if (have == 0) return Words::tr("The whole sheet is looked at. Click a strand to see which it is in the list.");
    return Words::tr("Only strands within the corners count. Drag a corner to move it.");
}

QString anchor_hint(const Marks& marks) {
    if (marks.anchors.isEmpty())
        return Words::tr(
            "Click what stays where it is: a mole, a scar, the corner of the ear. The same ones in the "
            "same order at each visit.");
    if (marks.anchors.size() == 1) return Words::tr("One anchor. Two or more can carry the marks to another visit.");
    return Words::tr("Keep their order the same at each visit.");
}

QString ruler_hint(const Marks& marks) {
    if (marks.scale_points.size() < 2)
        return Words::tr("Only without a gauge card: click two points that you know the distance of.");
    if (!(marks.scale_mm > 0)) return Words::tr("Type the distance between the two points.");
    return Words::tr("Drag an end to move it.");
}

}  // namespace

QString hint_for(Tool tool, const Marks& marks) {
    switch (tool) {
        case Tool::edge_line:
            return edge_hint(marks);
        case Tool::hair_tap:
            return Words::tr("Tap on hair where its colour is plain, when hair is not taken for hair.");
        case Tool::scalp_tap:
            return Words::tr("Tap on bare scalp, when scalp is taken for hair.");
        case Tool::shine:
            return shine_hint(marks);
        case Tool::tone:
            return tone_hint(marks);
        case Tool::hem:
            return hem_hint(marks);
        case Tool::combings:
        case Tool::strand:
            return sheet_hint(tool, marks);
        case Tool::anchor:
            return anchor_hint(marks);
        case Tool::ruler:
            break;
    }
    return ruler_hint(marks);
}

QString sheet_words(Tool tool, const Marks& marks) {
    if (!is_sheet_tool(tool) || marks.sheet == sheet_of(tool)) return {};
    const bool region = marks.region.size() == 4 && !crosses_itself(marks.region);
    if (!region && (tool == Tool::hem || !marks.region.isEmpty())) return {};
    if (tool == Tool::hem) return Words::tr("Measure the ends here");
    if (region)
        return tool == Tool::combings ? Words::tr("Measure the comb-out here") : Words::tr("Measure the pattern here");
    return Words::tr("Measure the whole sheet");
}

QString clear_words(Tool tool, const Marks& marks) {
    if (!has_drawn(tool, marks)) return {};
    switch (tool) {
        case Tool::edge_line:
            return Words::tr("Remove the edge line");
        case Tool::hair_tap:
            return Words::tr("Remove the hair samples");
        case Tool::scalp_tap:
            return Words::tr("Remove the scalp samples");
        case Tool::shine:
        case Tool::hem:
            return Words::tr("Remove the region");
        case Tool::tone:
            return Words::tr("Remove the line");
        case Tool::combings:
        case Tool::strand:
            return Words::tr("Do not measure this");
        case Tool::anchor:
            return Words::tr("Remove the anchors");
        case Tool::ruler:
            break;
    }
    return Words::tr("Remove the ruler");
}

}  // namespace kempt::desk
