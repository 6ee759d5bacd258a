// Behind the tone readings: root, mid-shaft and ends as swatches with their colour in words, the colours along the
// line, and the lines of demarcation.
#pragma once

#include <QWidget>

#include "desk/photo/overlay.h"

class QBoxLayout;

namespace kempt::desk {

class ToneDetails : public QWidget {
    Q_OBJECT
  public:
    explicit ToneDetails(QWidget* parent = nullptr);
    void show_tone(const ToneOverlay& tone);

  private:
    QBoxLayout* column_;
    QString shown_;  // what the column was made from
};

// "lightness 24, 7 towards red, 11 towards yellow": CIE L*, a*, b* (D65) in words.
[[nodiscard]] QString words_of(const ToneSwatch& swatch);
// "Line of demarcation 38 mm from the scalp..."
[[nodiscard]] QString words_of(const ToneLine& line);

}  // namespace kempt::desk
