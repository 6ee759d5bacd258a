// Which kind of file it is, by its first bytes; the name of a file is never asked.
#pragma once

#include <QByteArray>
#include <QString>

#include "core/result.h"

namespace kempt::intake {

enum class Format { jpeg, png, webp, tiff, heic };

[[nodiscard]] QString name_of(Format format);  // "jpeg": as in Header::format
// Errors: damaged (zero bytes), unsupported ("photo-format", "photo-animated", "photo-raw").
[[nodiscard]] Result<Format> sniff(const QByteArray& bytes);

}  // namespace kempt::intake
