#include "domain/words.h"

#include <array>
#include <utility>

namespace kempt {
namespace {

const QVector<std::pair<View, QString>>& view_words() {
    static const QVector<std::pair<View, QString>> words = {
        {View::front_hairline, QStringLiteral("front hairline")},
        {View::left_temple, QStringLiteral("left temple")},
        {View::right_temple, QStringLiteral("right temple")},
        {View::crown, QStringLiteral("crown")},
        {View::nape, QStringLiteral("nape")},
        {View::lengths, QStringLiteral("lengths")},
        {View::ends, QStringLiteral("ends")},
    };
    return words;
}

// Five steps are what observers can tell apart steadily: reviews of hair grading ask for few, described classes.
// In every quality 4 is hair or scalp at its best and 0 at its worst, so that "up" always means "better".
struct Anchors {
    QString quality;
    std::array<QString, 5> steps;
};

const QVector<Anchors>& anchors() {
    static const QVector<Anchors> all = {
        {QStringLiteral("edges"),
         {QStringLiteral("scalp bare along most of the line, no hairs or only a few single ones"),
          QStringLiteral("short or fine single hairs, scalp seen between nearly all of them"),
          QStringLiteral("hairs in tufts with bare gaps wider than a fingertip between them"),
          QStringLiteral("one continuous line, scalp still shows through it at arm's length"),
          QStringLiteral("full line, scalp cannot be seen through it at arm's length")}},
        {QStringLiteral("breakage"),
         {QStringLiteral("pieces come off at a light touch, broken patches or a blunt step in the hair"),
          QStringLiteral("many short broken pieces on cape and comb after one comb-through"),
          QStringLiteral("some broken pieces after a comb-through, ragged lengths in one zone"),
          QStringLiteral("a few broken pieces, only when the hair is pulled or at the last centimetres"),
          QStringLiteral("shed hairs with their bulb only, no broken pieces")}},
        {QStringLiteral("porosity"),
         {QStringLiteral("drinks water at once and stays wet long, feels spongy or gummy"),
          QStringLiteral("wets at once and feels rough along most of its length"),
          QStringLiteral("wets quickly in mid-shaft and ends, roots normal"),
          QStringLiteral("wets evenly, only the last centimetres wet faster"),
          QStringLiteral("wets evenly from root to end and feels smooth both ways")}},
        {QStringLiteral("elasticity"),
         {QStringLiteral("wet strand stretches like gum and does not return, or snaps at once"),
          QStringLiteral("wet strand stretches a little, then breaks"),
          QStringLiteral("wet strand stretches and returns only in part"),
          QStringLiteral("wet strand stretches and returns slowly"),
          QStringLiteral("wet strand stretches by about a third or more and springs back")}},
        {QStringLiteral("shine"),
         {QStringLiteral("dull all over, no light band in any position"), QStringLiteral("scattered sparks, no band"),
          QStringLiteral("a broken light band on part of the head"),
          QStringLiteral("a continuous light band with soft edges"),
          QStringLiteral("a narrow, bright and continuous light band")}},
        {QStringLiteral("scalp"),
         {QStringLiteral("open, weeping, crusted or painful places: no service, advise a doctor"),
          QStringLiteral("redness, burning, pimples or thick scale in several places"),
          QStringLiteral("itching, flakes or one red place"), QStringLiteral("slightly dry or tight, no redness"),
          QStringLiteral("calm, clean and supple, nothing to see or feel")}},
    };
    return all;
}

}  // namespace

QString word_of(View view) {
    for (const auto& [value, word] : view_words())
        if (value == view) return word;
    return {};
}

std::optional<View> view_from_word(const QString& word) {
    const QString plain = word.toLower().replace(u'-', u' ').replace(u'_', u' ').simplified();
    for (const auto& [value, known] : view_words())
        if (known == plain) return value;
    return std::nullopt;
}

const QVector<View>& all_views() {
    static const QVector<View> views = [] {
        QVector<View> list;
        for (const auto& entry : view_words()) list.append(entry.first);
        return list;
    }();
    return views;
}

const QStringList& service_kinds() {
    // The plain "hydroxide straightener" is for earlier services of which nobody knows whether there was lye in them.
    static const QStringList kinds = {
        QStringLiteral("hydroxide straightener"),
        QStringLiteral("hydroxide straightener with lye"),
        QStringLiteral("hydroxide straightener without lye"),
        QStringLiteral("thioglycolate straightener"),
        QStringLiteral("thioglycolate perm"),
        QStringLiteral("bond-building treatment"),
        QStringLiteral("protein treatment"),
        QStringLiteral("moisture treatment"),
        QStringLiteral("semi-permanent colour"),
        QStringLiteral("demi-permanent colour"),
        QStringLiteral("permanent colour"),
        QStringLiteral("lightening"),
        QStringLiteral("gloss"),
        QStringLiteral("cut"),
        QStringLiteral("heat styling"),
        QStringLiteral("protective style"),
        // Only a history or a label can show these three.
        QStringLiteral("henna"),
        QStringLiteral("metallic dye"),
        QStringLiteral("smoothing treatment"),
    };
    return kinds;
}

const QStringList& head_sections() {
    static const QStringList sections = {word_of(View::front_hairline), word_of(View::left_temple),
                                         word_of(View::right_temple), word_of(View::crown), word_of(View::nape)};
    return sections;
}

const QStringList& strengths() {
    static const QStringList words = {QStringLiteral("mild"), QStringLiteral("regular"), QStringLiteral("super")};
    return words;
}

const QStringList& test_results() {
    static const QStringList words = {QStringLiteral("passed"), QStringLiteral("failed")};
    return words;
}

const QStringList& hair_textures() {
    static const QStringList words = {QStringLiteral("fine"), QStringLiteral("medium"), QStringLiteral("coarse")};
    return words;
}

const QStringList& heat_tools() {
    static const QStringList words = {QStringLiteral("flat iron"), QStringLiteral("curling iron"),
                                      QStringLiteral("hot comb"),  QStringLiteral("hot rollers"),
                                      QStringLiteral("dryer"),     QStringLiteral("hooded dryer")};
    return words;
}

bool is_dryer(const QString& heat_tool) {
    // By its whole name: "dryer and flat iron" is an iron too.
    static const QStringList names = {QStringLiteral("dryer"), QStringLiteral("hooded dryer"),
                                      QStringLiteral("hair dryer"), QStringLiteral("hairdryer"),
                                      QStringLiteral("blow dryer")};
    return names.contains(heat_tool.simplified().toLower());
}

const QStringList& hair_groups() {
    static const QStringList words = {QStringLiteral("african"), QStringLiteral("asian"), QStringLiteral("caucasian")};
    return words;
}

const QStringList& grade_qualities() {
    static const QStringList qualities = [] {
        QStringList list;
        for (const Anchors& entry : anchors()) list.append(entry.quality);
        return list;
    }();
    return qualities;
}

const QStringList& grade_zones() {
    static const QStringList zones =
        head_sections() + QStringList{QStringLiteral("roots"), QStringLiteral("mid-shaft"), QStringLiteral("ends"),
                                      QStringLiteral("whole head")};
    return zones;
}

std::optional<QString> grade_zone_from_word(const QString& word) {
    const QString plain = word.toLower().replace(u'-', u' ').replace(u'_', u' ').simplified();
    if (plain == u"mid shaft" || plain == u"lengths") return QStringLiteral("mid-shaft");
    if (plain == u"head" || plain == u"all") return QStringLiteral("whole head");
    if (grade_zones().contains(plain)) return plain;
    return std::nullopt;
}

QString grade_anchor(const QString& quality, int step) {
    if (step < 0 || step > 4) return {};
    for (const Anchors& entry : anchors())
        if (entry.quality == quality)
            return QStringLiteral("%1: %2").arg(step).arg(entry.steps[static_cast<std::size_t>(step)]);
    return {};
}

}  // namespace kempt
