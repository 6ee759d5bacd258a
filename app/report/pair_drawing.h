// The before/after pair laid out for a width, in any unit of length: shared by the PNG and the page.
#pragma once

#include <QPointF>

#include "report/pair_picture.h"
#include "report/text_box.h"

QT_BEGIN_NAMESPACE
class QPainter;
QT_END_NAMESPACE

namespace kempt::report {

// The pictures as opaque sRGB, no wider than max_width_px; px_per_mm follows. A missing picture stays null.
[[nodiscard]] PairPicture prepared(const PairPicture& pair, int max_width_px);

class PairDrawing {
  public:
    // scale: units a point of text. The pictures are as large as width and max_picture_height allow, both the same.
    PairDrawing(const PairPicture& pair, double width, double max_picture_height, double scale);
    [[nodiscard]] double height() const { return height_; }
    [[nodiscard]] double picture_width() const { return picture_.width(); }
    void draw(QPainter& painter, QPointF top_left) const;

  private:
    PairPicture pair_;
    QSizeF picture_;
    double gap_ = 0, height_ = 0, scale_ = 1;
    double top_ = 0, captions_top_ = 0, bar_top_ = 0, verdict_top_ = 0;
    double bar_length_ = 0;  // 0: no bar
    TextBox title_, before_, after_, bar_, one_scale_, verdict_, no_picture_;
};

}  // namespace kempt::report
