#include "desk/photo/picture.h"

#include <algorithm>

namespace kempt::desk {

const QImage& Picture::level_for(double zoom) const {
    std::size_t i = 0;
    while (i + 1 < levels.size() && zoom <= 0.5) {
        zoom *= 2;
        ++i;
    }
    return levels[i];
}

Picture picture_from(const QImage& image) {
    Picture picture;
    if (image.isNull()) return picture;
    picture.levels.push_back(image.convertToFormat(QImage::Format_RGB32));
    while (std::max(picture.levels.back().width(), picture.levels.back().height()) > 1024) {
        const QSize half = picture.levels.back().size() / 2;
        picture.levels.push_back(
            picture.levels.back().scaled(half.expandedTo({1, 1}), Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
    }
    return picture;
}

}  // namespace kempt::desk
