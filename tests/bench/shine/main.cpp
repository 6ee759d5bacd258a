// Shine against rendered truth.
//   bench_shine rows SEED COUNT          one CSV row a photo
//   bench_shine pairs SEED COUNT         one CSV row a shot of re-photographed heads (pairs.cpp)
//   bench_shine table ROWS.csv PAIRS.csv the part "## Shine" of docs/accuracy.md
#include <cstdlib>
#include <string>

#include "bench/shine/modes.h"

int main(int argc, char** argv) {
    if (argc != 4) return 2;
    const std::string mode = argv[1];
    if (mode == "rows")
        return bench::shine_rows(std::strtoull(argv[2], nullptr, 10), std::strtoull(argv[3], nullptr, 10));
    if (mode == "pairs")
        return bench::shine_pairs(std::strtoull(argv[2], nullptr, 10), std::strtoull(argv[3], nullptr, 10));
    if (mode == "table") return bench::shine_table(argv[2], argv[3]);
    return 2;
}
