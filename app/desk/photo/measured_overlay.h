// What a measurement found, turned into what is drawn over the photo. Runs on the worker.
#pragma once

#include "desk/photo/overlay.h"
#include "work/measure_photo.h"

namespace kempt::desk {

// marks: that were measured.
[[nodiscard]] Overlay overlay_from(const work::MeasureResult& result, const Marks& marks = {});

}  // namespace kempt::desk
