// Rendered photos of strands in a folder: drawing one takes many times as long as reading it.
#pragma once

#include <string>
#include <vector>

#include "bench/combings/cases.h"

namespace bench {

struct KeptCombings {
    std::vector<uint8_t> jpeg;
    CombingsShot truth;  // its photo is empty
};
// As take_combings; from FOLDER/NAME.jpg and .txt where they are, else drawn and left there. Without a folder always
// drawn.
[[nodiscard]] KeptCombings kept_combings(const CombingsCase& one, uint64_t person, uint64_t lie, uint64_t shot,
                                         const std::string& folder, const std::string& name);

}  // namespace bench
