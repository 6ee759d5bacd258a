// Signs of our own, drawn in strokes on a 24 x 24 grid, in the colours in force when they are painted.
#pragma once

#include <QIcon>

namespace kempt::desk {

enum class Sign {
    back,
    forward,
    add,
    remove,
    search,
    undo,
    redo,
    closer,
    farther,
    fit,
    compare,
    report,
    settings,
    folder,
    picture,
    hair,
    scalp,
    ruler,
    pencil,
    flip,
    book,
    more,
    dark,
    menu,
    shine,
    tone,
    ends,
    comb_out,
    wave,
    anchor,
    measured,
    plan
};

// on_accent: for a button filled with the accent colour.
[[nodiscard]] QIcon icon_of(Sign sign, bool on_accent = false);

}  // namespace kempt::desk
