// Which part of the photo the window shows: zoom and pan, as plain arithmetic.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace kempt::desk {

class ViewMap {
  public:
    void set_photo(QSizeF photo);    // fits it
    void set_window(QSizeF window);  // keeps what is in the middle; fits when it was fitted

    [[nodiscard]] double zoom() const { return zoom_; }  // window pixels for each photo pixel
    [[nodiscard]] double fit_zoom() const;
    [[nodiscard]] bool fitted() const { return fitted_; }
    [[nodiscard]] QPointF photo_from_window(QPointF p) const;
    [[nodiscard]] QPointF window_from_photo(QPointF p) const;
    [[nodiscard]] QRectF shown_photo() const;  // of the photo, clipped to it

    void fit();
    void zoom_about(QPointF window_point, double factor);  // the photo stays under that point
    void pan(QPointF window_delta);
    void bring_into_view(QPointF photo_point, double margin);

    static constexpr double greatest_zoom = 24;  // a 70 um hair at 12 px/mm is then 20 px wide: enough to place a point

  private:
    void keep_in_reach();
    QSizeF photo_{1, 1}, window_{1, 1};
    double zoom_ = 1;
    QPointF centre_;  // of the window, in photo pixels
    bool fitted_ = true;
};

}  // namespace kempt::desk
