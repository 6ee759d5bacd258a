#include "intake/colour_profile.h"

#include <lcms2.h>

#include <algorithm>
#include <cmath>
#include <optional>

#include "colour/colour.h"

namespace kempt::intake {
namespace {

struct FreeTransform {
    void operator()(void* transform) const { cmsDeleteTransform(transform); }
};

std::vector<float> table_of(const cmsToneCurve* curve, int codes) {
    std::vector<float> table(static_cast<std::size_t>(codes));
    for (int code = 0; code < codes; ++code) {
        const float light = cmsEvalToneCurveFloat(curve, static_cast<float>(code) / static_cast<float>(codes - 1));
        table[static_cast<std::size_t>(code)] = std::isfinite(light) ? std::clamp(light, 0.f, 1.f) : 0.f;
    }
    return table;
}

const cmsToneCurve* curve_of(cmsHPROFILE profile, cmsTagSignature tag) {
    return static_cast<const cmsToneCurve*>(cmsReadTag(profile, tag));
}

// Columns: the XYZ (D50, the ICC's connection space) of full red, green and blue.
std::optional<cv::Matx33d> xyz_from_device(cmsHPROFILE profile) {
    cv::Matx33d matrix;
    const cmsTagSignature tags[3] = {cmsSigRedColorantTag, cmsSigGreenColorantTag, cmsSigBlueColorantTag};
    for (int c = 0; c < 3; ++c) {
        const auto* xyz = static_cast<const cmsCIEXYZ*>(cmsReadTag(profile, tags[c]));
        if (!xyz) return std::nullopt;
        matrix(0, c) = xyz->X;
        matrix(1, c) = xyz->Y;
        matrix(2, c) = xyz->Z;
    }
    // The white of a profile of this kind is D50, so its Y is 1; far from it the profile is broken.
    const double white = matrix(1, 0) + matrix(1, 1) + matrix(1, 2);
    const double determinant = cv::determinant(matrix);
    if (!(white > 0.5 && white < 2) || !std::isfinite(determinant) || std::abs(determinant) < 1e-6) return std::nullopt;
    return matrix;
}

// Both profiles meet in the same D50 space, adapted by the same (Bradford) rule, so that no other adaptation is needed.
std::optional<cv::Matx33f> srgb_from_device(cmsHPROFILE profile) {
    const auto device = xyz_from_device(profile);
    const auto srgb = xyz_from_device(Profile::srgb().handle());
    if (!device || !srgb) return std::nullopt;
    return cv::Matx33f(srgb->inv() * *device);
}

std::optional<ColourEncoding> matrix_encoding(cmsHPROFILE profile, int codes) {
    if (cmsIsTag(profile, cmsSigAToB0Tag) || cmsIsTag(profile, cmsSigAToB1Tag)) return std::nullopt;
    const cmsToneCurve* curves[3] = {curve_of(profile, cmsSigRedTRCTag), curve_of(profile, cmsSigGreenTRCTag),
                                     curve_of(profile, cmsSigBlueTRCTag)};
    const auto matrix = srgb_from_device(profile);
    if (!curves[0] || !curves[1] || !curves[2] || !matrix) return std::nullopt;
    ColourEncoding encoding;
    encoding.srgb_from_device = *matrix;
    for (std::size_t c = 0; c < 3; ++c) encoding.linear[c] = table_of(curves[c], codes);
    return encoding;
}

std::optional<ColourEncoding> grey_encoding(cmsHPROFILE profile, int codes) {
    const cmsToneCurve* curve = curve_of(profile, cmsSigGrayTRCTag);
    if (!curve) return std::nullopt;
    ColourEncoding encoding;
    encoding.linear.fill(table_of(curve, codes));
    return encoding;
}

cmsUInt32Number format_of(const cv::Mat& pixels, Ink ink) {
    if (ink == Ink::cmyk) return TYPE_CMYK_8;
    if (ink == Ink::cmyk_inverted) return TYPE_CMYK_8_REV;
    return pixels.depth() == CV_16U ? TYPE_RGB_16 : TYPE_RGB_8;
}

// Relative colorimetric: paper or display white becomes white, colours inside sRGB stay what they are.
bool convert_to_srgb(cv::Mat& pixels, Ink ink, cmsHPROFILE profile) {
    const Profile srgb = Profile::srgb();
    const std::unique_ptr<void, FreeTransform> transform(cmsCreateTransform(
        profile, format_of(pixels, ink), srgb.handle(), TYPE_RGB_16, INTENT_RELATIVE_COLORIMETRIC, cmsFLAGS_NOCACHE));
    if (!transform) return false;
    cv::Mat converted(pixels.rows, pixels.cols, CV_16UC3);
    for (int row = 0; row < pixels.rows; ++row)
        cmsDoTransform(transform.get(), pixels.ptr(row), converted.ptr(row), static_cast<cmsUInt32Number>(pixels.cols));
    pixels = converted;
    return true;
}

// Without a profile nobody knows the inks: the plain product of what each lets through.
void convert_plainly(cv::Mat& cmyk, Ink ink) {
    cv::Mat rgb(cmyk.rows, cmyk.cols, CV_8UC3);
    const int turn = ink == Ink::cmyk_inverted ? 0 : 255;
    for (int row = 0; row < cmyk.rows; ++row) {
        const auto* from = cmyk.ptr<cv::Vec4b>(row);
        auto* to = rgb.ptr<cv::Vec3b>(row);
        for (int col = 0; col < cmyk.cols; ++col)
            for (int c = 0; c < 3; ++c) {
                const int light = (from[col][c] ^ turn) * (from[col][3] ^ turn);
                to[col][c] = static_cast<uchar>((light + 127) / 255);
            }
    }
    cmyk = rgb;
}

bool fits(cmsHPROFILE profile, Ink ink) {
    const cmsColorSpaceSignature space = cmsGetColorSpace(profile);
    switch (ink) {
        case Ink::rgb:
            return space == cmsSigRgbData;
        case Ink::grey:  // spread to R = G = B, a grey picture may also carry an RGB profile
            return space == cmsSigGrayData || space == cmsSigRgbData;
        default:
            return space == cmsSigCmykData;
    }
}

}  // namespace

Profile Profile::from_icc(const QByteArray& icc) {
    Profile profile;
    if (icc.size() < 128) return profile;  // the header alone has 128 bytes
    if (cmsHPROFILE handle = cmsOpenProfileFromMem(icc.constData(), static_cast<cmsUInt32Number>(icc.size())))
        profile.handle_.reset(handle, cmsCloseProfile);
    return profile;
}

Profile Profile::srgb() {
    Profile profile;
    if (cmsHPROFILE handle = cmsCreate_sRGBProfile()) profile.handle_.reset(handle, cmsCloseProfile);
    profile.name_ = QStringLiteral("sRGB");
    return profile;
}

Profile Profile::adobe_rgb() {
    // Adobe RGB (1998) colour image encoding, 4.2 and 4.3: gamma 563/256.
    return from_primaries({0.3127, 0.3290}, {0.64, 0.33}, {0.21, 0.71}, {0.15, 0.06}, 563.0 / 256, "Adobe RGB (1998)");
}

Profile Profile::from_primaries(const Chromaticity& white, const Chromaticity& red, const Chromaticity& green,
                                const Chromaticity& blue, double gamma, const char* name) {
    const cmsCIExyY white_point{white.x, white.y, 1};
    const cmsCIExyYTRIPLE primaries{{red.x, red.y, 1}, {green.x, green.y, 1}, {blue.x, blue.y, 1}};
    // IEC 61966-2-1: y = ((x + 0.055) / 1.055)^2.4 from 0.04045 on, below it x / 12.92.
    const cmsFloat64Number srgb_curve[5] = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};
    cmsToneCurve* curve =
        gamma > 0 ? cmsBuildGamma(nullptr, gamma) : cmsBuildParametricToneCurve(nullptr, 4, srgb_curve);
    Profile profile;
    if (!curve) return profile;
    cmsToneCurve* curves[3] = {curve, curve, curve};
    if (cmsHPROFILE handle = cmsCreateRGBProfile(&white_point, &primaries, curves))
        profile.handle_.reset(handle, cmsCloseProfile);
    cmsFreeToneCurve(curve);
    profile.name_ = QString::fromLatin1(name);
    return profile;
}

