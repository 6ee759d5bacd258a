#include "desk/photo/view_map.h"

#include <algorithm>

namespace kempt::desk {

void ViewMap::set_photo(QSizeF photo) {
    photo_ = photo.expandedTo({1, 1});
    fit();
}

void ViewMap::set_window(QSizeF window) {
    window_ = window.expandedTo({1, 1});
    if (fitted_)
        fit();
    else
        keep_in_reach();
}

double ViewMap::fit_zoom() const {
    return std::min(window_.width() / photo_.width(), window_.height() / photo_.height());
}

void ViewMap::fit() {
    fitted_ = true;
    zoom_ = fit_zoom();
    centre_ = {photo_.width() / 2, photo_.height() / 2};
}

QPointF ViewMap::photo_from_window(QPointF p) const {
    return centre_ + (p - QPointF(window_.width() / 2, window_.height() / 2)) / zoom_;
}

QPointF ViewMap::window_from_photo(QPointF p) const {
    return (p - centre_) * zoom_ + QPointF(window_.width() / 2, window_.height() / 2);
}

QRectF ViewMap::shown_photo() const {
    return QRectF(photo_from_window({0, 0}), photo_from_window({window_.width(), window_.height()}))
        .intersected(QRectF(QPointF(0, 0), photo_));
}

void ViewMap::zoom_about(QPointF window_point, double factor) {
    const double least = fit_zoom();
    const double wanted = std::clamp(zoom_ * factor, least, std::max(least, greatest_zoom));
    const QPointF held = photo_from_window(window_point);
    zoom_ = wanted;
    centre_ = held - (window_point - QPointF(window_.width() / 2, window_.height() / 2)) / zoom_;
    fitted_ = wanted <= least * 1.0001;
    if (fitted_) fit();
    keep_in_reach();
}

void ViewMap::pan(QPointF window_delta) {
    if (fitted_) return;
    centre_ -= window_delta / zoom_;
    keep_in_reach();
}

void ViewMap::bring_into_view(QPointF photo_point, double margin) {
    if (fitted_) return;
    const QPointF at = window_from_photo(photo_point);
    const double mx = std::min(margin, window_.width() / 3), my = std::min(margin, window_.height() / 3);
    const QPointF kept(std::clamp(at.x(), mx, window_.width() - mx), std::clamp(at.y(), my, window_.height() - my));
    centre_ += (at - kept) / zoom_;
    keep_in_reach();
}

// The photo never leaves the window: its middle stays where it is smaller than the window, its border is not dragged
// inside where it is larger.
void ViewMap::keep_in_reach() {
    const auto axis = [this](double centre, double photo, double window) {
        const double half = window / zoom_ / 2;
        return half * 2 >= photo ? photo / 2 : std::clamp(centre, half, photo - half);
    };
    centre_ = {axis(centre_.x(), photo_.width(), window_.width()),
               axis(centre_.y(), photo_.height(), window_.height())};
}

}  // namespace kempt::desk
