// The version of the measuring methods. Stored with every reading; raised whenever a change moves any result,
// with a line in docs/result-changes.md.
#pragma once

namespace kempt {
inline constexpr int analysis_version = 1;
}
