// A frame of a live picture, made small on its way to an image: what is shown needs no more pixels than the window has.
#pragma once

#include <QImage>
#include <QVideoFrame>

namespace kempt::desk {

// At most `longest` pixels on its longer side, by leaving pixels out, so that the work goes by what is shown and not by
// what the camera gives. Frames in memory of the usual formats (YUYV, UYVY, NV12, NV21, YUV420P, YV12, JPEG, those of
// QImage); may run on any thread then. Null: another format, or a frame that lies on the graphics card.
[[nodiscard]] QImage small_image(const QVideoFrame& frame, int longest);

}  // namespace kempt::desk
