// Words of the care rooms as the plan page writes them.
#pragma once

#include <QString>
#include <string_view>

#include "care/client_state.h"

namespace kempt::desk {

[[nodiscard]] inline QString qs(std::string_view words) {
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}
// "120 mm", "4.7 in", by the unit in force.
[[nodiscard]] QString length_words(double mm);
// "0-20 mm", "from 20 mm to the ends"
[[nodiscard]] QString span_words(const care::Span& span);
// "12 min 30 s" from the first stroke, to half a minute: "12:30" would be read as the time of day.
[[nodiscard]] QString clock_words(double minutes);

}  // namespace kempt::desk
