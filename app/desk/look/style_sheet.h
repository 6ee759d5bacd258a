// The application's style sheet, generated from the palette and the measures.
#pragma once

#include <QString>

#include "desk/look/colours.h"
#include "desk/look/measures.h"

namespace kempt::desk {

// Widgets say what they are by dynamic properties: QLabel[role="title|heading|lead|caption|figure|soft"],
// QFrame[panel="surface|sunken|better|worse|caution|plain"], QAbstractButton[kind="primary|quiet|danger|step"].
[[nodiscard]] QString style_sheet(const Colours& colours, const Measures& measures);

}  // namespace kempt::desk
