// Tone and colour: accuracy and verdicts over rendered panels.
//   bench_tone rows SEED COUNT            one CSV row a panel, a true line, a painted patch
//   bench_tone pairs SEED COUNT           one CSV row a shot of re-photographed pairs
//   bench_tone table ROWS.csv PAIRS.csv   the part "Tone and colour" of docs/accuracy.md
#include <cstdio>
#include <cstdlib>
#include <string>

#include "shots.h"

int main(int argc, char** argv) {
    const std::string mode = argc > 1 ? argv[1] : "";
    if (argc != 4 || (mode != "rows" && mode != "pairs" && mode != "table")) {
        std::fprintf(stderr, "usage: bench_tone rows|pairs SEED COUNT, or bench_tone table ROWS.csv PAIRS.csv\n");
        return 2;
    }
    if (mode == "table") return bench::print_table(argv[2], argv[3]);
    const uint64_t first = std::strtoull(argv[2], nullptr, 10), count = std::strtoull(argv[3], nullptr, 10);
    mode == "rows" ? bench::print_rows(first, count) : bench::print_pairs(first, count);
    return 0;
}
