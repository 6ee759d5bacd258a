// The skeleton of PNG, WebP and TIFF files, read without decoding: size, animation, truncation, EXIF.
#pragma once

#include <QByteArray>
#include <QSize>

#include "core/result.h"
#include "intake/exif_facts.h"

namespace kempt::intake {

struct Layout {
    QSize stored;  // as in the file, before turning
    bool grey = false;
    int pages = 1;  // of a TIFF
    ExifFacts exif;
};

// Errors: damaged (truncated or not making sense), unsupported (animated; kinds of TIFF that are no ordinary photo).
[[nodiscard]] Result<Layout> png_layout(const QByteArray& bytes);
[[nodiscard]] Result<Layout> webp_layout(const QByteArray& bytes);
[[nodiscard]] Result<Layout> tiff_layout(const QByteArray& bytes);

}  // namespace kempt::intake
