// Paints the hair's record in the look's colours.
#pragma once

#include <QFont>

#include "desk/plan/strand_layout.h"

class QPainter;

namespace kempt::desk {

struct Colours;

// picked_mm: the place that is asked about, from..to of one centimetre or half inch.
void paint_strand(QPainter& painter, const StrandPicture& picture, const Colours& colours, const QFont& font,
                  const care::Span& picked);

}  // namespace kempt::desk
