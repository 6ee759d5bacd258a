// A chart in the window; the same painter draws it in the report.
#pragma once

#include <QHash>
#include <QWidget>

#include "charts/chart_data.h"
#include "charts/chart_painter.h"

namespace kempt::desk {

class ChartView : public QWidget {
    Q_OBJECT
  public:
    explicit ChartView(QWidget* parent = nullptr);
    void set_data(const charts::ChartData& data);
    [[nodiscard]] const charts::ChartData& data() const { return data_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void forget_layout();
    [[nodiscard]] charts::ChartStyle style_now() const;
    [[nodiscard]] QString words_of_point(int index) const;
    charts::ChartData data_;
    charts::Layout layout_;
    QSize laid_out_;                   // of what layout_ was made; invalid: nothing
    mutable QHash<int, int> heights_;  // by width
    int shown_ = -1;                   // the point that the keyboard stands on
};

}  // namespace kempt::desk
