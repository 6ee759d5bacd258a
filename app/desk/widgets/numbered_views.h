// The views with the number keys that choose them, as the tray and the camera show them.
#pragma once

#include <QStringList>

#include "desk/translations/said.h"
#include "domain/words.h"

namespace kempt::desk {

[[nodiscard]] inline QStringList numbered_views() {
    QStringList words;
    for (const View view : all_views())
        words.append(QStringLiteral("%1 %2").arg(words.size() + 1).arg(said(word_of(view))));
    return words;
}

}  // namespace kempt::desk
