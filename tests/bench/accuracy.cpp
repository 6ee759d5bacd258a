// Measures the photos that bench_render left in a folder and prints one CSV row each, truth beside estimate.
//   bench_accuracy FOLDER
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>
#include <string>
#include <vector>

#include "bench/support/measure_shot.h"

int main(int argc, char** argv) {
    if (argc != 2) return 2;
    const std::string folder = argv[1];
    const std::vector<std::string> names = {"edge_coverage", "edge_strands", "fill_depth", "bare_length",
                                            "length_density"};
    std::printf(
        "seed,skin,hair,shape,px_per_mm,tilt,line_mm,line_cover,full_cover,contrast_true,found,px_per_mm_est,tilt_est,"
        "curve,gate,error,contrast");
    for (const auto& n : names)
        std::printf(",%s_true,%s,%s_low,%s_high,%s_refused", n.c_str(), n.c_str(), n.c_str(), n.c_str(), n.c_str());
    std::printf("\n");
    std::vector<std::string> rows;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().filename().string().rfind("truth_", 0) != 0) continue;
        std::ifstream in(entry.path());
        for (std::string row; std::getline(in, row);) rows.push_back(row);
    }
    std::sort(rows.begin(), rows.end());
    for (const std::string& row : rows) {
        std::vector<std::string> cell;
        std::stringstream split(row);
        for (std::string c; std::getline(split, c, ',');) cell.push_back(c);
        std::ifstream photo(folder + "/photo_" + cell[0] + ".jpg", std::ios::binary),
            line(folder + "/line_" + cell[0] + ".txt");
        const std::vector<uint8_t> bytes{std::istreambuf_iterator<char>(photo), {}};
        kempt::edges::EdgeMarks marks;
        line >> marks.hair_side_px.x >> marks.hair_side_px.y;
        for (double x, y; line >> x >> y;) marks.edge_line_px.emplace_back(x, y);
        const bench::Measured m = bench::measure(bytes, marks);
        for (size_t k = 0; k < 10; ++k) std::printf("%s,", cell[k].c_str());
        std::printf("%d,%.4f,%.3f,%d,%s,%s,%.2f", m.calibration.card_found, m.calibration.px_per_mm,
                    m.calibration.tilt_deg, m.calibration.light && m.calibration.light->curve_fitted,
                    m.gate.level.c_str(), m.error.c_str(), m.contrast);
        for (size_t k = 0; k < names.size(); ++k) {
            const auto q = m.readings.find(names[k]);
            const auto r = m.refused.find(names[k]);
            std::printf(",%s", cell[10 + k].c_str());
            if (q != m.readings.end())
                std::printf(",%.4f,%.4f,%.4f,", q->second.value, q->second.low, q->second.high);
            else
                std::printf(",,,,%s", r != m.refused.end() ? r->second.c_str() : "none");
        }
        std::printf("\n");
        std::fflush(stdout);
    }
    return 0;
}
