// Where the eyes of a face are in a photo, by OpenCV's cascades (Viola and Jones 2001; Lienhart and Maydt 2002; the
// trained files of Debian's opencv-data). A proposal for the band that hides them, never a proof that there is no face:
// docs/user-guide.md says how often faces are missed.
#pragma once

#include <QPointF>
#include <QVector>
#include <array>
#include <opencv2/core.hpp>

#include "core/progress.h"
#include "core/result.h"

namespace kempt::work {

// A turned rectangle in pixels of the upright photo.
struct EyeBand {
    QPointF middle;
    double length = 0, height = 0;  // px
    double turn_deg = 0;            // clockwise as seen, y down
    [[nodiscard]] std::array<QPointF, 4> corners() const;
    bool operator==(const EyeBand&) const = default;
};

// One band for each face. `rgb` is CV_8UC3 or CV_16UC3 of any size. Faces that take less than an eighth of the shorter
// side are not looked for (a fifth, of heads laid aside or seen from the side), nor, where the scale of the hair's
// plane is known, faces smaller than 60 mm in it: a head is two to three times as wide. px_per_mm 0: not known. Errors:
// unsupported ("no-cascades": the files are not installed), cancelled.
[[nodiscard]] Result<QVector<EyeBand>> find_eyes(const cv::Mat& rgb, double px_per_mm = 0,
                                                 const Progress& progress = {});

}  // namespace kempt::work
