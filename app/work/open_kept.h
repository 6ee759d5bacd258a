// A photo of the book, decoded and with its card looked for.
#pragma once

#include <memory>

#include "core/progress.h"
#include "core/result.h"
#include "domain/records.h"
#include "work/book_fwd.h"
#include "work/measure_photo.h"

namespace kempt::work {

// Errors: not_found (photo), those of open_photo.
[[nodiscard]] Result<std::shared_ptr<const OpenPhoto>> open_kept(Book& book, Id photo, const MeasureOptions& options,
                                                                 const Progress& progress = {});

}  // namespace kempt::work
