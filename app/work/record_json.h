// The JSON that a record has wherever it is written: listed by a command or exported with a book. What ties it to its
// neighbours there, the caller adds.
#pragma once

#include <QJsonObject>

#include "domain/records.h"

namespace kempt::work {

// {"wet": , "styled": , "product": }
[[nodiscard]] QJsonObject json_of_hair(const HairState& hair);
// id, view, shot, file, format, width, height, sha256, taken (null where unknown), findings. Without its visit and
// without its quality level, which the two places write differently while there is none (null, empty text).
[[nodiscard]] QJsonObject json_of_photo_file(const PhotoRecord& photo);

}  // namespace kempt::work
