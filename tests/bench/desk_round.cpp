// Time and presses from dropped photos of a returning client to a visit with readings for three views, through the real
// windows and the real analysis.
//   bench_desk_round SAMPLES [RUNS]      prints its part of the page docs/desk-speed.md
#include <QApplication>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "app/desk/returning_client.h"
#include "bench/support/timing.h"
#include "desk/look/look.h"

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
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
    std::printf(
        "## A returning client\n\nWritten by `bench_desk_round` (`tests/bench/desk_round.cpp`): from three dropped "
        "photos of "
        "a client who was here before to a visit with readings for three views, pressed by a program that waits only "
        "for the windows; %d times.\n\n| what | figure | asked |\n| --- | --- | --- |\n"
        "| time, median | %.1f s | < 60 s |\n| time, longest | %.1f s | |\n| presses of key or mouse | %d | < 25 |\n"
        "| event loop held up, longest | %d ms | |\n",
        runs, bench::median(seconds), *std::max_element(seconds.begin(), seconds.end()), actions, stall_ms);
    return 0;
}
