// The pages of a report as they will be printed, one below the other. Asks for the pages that are seen; those that went
// out of sight are forgotten, so that a long report takes no more room than a short one.
#pragma once

#include <QAbstractScrollArea>
#include <QHash>
#include <QImage>
#include <QSizeF>

namespace kempt::desk {

class PageView : public QAbstractScrollArea {
    Q_OBJECT
  public:
    explicit PageView(QWidget* parent = nullptr);
    // Another report, or the same one laid out anew: the place that is seen stays.
    void set_pages(int count, QSizeF points);
    void set_page(int page, const QImage& picture);
    [[nodiscard]] int count() const { return count_; }
    [[nodiscard]] int current() const;        // the topmost page of which most is seen
    [[nodiscard]] int page_width_px() const;  // of the screen
    [[nodiscard]] bool has(int page) const { return pictures_.contains(page); }
    void show_page(int page);
    void zoom_by(double factor);
    [[nodiscard]] QSize sizeHint() const override { return {560, 640}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {220, 260}; }

  signals:
    void wanted(int page, int width_px);
    void moved();

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

  private:
    void lay_out();
    [[nodiscard]] QRect page_rect(int page) const;  // in the viewport
    void ask();
    void describe();
    int count_ = 0, step_ = 1;
    QSizeF points_{595, 842};
    double zoom_ = 1;
    QHash<int, QImage> pictures_;
};

}  // namespace kempt::desk
