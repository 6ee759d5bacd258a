// JPEG through libjpeg-turbo, straight into the rows of the picture.
#pragma once

#include <QByteArray>
#include <QSize>
#include <memory>
#include <opencv2/core.hpp>

#include "core/result.h"

namespace kempt::intake {

struct JpegHead {
    QSize stored;
    bool grey = false;
    bool cmyk = false;
    bool inverted = false;  // CMYK whose 255 means "no ink", as an Adobe marker implies
    QByteArray exif, icc;
};

class JpegReader {
  public:
    JpegReader();
    ~JpegReader();
    JpegReader(const JpegReader&) = delete;
    JpegReader& operator=(const JpegReader&) = delete;

    // Errors: damaged, unsupported (12-bit, lossless). The bytes must outlive the reader.
    [[nodiscard]] Result<JpegHead> open(const QByteArray& bytes);
    // Once, after open(): CV_8UC3 R G B, or CV_8UC4 C M Y K as stored; upright. Errors: damaged.
    [[nodiscard]] Result<cv::Mat> pixels(int orientation);

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace kempt::intake
