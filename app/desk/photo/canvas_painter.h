// Draws marks over a photo: dark casings under bright cores, so that they are seen on every hair and every skin.
#pragma once

#include <QPainter>
#include <QPolygonF>
#include <optional>

#include "desk/photo/marks_editor.h"
#include "desk/photo/picture.h"
#include "desk/photo/view_map.h"

namespace kempt::desk {

struct MarksScene {
    const MarksEditor* editor = nullptr;
    std::optional<Handle> picked, hovered;
    QPolygonF band;    // in photo pixels; drawn thin
    double scale = 1;  // of handles and strokes: follows the text size
    bool keyboard = false;
};

void paint_marks(QPainter& painter, const ViewMap& map, const MarksScene& scene);
// A round glass that shows what lies under the point being moved, away from it, so that neither hand nor pointer hides
// it.
void paint_glass(QPainter& painter, const ViewMap& map, const Picture& picture, QPointF photo_point, QSizeF window,
                 double scale);

}  // namespace kempt::desk
