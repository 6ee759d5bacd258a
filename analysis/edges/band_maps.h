// The whole band looked at: cover and crossings on an even grid, and how hair and scalp differ in this photo.
#pragma once

#include <opencv2/core.hpp>
#include <optional>

#include "core/progress.h"
#include "edges/band.h"
#include "edges/edges.h"
#include "edges/network.h"

namespace kempt::edges {

struct BandMaps {
    double cell_mm = 0;  // side of a map cell (two band pixels)
    double from_mm = 0;  // depth of the first row's upper side
    cv::Mat cover;       // CV_32F, rows inward, columns along
    cv::Mat valid;       // CV_8UC1
    cv::Mat cross_edge;  // CV_32F, crossings with the line parallel to the edge, per mm
    cv::Mat cross_mean;  // CV_32F, crossings averaged over all directions, per mm
    cv::Vec3d skin_light{},
        hair_light{};       // mean linear sRGB light where the maps are sure; hair zero when none was seen
    double hair_share = 0;  // of cells that are surely hair
    double contrast = 0;    // CIEDE2000 between the two; 0 when no hair was seen
    [[nodiscard]] int row_of(double depth_mm) const;  // clamped
};

[[nodiscard]] Result<BandMaps> look_at_band(const Photo& photo, const card::Calibration& calibration,
                                            const EdgeLine& line, const EdgeMarks& marks, double depth_mm,
                                            const Progress& progress);

}  // namespace kempt::edges
