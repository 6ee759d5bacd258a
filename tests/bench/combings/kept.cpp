#include "bench/combings/kept.h"

#include <filesystem>
#include <fstream>

#include "bench/support/bytes.h"
#include "render/write_photo.h"

namespace bench {

namespace {

void write_truth(const std::string& path, const CombingsShot& shot) {
    // Renamed when whole: a run that was stopped leaves no half of a truth.
    const std::string part = path + ".part";
    {
        std::ofstream out(part);
        out.precision(10);
        out << shot.shot.px_per_mm << " " << shot.display_p3 << "\n";
        for (size_t i = 0; i < shot.shot.strands_px.size(); ++i) {
            out << shot.shot.lengths_mm[i] << " " << shot.shot.strands_px[i].size();
            for (const render::V2& p : shot.shot.strands_px[i]) out << " " << p.x << " " << p.y;
            out << "\n";
        }
    }
    std::filesystem::rename(part, path);
}

CombingsShot read_truth(const std::string& path) {
    CombingsShot out;
    std::ifstream in(path);
    in >> out.shot.px_per_mm >> out.display_p3;
    double length = 0;
    for (size_t points = 0; in >> length >> points;) {
        out.shot.lengths_mm.push_back(length);
        out.shot.strands_px.emplace_back(points);
        for (render::V2& p : out.shot.strands_px.back()) in >> p.x >> p.y;
    }
    tell_truth(out);
    return out;
}

}  // namespace

KeptCombings kept_combings(const CombingsCase& one, uint64_t person, uint64_t lie, uint64_t shot,
                           const std::string& folder, const std::string& name) {
    const std::string at = folder + "/" + name;
    KeptCombings out;
    if (!folder.empty() && std::filesystem::exists(at + ".txt")) {
        out.jpeg = bytes_of(at + ".jpg");
        out.truth = read_truth(at + ".txt");
        return out;
    }
    out.truth = take_combings(one, person, lie, shot);
    out.jpeg = render::jpeg_of(out.truth.shot.photo, jpeg_qualities[one.quality], out.truth.display_p3, {});
    out.truth.shot.photo = {};
    if (!folder.empty()) {
        render::write_file(at + ".jpg", out.jpeg);
        write_truth(at + ".txt", out.truth);
    }
    return out;
}

}  // namespace bench
