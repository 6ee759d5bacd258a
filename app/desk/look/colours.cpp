#include "desk/look/colours.h"

#include <algorithm>
#include <cmath>

namespace kempt::desk {
namespace {

Colours make_light() {
    Colours c;
    c.ground = QColor("#f1ece7");
    c.surface = QColor("#fbf9f6");
    c.sunken = QColor("#e6ded6");
    c.raised = QColor("#fffdfb");
    c.raised_over = QColor("#f4e9ec");
    c.line = QColor("#d8cdc3");
    c.outline = QColor("#85756b");
    c.ink = QColor("#2a2220");
    c.ink_soft = QColor("#5f524b");
    c.accent = QColor("#74304f");
    c.accent_over = QColor("#8a3f60");
    c.on_accent = QColor("#fff7fa");
    c.accent_wash = QColor("#f0dfe5");
    c.focus = QColor("#2c5f8a");
    c.better = QColor("#1b5f57");
    c.worse = QColor("#95400e");
    c.caution = QColor("#725000");
    c.better_wash = QColor("#dcebe6");
    c.worse_wash = QColor("#f7e3d6");
    c.caution_wash = QColor("#f6ebcd");
    return c;
}

Colours make_dark() {
    Colours c;
    c.dark = true;
    c.ground = QColor("#1d1816");
    c.surface = QColor("#282120");
    c.sunken = QColor("#151110");
    c.raised = QColor("#352c2a");
    c.raised_over = QColor("#443639");
    c.line = QColor("#423733");
    c.outline = QColor("#8f8078");
    c.ink = QColor("#f3ebe4");
    c.ink_soft = QColor("#c3b5aa");
    c.accent = QColor("#e3a8c0");
    c.accent_over = QColor("#efc0d2");
    c.on_accent = QColor("#2c0f1c");
    c.accent_wash = QColor("#4a2c39");
    c.focus = QColor("#8cc4f2");
    c.better = QColor("#86cfc4");
    c.worse = QColor("#f3a878");
    c.caution = QColor("#ecca74");
    c.better_wash = QColor("#1f3833");
    c.worse_wash = QColor("#472a1a");
    c.caution_wash = QColor("#40341a");
    return c;
}

double channel_light(double code) {
    return code <= 0.04045 ? code / 12.92 : std::pow((code + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
    return 0.2126 * channel_light(c.redF()) + 0.7152 * channel_light(c.greenF()) + 0.0722 * channel_light(c.blueF());
}

}  // namespace

const Colours& light_colours() {
    static const Colours colours = make_light();
    return colours;
}

const Colours& dark_colours() {
    static const Colours colours = make_dark();
    return colours;
}

double contrast(const QColor& a, const QColor& b) {
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QVector<TextPair> text_pairs(const Colours& c) {
    QVector<TextPair> pairs;
    for (const auto& [name, ground] : {QPair<QString, QColor>{"ground", c.ground},
                                       {"surface", c.surface},
                                       {"sunken", c.sunken},
                                       {"raised", c.raised},
                                       {"raised under the pointer", c.raised_over},
                                       {"selected", c.accent_wash}}) {
        pairs.append({"ink on " + name, c.ink, ground});
        pairs.append({"soft ink on " + name, c.ink_soft, ground});
        pairs.append({"accent on " + name, c.accent, ground});
    }
    pairs.append({"on accent", c.on_accent, c.accent});
    pairs.append({"on accent under the pointer", c.on_accent, c.accent_over});
    for (const auto& [name, text, wash] : {std::tuple<QString, QColor, QColor>{"better", c.better, c.better_wash},
                                           {"worse", c.worse, c.worse_wash},
                                           {"caution", c.caution, c.caution_wash}}) {
        pairs.append({name + " on its wash", text, wash});
        pairs.append({name + " on surface", text, c.surface});
        pairs.append({name + " on ground", text, c.ground});
        pairs.append({name + " on sunken", text, c.sunken});
        pairs.append({"ink on the wash of " + name, c.ink, wash});
    }
    return pairs;
}

const MarkColours& mark_colours() {
    static const MarkColours colours;
    return colours;
}

const QVector<QColor>& strand_colours() {
    static const QVector<QColor> colours = {QColor(255, 96, 88),   QColor(90, 214, 250),  QColor(246, 232, 90),
                                            QColor(178, 120, 255), QColor(150, 226, 60),  QColor(255, 120, 214),
                                            QColor(40, 200, 140),  QColor(255, 164, 40),  QColor(104, 146, 255)};
    return colours;
}

}  // namespace kempt::desk
