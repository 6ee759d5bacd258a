// The sample client whose lengths, ends and comb-outs are photographed: shine, tone, hem, loose strands, pattern.
#pragma once

#include <string>

#include "render/write_photo.h"

namespace samples {

void put_text(const std::string& path, const std::string& text);

// Writes her photos, marks and truth below `out` and returns her entry for scenario.json.
[[nodiscard]] std::string lengths_client(const std::string& out, const render::CardPicture& card);

}  // namespace samples
