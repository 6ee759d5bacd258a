// The errors of this room, each with what was kept and what to do.
#pragma once

#include <QString>

#include "core/result.h"

namespace kempt::intake {

[[nodiscard]] Error empty_file();
[[nodiscard]] Error truncated(const QString& format);                       // "photo-truncated"
[[nodiscard]] Error damaged(const QString& format, const QString& detail);  // "photo-damaged"
[[nodiscard]] Error unsupported(const QString& code, const QString& what, const QString& remedy);
[[nodiscard]] Error animated();                                                  // "photo-animated"
[[nodiscard]] Error too_many_pixels(qint64 width, qint64 height, qint64 limit);  // "photo-too-large"
[[nodiscard]] Error too_many_bytes(qint64 bytes, qint64 limit);                  // "file-too-large"
[[nodiscard]] Error out_of_memory();                                             // "photo-memory"

}  // namespace kempt::intake
