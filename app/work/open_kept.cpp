#include "work/open_kept.h"

#include "book/photo_store.h"

namespace kempt::work {

Result<std::shared_ptr<const OpenPhoto>> open_kept(Book& book, Id photo, const MeasureOptions& options,
                                                   const Progress& progress) {
    const auto bytes = store::photo_bytes(book, photo);
    if (!bytes) return bytes.error();
    return open_photo(bytes.value(), options, progress);
}

}  // namespace kempt::work
