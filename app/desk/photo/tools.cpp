#include "desk/photo/tools.h"

#include <QCoreApplication>

namespace kempt::desk {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(kempt::desk::Tool)
};

}  // namespace

const QVector<Tool>& all_tools() {
    using enum Tool;
    static const QVector<Tool> tools = {edge_line, hair_tap, scalp_tap, shine,  tone,
                                        hem,       combings, strand,    anchor, ruler};
    return tools;
}

QVector<Tool> first_tools(View view) {
    using enum Tool;
    if (view == View::lengths) return {shine, tone};
    if (view == View::ends) return {hem, combings, strand};
    return {edge_line, hair_tap, scalp_tap};
}

bool has_drawn(Tool tool, const Marks& marks) {
    switch (tool) {
        case Tool::edge_line:
            return !marks.edge_line.isEmpty();
        case Tool::hair_tap:
            return !marks.hair_taps.isEmpty();
        case Tool::scalp_tap:
            return !marks.scalp_taps.isEmpty();
        case Tool::shine:
            return !marks.shine_region.isEmpty();
        case Tool::tone:
            return !marks.strand_line.isEmpty();
        case Tool::hem:
        case Tool::combings:
        case Tool::strand:
            return marks.sheet == sheet_of(tool);
        case Tool::anchor:
            return !marks.anchors.isEmpty();
        case Tool::ruler:
            return !marks.scale_points.isEmpty();
    }
    return false;
}

QString name_of(Tool tool) {
    switch (tool) {
        case Tool::edge_line:
            return Words::tr("Edge");
        case Tool::hair_tap:
            return Words::tr("Hair");
        case Tool::scalp_tap:
            return Words::tr("Scalp");
        case Tool::shine:
            return Words::tr("Shine");
        case Tool::tone:
            return Words::tr("Tone");
        case Tool::hem:
            return Words::tr("Ends");
        case Tool::combings:
            return Words::tr("Comb-out");
        case Tool::strand:
            return Words::tr("Pattern");
        case Tool::anchor:
            return Words::tr("Anchors");
        case Tool::ruler:
            return Words::tr("Ruler");
    }
    return {};
}

QString help_of(Tool tool) {
    switch (tool) {
        case Tool::edge_line:
            return Words::tr("Draw the edge line");
        case Tool::hair_tap:
            return Words::tr("Tap on hair, where its colour is plain");
        case Tool::scalp_tap:
            return Words::tr("Tap on bare scalp");
        case Tool::shine:
            return Words::tr("Draw the region whose shine is measured");
        case Tool::tone:
            return Words::tr("Draw a line down the hair, from scalp to ends, for its tone");
        case Tool::hem:
            return Words::tr("Draw the region of the ends on the gauge sheet");
        case Tool::combings:
            return Words::tr("Measure the strands combed out onto the gauge sheet");
        case Tool::strand:
            return Words::tr("Measure the bends of single strands on the gauge sheet");
        case Tool::anchor:
            return Words::tr("Mark places that stay the same between visits");
        case Tool::ruler:
            return Words::tr("Two points a known distance apart, where there is no gauge card");
    }
    return {};
}

Sign sign_of(Tool tool) {
    switch (tool) {
        case Tool::edge_line:
            return Sign::pencil;
        case Tool::hair_tap:
            return Sign::hair;
        case Tool::scalp_tap:
            return Sign::scalp;
        case Tool::shine:
            return Sign::shine;
        case Tool::tone:
            return Sign::tone;
        case Tool::hem:
            return Sign::ends;
        case Tool::combings:
            return Sign::comb_out;
        case Tool::strand:
            return Sign::wave;
        case Tool::anchor:
            return Sign::anchor;
        case Tool::ruler:
            break;
    }
    return Sign::ruler;
}

MarkKind kind_of(Tool tool) {
    switch (tool) {
        case Tool::edge_line:
            return MarkKind::edge_point;
        case Tool::hair_tap:
            return MarkKind::hair_tap;
        case Tool::scalp_tap:
            return MarkKind::scalp_tap;
        case Tool::shine:
            return MarkKind::shine_corner;
        case Tool::tone:
            return MarkKind::strand_point;
        case Tool::hem:
        case Tool::combings:
        case Tool::strand:
            return MarkKind::region_corner;
        case Tool::anchor:
            return MarkKind::anchor;
        case Tool::ruler:
            break;
    }
    return MarkKind::scale_point;
}

QString sheet_of(Tool tool) {
    switch (tool) {
        case Tool::hem:
            return QStringLiteral("hem");
        case Tool::combings:
            return QStringLiteral("combings");
        case Tool::strand:
            return QStringLiteral("strand");
        default:
            return {};
    }
}

std::optional<ReadingGroup> group_of(Tool tool) {
    switch (tool) {
        case Tool::edge_line:
        case Tool::hair_tap:
        case Tool::scalp_tap:
            return ReadingGroup::edges;
        case Tool::shine:
            return ReadingGroup::shine;
        case Tool::tone:
            return ReadingGroup::tone;
        case Tool::hem:
            return ReadingGroup::ends;
        case Tool::combings:
            return ReadingGroup::combings;
        case Tool::strand:
            return ReadingGroup::pattern;
        case Tool::anchor:
        case Tool::ruler:
            break;
    }
    return std::nullopt;
}

Tool tool_for(ReadingGroup group) {
    for (const Tool tool : all_tools())
        if (group_of(tool) == group) return tool;
    return Tool::edge_line;
}

QString title_of(ReadingGroup group) {
    return name_of(tool_for(group));
}

QString turn_words(Tool tool) {
    if (group_of(tool) == ReadingGroup::edges) return Words::tr("Hair side");
    if (tool == Tool::shine || tool == Tool::hem) return Words::tr("Root side");
    if (tool == Tool::tone) return Words::tr("Root end");
    return {};
}

bool can_turn(Tool tool, const Marks& marks) {
    if (group_of(tool) == ReadingGroup::edges) return marks.edge_line.size() >= 2;
    if (tool == Tool::shine) return marks.shine_region.size() == 4;
    if (tool == Tool::hem) return marks.region.size() == 4;
    return tool == Tool::tone && marks.strand_line.size() >= 2;
}

}  // namespace kempt::desk