QString Profile::name() const {
    if (!name_.isEmpty() || !valid()) return name_;
    char text[128] = {};
    cmsGetProfileInfoASCII(handle(), cmsInfoDescription, "en", "US", text, sizeof text);
    const QString described = QString::fromLatin1(text).simplified();
    return described.isEmpty() ? QStringLiteral("unnamed profile") : described;
}

ColourEncoding take_profile(cv::Mat& pixels, Ink ink, const Profile& profile, QStringList& notes) {
    const bool inks = ink == Ink::cmyk || ink == Ink::cmyk_inverted;
    const int codes = pixels.depth() == CV_16U ? 65536 : 256;
    const bool usable = profile.valid() && fits(profile.handle(), ink);
    if (usable) {
        auto encoding = cmsGetColorSpace(profile.handle()) == cmsSigGrayData ? grey_encoding(profile.handle(), codes)
                        : inks                                               ? std::nullopt
                                                                             : matrix_encoding(profile.handle(), codes);
        if (encoding) {
            encoding->name = profile.name().toStdString();
            return *encoding;
        }
        if (cmsGetColorSpace(profile.handle()) != cmsSigGrayData && convert_to_srgb(pixels, ink, profile.handle())) {
            notes.append(QStringLiteral("colours converted from \"%1\" to sRGB").arg(profile.name()));
            return colour::srgb_encoding(true);
        }
    }
    if (inks) {
        convert_plainly(pixels, ink);
        notes.append(
            QStringLiteral("printing colours (CMYK) without a profile that can be used: colours are approximate"));
    } else if (profile.valid()) {
        notes.append(QStringLiteral("the colour profile does not fit or is broken, taken as sRGB"));
    } else {
        notes.append(QStringLiteral("no colour profile in the file, taken as sRGB"));
    }
    return colour::srgb_encoding(pixels.depth() == CV_16U);
}

}  // namespace kempt::intake
