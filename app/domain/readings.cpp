#include "domain/readings.h"

namespace kempt {
namespace {

struct ReadingWords {
    ReadingGroup group;
    QString name, title, meaning;
};

const QVector<ReadingWords>& reading_words() {
    using enum ReadingGroup;
    static const QVector<ReadingWords> all = {
        {edges, QStringLiteral("edge_coverage"), QStringLiteral("edge coverage"),
         QStringLiteral("Share of the first 10 mm behind the edge line that is hidden by hair.")},
        {edges, QStringLiteral("edge_strands"), QStringLiteral("strands at the edge"),
         QStringLiteral("Strands seen crossing a line 5 mm behind the edge, for each centimetre of that line.")},
        {edges, QStringLiteral("fill_depth"), QStringLiteral("fill depth"),
         QStringLiteral(
             "Distance behind the edge line at which the hair reaches half of its fullness at 15 to 20 mm.")},
        {edges, QStringLiteral("bare_length"), QStringLiteral("bare length"),
         QStringLiteral("Length of the edge line behind which less than a fifth of the first 10 mm is covered.")},
        {edges, QStringLiteral("length_density"), QStringLiteral("hair length per area"),
         QStringLiteral("Length of the strands that can be seen on each square millimetre of the first 10 mm.")},
        {shine, QStringLiteral("shine_contrast"), QStringLiteral("shine contrast"),
         QStringLiteral("Share of the light along the hair that stands above its dull level: 0 is dull, 1 a mirror.")},
        {shine, QStringLiteral("shine_width"), QStringLiteral("width of the highlight"),
         QStringLiteral("Width of the light band along the hair at half its height; smooth hair has a narrow one.")},
        {shine, QStringLiteral("luster"), QStringLiteral("lustre"),
         QStringLiteral("All light over dull light, for each millimetre of the light band's width.")},
        {shine, QStringLiteral("alignment"), QStringLiteral("alignment"),
         QStringLiteral("How much the fibres run one way: 0 in all directions, 1 all alike.")},
        {tone, QStringLiteral("tone_spread"), QStringLiteral("tone spread"),
         QStringLiteral("Largest colour difference (CIEDE2000) between root, mid-shaft and ends.")},
        {tone, QStringLiteral("tone_level"), QStringLiteral("level"),
         QStringLiteral("Level of the mid-shaft, 1 black to 10 lightest blonde, on a scale of our own calibration.")},
        {ends, QStringLiteral("hem_unevenness"), QStringLiteral("unevenness of the hem"),
         QStringLiteral("How far the ends scatter about a smooth hem.")},
        {ends, QStringLiteral("see_through"), QStringLiteral("see-through ends"),
         QStringLiteral("Share of the last 20 mm through which the sheet can be seen.")},
        {ends, QStringLiteral("flyaway"), QStringLiteral("flyaway hair"),
         QStringLiteral("Share of the hair that stands outside the smooth outline.")},
        {combings, QStringLiteral("strands"), QStringLiteral("strands combed out"),
         QStringLiteral("Number of strands on the gauge sheet after a timed comb-through.")},
        {combings, QStringLiteral("strand_median"), QStringLiteral("length of the combed-out strands"),
         QStringLiteral("Half of the strands on the sheet are longer than this.")},
        {combings, QStringLiteral("short_share"), QStringLiteral("share of short strands"),
         QStringLiteral("Share of the strands on the sheet that are shorter than 50 mm: broken rather than shed.")},
        {pattern, QStringLiteral("curve_diameter"), QStringLiteral("curve diameter"),
         QStringLiteral("Diameter of the circle that bends like the strand.")},
        {pattern, QStringLiteral("wave_ratio"), QStringLiteral("wave ratio"),
         QStringLiteral("30 mm along the strand over the straight distance that they span: 1 is straight.")},
        {pattern, QStringLiteral("strand_length"), QStringLiteral("strand length"),
         QStringLiteral("Length along the strand as it lies on the sheet.")},
    };
    return all;
}

QStringList names_where(bool (*take)(ReadingGroup, ReadingGroup), ReadingGroup group) {
    QStringList list;
    for (const ReadingWords& entry : reading_words())
        if (take(entry.group, group)) list.append(entry.name);
    return list;
}

}  // namespace

const QVector<ReadingGroup>& all_reading_groups() {
    using enum ReadingGroup;
    static const QVector<ReadingGroup> groups = {edges, shine, tone, ends, combings, pattern};
    return groups;
}

const QStringList& reading_names_of(ReadingGroup group) {
    static const QVector<QStringList> lists = [] {
        QVector<QStringList> all;
        for (const ReadingGroup one : all_reading_groups())
            all.append(names_where(
                +[](ReadingGroup a, ReadingGroup b) { return a == b; }, one));
        return all;
    }();
    return lists[static_cast<qsizetype>(group)];
}

const QStringList& edge_reading_names() {
    return reading_names_of(ReadingGroup::edges);
}

const QStringList& all_reading_names() {
    static const QStringList names = names_where(
        +[](ReadingGroup, ReadingGroup) { return true; }, ReadingGroup::edges);
    return names;
}

QString title_of_reading(const QString& name) {
    for (const ReadingWords& entry : reading_words())
        if (entry.name == name) return entry.title;
    return QString(name).replace(u'_', u' ');
}

QString meaning_of_reading(const QString& name) {
    for (const ReadingWords& entry : reading_words())
        if (entry.name == name) return entry.meaning;
    return {};
}

QVector<ReadingGroup> groups_asked_by(const Marks& marks) {
    QVector<ReadingGroup> asked;
    if (!marks.edge_line.isEmpty()) asked.append(ReadingGroup::edges);
    if (marks.shine_region.size() == 4) asked.append(ReadingGroup::shine);
    if (marks.strand_line.size() >= 2) asked.append(ReadingGroup::tone);
    if (marks.sheet == u"hem" && marks.region.size() == 4) asked.append(ReadingGroup::ends);
    if (marks.sheet == u"combings") asked.append(ReadingGroup::combings);
    if (marks.sheet == u"strand") asked.append(ReadingGroup::pattern);
    return asked;
}

bool same_marks_for(ReadingGroup group, const Marks& a, const Marks& b) {
    if (a.scale_points != b.scale_points || a.scale_mm != b.scale_mm) return false;
    switch (group) {
        case ReadingGroup::edges:
            return a.edge_line == b.edge_line && a.hair_side == b.hair_side && a.hair_taps == b.hair_taps &&
                   a.scalp_taps == b.scalp_taps;
        case ReadingGroup::shine:
            return a.shine_region == b.shine_region;
        case ReadingGroup::tone:
            return a.strand_line == b.strand_line;
        case ReadingGroup::ends:
        case ReadingGroup::combings:
        case ReadingGroup::pattern:
            break;
    }
    const bool corrected_alike =
        group != ReadingGroup::combings || (a.not_hair == b.not_hair && a.joined == b.joined && a.whole == b.whole);
    return a.sheet == b.sheet && a.region == b.region && corrected_alike;
}

}  // namespace kempt
