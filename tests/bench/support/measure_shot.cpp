#include "bench/support/measure_shot.h"

#include <QByteArray>

#include "intake/intake.h"
#include "render/write_photo.h"

namespace bench {

Measured measure(const render::Scene& scene, render::Shot& shot, int quality, double marks_noise_mm, uint64_t seed) {
    Measured out;
    const auto bytes = render::jpeg_of(shot, quality, scene.phone.display_p3, {});
    const auto decoded = kempt::intake::decode(QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())));
    if (!decoded) {
        out.error = decoded.error().code;
        return out;
    }
    const kempt::Photo& photo = decoded->photo;
    out.calibration = kempt::card::calibrate(photo);
    render::Rng rng(seed);
    kempt::edges::EdgeMarks marks;
    // A hand's error along the line: a slow drift and a small jitter at each click, one click every 4 mm or so.
    const double drift = rng.normal(0, marks_noise_mm) * scene.camera.px_per_mm, nx = shot.truth.hair_side_px.x - shot.truth.edge_px[shot.truth.edge_px.size() / 2].x,
                 ny = shot.truth.hair_side_px.y - shot.truth.edge_px[shot.truth.edge_px.size() / 2].y, length = std::hypot(nx, ny);
    for (size_t i = 0; i < shot.truth.edge_px.size(); i += marks_noise_mm > 0 ? 4 : 1) {
        const double off = drift + 0.5 * rng.normal(0, marks_noise_mm) * scene.camera.px_per_mm;
        marks.edge_line_px.emplace_back(shot.truth.edge_px[i].x + off * nx / length, shot.truth.edge_px[i].y + off * ny / length);
    }
    marks.hair_side_px = {shot.truth.hair_side_px.x, shot.truth.hair_side_px.y};
    std::vector<cv::Point2d> region = marks.edge_line_px;
    region.push_back(marks.hair_side_px);
    out.gate = kempt::card::judge(photo, out.calibration, region);
    auto result = kempt::edges::measure_edges(photo, out.calibration, marks);
    if (!result) {
        out.error = result.error().code;
        return out;
    }
    for (const auto& q : result->readings) out.readings[q.name] = q;
    for (const auto& r : result->refused) out.refused[r.name] = r.code;
    return out;
}

}  // namespace bench
