// A photo as the windows show it: sRGB pixels and smaller copies of them, so that zooming out stays quick and smooth.
#pragma once

#include <QImage>
#include <vector>

namespace kempt::desk {

struct Picture {
    std::vector<QImage> levels;  // RGB32; each half the size of the one before, down to 512 px; empty: no picture
    [[nodiscard]] QSize size() const { return levels.empty() ? QSize() : levels.front().size(); }
    // The smallest copy that still has a pixel for each window pixel at this zoom.
    [[nodiscard]] const QImage& level_for(double zoom) const;
};

[[nodiscard]] Picture picture_from(const QImage& image);

// The estimated cover over part of a photo.
struct Cover {
    QImage tint;   // ARGB32 premultiplied
    QRectF where;  // in photo pixels
};

}  // namespace kempt::desk
