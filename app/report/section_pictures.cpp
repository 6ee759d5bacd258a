// Before and after, each view at one scale; charts.
#include <QPainter>

#include "charts/chart_painter.h"
#include "domain/words.h"
#include "report/pair_drawing.h"
#include "report/sections.h"
#include "report/wording.h"

namespace kempt::report {
namespace {

// At the widest a photo is about 240 pt wide on paper; 1000 px are then 300 dots an inch, as fine as printers show.
constexpr int picture_px = 1000;
// Height of a photo as a share of the page: one pair may fill much of it, of several three fit on one.
constexpr double tallest_alone = 0.42, tallest_of_several = 0.2;
// Of several, one of upright photos: they would be slips of 2 cm otherwise.
constexpr double tallest_upright = 0.33;

charts::ChartStyle chart_style(const Speech& say) {
    charts::ChartStyle style;
    style.speech = say;
    style.font = body_font(7.5);
    charts::Palette& palette = style.palette;
    palette.ground = Qt::white;
    return style;
}

}  // namespace

void add_pictures(Blocks& blocks, const Context& context) {
    const Model& model = context.model;
    if (model.pairs.isEmpty() && model.pictures_withheld.isEmpty()) return;
    const Speech& say = context.say;
    add_heading(blocks, say("Before and after"), context.width);
    if (!model.pictures_withheld.isEmpty()) {
        add_paragraph(blocks, say(model.pictures_withheld), context.width);
        return;
    }
    for (const Pair& pair : model.pairs) {
        const QString view = capitalised(say(word_of(pair.view)));
        if (pair.before.isNull() && pair.after.isNull()) {
            add_subheading(blocks, view, context.width);
            add_paragraph(blocks, say("There is no picture of this view that can be shown."), context.width,
                          ink::quiet);
            if (!pair.verdict.isEmpty()) add_paragraph(blocks, capitalised(say(pair.verdict)), context.width);
            continue;
        }
        PairPicture picture;
        picture.before = pair.before;
        picture.after = pair.after;
        picture.before_date = pair.before_date;
        picture.after_date = pair.after_date;
        picture.px_per_mm = pair.px_per_mm;
        picture.title = word_of(pair.view);
        picture.verdict = pair.verdict;
        picture.speech = say;
        picture.length = context.options.length;
        const bool upright =
            pair.before.height() > 1.5 * pair.before.width() || pair.after.height() > 1.5 * pair.after.width();
        const double tallest = model.pairs.size() == 1 ? tallest_alone : upright ? tallest_upright : tallest_of_several;
        const PairDrawing drawing(prepared(picture, picture_px), context.width, tallest * context.page_height, pt);
        Block block;
        block.height = drawing.height();
        block.space_before = 10 * pt;
        block.keep_with_next = !pair.note.isEmpty();
        block.paint = [drawing](QPainter& painter, const QRectF& rect) { drawing.draw(painter, rect.topLeft()); };
        blocks.push_back(std::move(block));
        if (!pair.note.isEmpty()) add_paragraph(blocks, capitalised(say(pair.note)), context.width, ink::quiet, 8);
    }
}

void add_charts(Blocks& blocks, const Context& context) {
    if (context.model.charts.isEmpty()) return;
    const Speech& say = context.say;
    add_heading(blocks, say("Over the visits"), context.width);
    for (const Chart& chart : context.model.charts) {
        charts::ChartData data = in_unit(chart.data, context.options.length);
        if (data.title.isEmpty()) data.title = capitalised(word_of(chart.view));
        const double height =
            std::min(charts::good_height(data, context.width, chart_style(say)), 0.9 * context.page_height);
        Block block;
        block.height = height;
        block.space_before = 8 * pt;
        block.paint = [data, height, say](QPainter& painter, const QRectF& rect) {
            charts::paint(painter, data, QRectF(rect.topLeft(), QSizeF(rect.width(), height)), chart_style(say));
        };
        blocks.push_back(std::move(block));
    }
}

}  // namespace kempt::report
