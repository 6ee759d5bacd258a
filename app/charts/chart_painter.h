// Lays out and paints a chart at any size and font size, on any paint device: the window and the PDF draw the same.
#pragma once

#include <QColor>
#include <QFont>
#include <QPainter>
#include <QRectF>
#include <QVector>
#include <optional>

#include "charts/chart_data.h"
#include "charts/ticks.h"
#include "speech/speech.h"

namespace kempt::charts {

// Every text colour is at least 4.5:1 on ground, every line that carries meaning at least 3:1 (WCAG 2.1); proven in the
// tests for the two palettes below.
struct Palette {
    QColor ground;     // behind the chart
    QColor grid;       // hairlines; carries no meaning
    QColor ink;        // titles and values
    QColor ink_soft;   // tick labels, key, note
    QColor reading;    // the points and the line that joins them
    QColor shot;       // repeat shots
    QColor band;       // fill of the noise band
    QColor band_edge;  // its two edges
    QColor target;     // target line
    QColor trend;      // trend line; its interval is drawn in the same colour, thin
    QColor service;    // service marks
};
[[nodiscard]] Palette light_palette();
[[nodiscard]] Palette dark_palette();

struct ChartStyle {
    QFont font;  // size of tick labels; everything else follows from it
    Palette palette = light_palette();
    speech::Speech speech = {};  // language of words, dates and figures
};

// A text and where it goes. No two rectangles of a layout overlap.
struct Label {
    QRectF rect;
    QString text;
    bool strong = false;
    bool wrap = false;
    Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter;
};
enum class KeyMark { reading, excluded, band, target, trend, forecast, service };
struct KeyEntry {
    KeyMark mark = KeyMark::reading;
    QRectF swatch;
    Label label;
    QString letter;  // for services
};
struct ServiceTag {
    QRectF rect;         // the tag in the lane above the plot
    QString text;        // the label, or letters that the key explains
    QVector<double> xs;  // where its lines fall
};

struct Layout {
    QRectF area;  // all of it
    QRectF plot;  // inside the axes; null when there is no data
    ValueAxis values;
    QDate from, to;              // dates at the left and right side of the plot
    double em = 1;               // height of a line of text
    std::optional<Label> empty;  // the sentence shown instead of a chart
    QVector<Label> heading, value_labels, date_labels, note;
    QVector<double> date_xs;  // where the date labels' ticks stand
    QVector<ServiceTag> tags;
    QVector<KeyEntry> key;

    [[nodiscard]] double x_of(const QDate& date) const;
    [[nodiscard]] double y_of(double value) const;
    // Every text rectangle, for tests and for tooltips.
    [[nodiscard]] QVector<QRectF> text_rects() const;
};

// device: what will be painted on (its resolution sets the font's size); nullptr for the screen.
[[nodiscard]] Layout lay_out(const ChartData& data, const QRectF& area, const ChartStyle& style,
                             QPaintDevice* device = nullptr);

// Paints data into area; gives back the layout used, for hit tests. Restores the painter's state.
Layout paint(QPainter& painter, const ChartData& data, const QRectF& area, const ChartStyle& style);
// The same with a layout that lay_out made of the same data and style: a window that is painted anew measures no words.
void paint(QPainter& painter, const ChartData& data, const Layout& layout, const ChartStyle& style);

// Index into data.points of the visit nearest to a position, within `reach`; nullopt when there is none.
[[nodiscard]] std::optional<int> point_at(const Layout& layout, const ChartData& data, const QPointF& at, double reach);

// The height that gives the chart its whole key at this width.
[[nodiscard]] double good_height(const ChartData& data, double width, const ChartStyle& style,
                                 QPaintDevice* device = nullptr);

}  // namespace kempt::charts
