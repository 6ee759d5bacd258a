// PNG, WebP and TIFF through Qt's image readers, 16 bits kept.
#pragma once

#include <QByteArray>

#include "core/result.h"
#include "intake/layout.h"
#include "intake/loaded.h"
#include "intake/sniff.h"

namespace kempt::intake {

// Errors: damaged, unsupported (Qt's plugin for the format is not installed).
[[nodiscard]] Result<Loaded> read_with_qt(const QByteArray& bytes, Format format, const Layout& layout);

}  // namespace kempt::intake
