// Time and presses from dropped photos of a returning client to a visit with readings for three views, through the real
// windows and the real analysis.
//   bench_desk_round SAMPLES [RUNS]      prints name,value lines; run it with QT_QPA_PLATFORM=offscreen
#include <QApplication>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "app/desk/returning_client.h"
#include "bench/support/timing.h"
#include "desk/look/look.h"

int main(int argc, char** argv) {
    QApplication app(argc, argv);
    QApplication::setOrganizationName("KemptBench");
    if (argc < 2) return 2;
    kempt::desk::look().apply({});
    const int runs = argc > 2 ? std::atoi(argv[2]) : 5;
    std::vector<double> seconds;
    int actions = 0, stall_ms = 0;
    for (int i = 0; i < runs; ++i) {
        kempt::test::ReturningClient round(QString::fromLocal8Bit(argv[1]));
        round.run();
        if (!round.trouble().isEmpty()) {
            std::fprintf(stderr, "%s\n", qPrintable(round.trouble()));
            return 1;
        }
        seconds.push_back(round.seconds);
        actions = round.actions;
        stall_ms = std::max(stall_ms, round.longest_stall_ms);
    }
    std::printf("round_s,%.1f\nround_slowest_s,%.1f\nround_actions,%d\nround_stall_ms,%d\nround_runs,%d\n",
                bench::median(seconds), *std::max_element(seconds.begin(), seconds.end()), actions, stall_ms, runs);
    return 0;
}
