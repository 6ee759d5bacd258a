// From a file's colour profile to the tables and the matrix that lead to linear sRGB light (lcms2).
#pragma once

#include <QByteArray>
#include <QStringList>
#include <memory>
#include <opencv2/core.hpp>

#include "core/photo.h"

namespace kempt::intake {

// An ICC profile, read or made. Empty where there is none or it cannot be read.
class Profile {
  public:
    struct Chromaticity {
        double x = 0, y = 0;
    };
    static Profile from_icc(const QByteArray& icc);
    static Profile adobe_rgb();
    // gamma 0: the sRGB curve.
    static Profile from_primaries(const Chromaticity& white, const Chromaticity& red, const Chromaticity& green,
                                  const Chromaticity& blue, double gamma, const char* name);
    static Profile srgb();

    [[nodiscard]] bool valid() const { return handle_ != nullptr; }
    [[nodiscard]] void* handle() const { return handle_.get(); }  // cmsHPROFILE
    [[nodiscard]] QString name() const;

  private:
    std::shared_ptr<void> handle_;
    QString name_;  // of a profile made here
};

enum class Ink { rgb, grey, cmyk, cmyk_inverted };  // grey: already spread to R = G = B

// The encoding of `pixels` (CV_8UC3, CV_16UC3; CV_8UC4 for CMYK). Profiles that are a matrix and curves leave the
// pixels alone; tables of colours and CMYK are converted here, to 16-bit sRGB. Without a profile that fits, sRGB is
// taken. Each choice that the person may want to know is added to the notes.
[[nodiscard]] ColourEncoding take_profile(cv::Mat& pixels, Ink ink, const Profile& profile, QStringList& notes);

}  // namespace kempt::intake
