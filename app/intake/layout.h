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
    QByteArray icc;  // empty where there is none
};

// Errors: damaged (truncated or not making sense), unsupported (animated; kinds of TIFF that are no ordinary photo).
[[nodiscard]] Result<Layout> png_layout(const QByteArray& bytes);
// Whether every chunk of a file that png_layout() accepts agrees with its check sum: a bent profile would be passed
// over in silence by the decoder, and colours measured by it would be wrong.
[[nodiscard]] bool png_sums_agree(const QByteArray& bytes);
[[nodiscard]] Result<Layout> webp_layout(const QByteArray& bytes);
[[nodiscard]] Result<Layout> tiff_layout(const QByteArray& bytes);

}  // namespace kempt::intake
