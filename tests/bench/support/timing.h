// Time and memory of a program run as a child, and the decode that every figure is compared with.
#pragma once

#include <string>
#include <vector>

namespace bench {

[[nodiscard]] double now_s();
[[nodiscard]] double median(std::vector<double> values);

struct Child {
    double wall_s = 0, cpu_s = 0;
    long peak_kb = 0;
    bool good = false;  // it ended with status 0
};
// Its output goes nowhere. cores: how many it may use, 0 for all.
[[nodiscard]] Child run_child(const std::vector<std::string>& command, int cores = 0);

// Seconds from the bytes on the disk to rows of RGB, by libjpeg-turbo alone: what any reader of the photo must do.
[[nodiscard]] double plain_decode_s(const std::string& path);

}  // namespace bench
