#include "bench/support/measure_shot.h"

#include <cmath>

#include <QByteArray>

#include "intake/intake.h"

namespace bench {

kempt::edges::EdgeMarks drawn(const render::Shot& shot, double px_per_mm, double noise_mm, uint64_t seed) {
    render::Rng rng(seed);
    kempt::edges::EdgeMarks marks;
    const auto& line = shot.truth.edge_px;
    const auto& hair = shot.truth.hair_side_px;
    const double nx = hair.x - line[line.size() / 2].x, ny = hair.y - line[line.size() / 2].y,
                 length = std::hypot(nx, ny);
    const double drift = rng.normal(0, noise_mm) * px_per_mm;
    for (size_t i = 0; i<line.size(); i += noise_mm> 0 ? 4 : 1) {
        const double off = drift + 0.5 * rng.normal(0, noise_mm) * px_per_mm;
        marks.edge_line_px.emplace_back(line[i].x + off * nx / length, line[i].y + off * ny / length);
    }
    marks.hair_side_px = {hair.x, hair.y};
    return marks;
}

Measured measure(const std::vector<uint8_t>& jpeg, const kempt::edges::EdgeMarks& marks) {
    Measured out;
    const auto decoded = kempt::intake::decode(
        QByteArray(reinterpret_cast<const char*>(jpeg.data()), static_cast<qsizetype>(jpeg.size())));
    if (!decoded) {
        out.error = decoded.error().code;
        return out;
    }
    const kempt::Photo& photo = decoded->photo;
    out.calibration = kempt::card::calibrate(photo);
    std::vector<cv::Point2d> region = marks.edge_line_px;
    region.push_back(marks.hair_side_px);
    out.gate = kempt::card::judge(photo, out.calibration, region);
    auto result = kempt::edges::measure_edges(photo, out.calibration, marks);
    if (!result) {
        out.error = result.error().code;
        return out;
    }
    out.contrast = result->contrast;
    for (const auto& q : result->readings) out.readings[q.name] = q;
    for (const auto& r : result->refused) out.refused[r.name] = r.code;
    return out;
}

}  // namespace bench
