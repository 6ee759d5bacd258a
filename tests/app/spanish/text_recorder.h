// A paper that keeps the words that are drawn on it, whoever draws them.
#pragma once

#include <QPaintDevice>
#include <QPaintEngine>
#include <QString>

namespace kempt::tests {

class TextRecorder : public QPaintDevice {
  public:
    // Of this many dots an inch; without bounds.
    explicit TextRecorder(int dots_per_inch = 720);
    // In the order of drawing, without any blanks: lines that were broken are whole again.
    [[nodiscard]] const QString& text() const { return text_; }
    [[nodiscard]] QPaintEngine* paintEngine() const override;

  protected:
    int metric(PaintDeviceMetric what) const override;

  private:
    class Engine : public QPaintEngine {
      public:
        explicit Engine(QString& text) : QPaintEngine(AllFeatures), text_(text) {}
        bool begin(QPaintDevice*) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState&) override {}
        void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
        void drawImage(const QRectF&, const QImage&, const QRectF&, Qt::ImageConversionFlags) override {}
        void drawPath(const QPainterPath&) override {}
        void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
        void drawTextItem(const QPointF& at, const QTextItem& item) override;
        [[nodiscard]] Type type() const override { return User; }

      private:
        QString& text_;
    };
    int dots_per_inch_;
    QString text_;
    mutable Engine engine_{text_};
};

}  // namespace kempt::tests
