// HEIC through libheif. libheif turns and mirrors the picture itself, so the EXIF orientation must not be applied
// again.
#pragma once

#include <QByteArray>
#include <QSize>
#include <memory>

#include "core/result.h"
#include "intake/loaded.h"

namespace kempt::intake {

struct HeicHead {
    QSize upright;
    QByteArray exif;
};

class HeicReader {
  public:
    HeicReader();
    ~HeicReader();
    HeicReader(const HeicReader&) = delete;
    HeicReader& operator=(const HeicReader&) = delete;

    // Errors: damaged, unsupported. The bytes must outlive the reader.
    [[nodiscard]] Result<HeicHead> open(const QByteArray& bytes);
    // Once, after open(); upright. Errors: damaged, unsupported (HDR tone curves).
    [[nodiscard]] Result<Loaded> pixels(QStringList& notes);

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace kempt::intake
