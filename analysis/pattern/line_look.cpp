#include "pattern/line_look.h"

#include <cmath>

namespace kempt::pattern {

namespace {

constexpr std::size_t most_kinks = 3;  // more are its curl

// Waves swing from left to right pi/2 times a curve diameter when they are round, twice or a little more when they are
// flat; a trace that hops between a strand and its shadow does so six times and more (bench_pattern's seeds). Straight
// hair may waver as it likes.
bool wavers(const Shape& shape, const Course& course) {
    return shape.curve_diameter_mm < 100 && course.swings_per_mm * shape.curve_diameter_mm > 3.5;
}

}  // namespace

LineLook look_at(const combings::TracedStrand& line, double noise_mm) {
    LineLook out;
    Course course;
    const auto shape = shape_and_course(line.path_mm, noise_mm, &course);
    if (!shape) return out;
    out.shape = shape.value();
    // A line that bends much and yet runs straight ripples by (ratio - 1) x diameter: a tenth of a millimetre and less
    // is no wave of a hair but the noise along a crease.
    out.hair =
        !(shape->curve_diameter_mm < 100 && (shape->arc_mm / shape->chord_mm - 1) * shape->curve_diameter_mm < 0.1);
    if (course.kinks_mm.empty() || course.kinks_mm.size() > most_kinks) {
        out.wavers = wavers(*out.shape, course);
        if (!out.wavers) out.parts.push_back(*out.shape);
        return out;
    }
    out.kinked = true;
    std::vector<double> kinks = course.kinks_mm;
    kinks.push_back(1e9);
    std::vector<cv::Point2d> part;
    double along = 0;
    std::size_t next = 0;
    for (std::size_t i = 0; i < line.path_mm.size(); ++i) {
        if (i > 0) along += cv::norm(line.path_mm[i] - line.path_mm[i - 1]);
        const bool clear = std::abs(along - kinks[next]) > 2;
        if (clear) part.push_back(line.path_mm[i]);
        if (!clear || i + 1 == line.path_mm.size()) {
            if (auto one = shape_and_course(part, noise_mm, &course); one && !wavers(one.value(), course))
                out.parts.push_back(one.value());
            part.clear();
        }
        if (along > kinks[next] + 2) ++next;
    }
    out.wavers = out.parts.empty();
    return out;
}

}  // namespace kempt::pattern
