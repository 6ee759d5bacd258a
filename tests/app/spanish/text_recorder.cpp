#include "text_recorder.h"

namespace kempt::tests {

TextRecorder::TextRecorder(int dots_per_inch) : dots_per_inch_(dots_per_inch) {}

QPaintEngine* TextRecorder::paintEngine() const {
    return &engine_;
}

void TextRecorder::Engine::drawTextItem(const QPointF&, const QTextItem& item) {
    for (const QChar letter : item.text())
        if (!letter.isSpace()) text_ += letter;
}

int TextRecorder::metric(PaintDeviceMetric what) const {
    constexpr int far = 1000000;
    switch (what) {
        case PdmWidth:
        case PdmHeight:
            return far;
        case PdmWidthMM:
        case PdmHeightMM:
            return static_cast<int>(25.4 * far / dots_per_inch_);
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY:
            return dots_per_inch_;
        case PdmDepth:
            return 32;
        case PdmNumColors:
            return 1 << 24;
        case PdmDevicePixelRatio:
            return 1;
        default:
            return static_cast<int>(devicePixelRatioFScale());
    }
}

}  // namespace kempt::tests
