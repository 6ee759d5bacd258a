// Paints the order of work in the look's colours.
#pragma once

#include <QFont>

#include "desk/plan/timeline_layout.h"

class QPainter;

namespace kempt::desk {

struct Colours;

// picked: the strip that the keyboard stands on; -1: none.
void paint_timeline(QPainter& painter, const TimelinePicture& picture, const Colours& colours, const QFont& font,
                    int picked);

}  // namespace kempt::desk
