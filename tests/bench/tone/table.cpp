#include "shots.h"
namespace bench {
int print_table(const std::string&, const std::string&) {
    return 0;
}
}  // namespace bench
