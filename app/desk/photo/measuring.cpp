// The bridge from the use cases' measurement to what the photo page shows; with measured_overlay.cpp the only file of
// the desk that sees pixels as the analysis keeps them.
#include <QImage>
#include <algorithm>
#include <cmath>
#include <optional>

#include "desk/photo/live_reading.h"
#include "desk/photo/measured_overlay.h"
#include "domain/words.h"
#include "work/measure_photo.h"

namespace kempt::desk {
namespace {

double code_of(double light) {  // IEC 61966-2-1
    light = std::clamp(light, 0.0, 1.0);
    return light <= 0.0031308 ? 12.92 * light : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
}

// sRGB for the screen. Plain 8-bit sRGB is taken as it is; everything else goes through linear light.
QImage screen_image(const Photo& photo) {
    const cv::Mat& pixels = photo.pixels;
    QImage image(pixels.cols, pixels.rows, QImage::Format_RGB32);
    if (image.isNull()) return image;
    const bool deep = pixels.depth() == CV_16U;
    const bool plain = !deep && photo.colour.name.rfind("sRGB", 0) == 0;
    std::vector<uchar> codes(4097);  // even in the square root of light: a grid even in light is coarse in the shadows
    for (std::size_t i = 0; i < codes.size(); ++i) {
        const double root = static_cast<double>(i) / 4096;
        codes[i] = static_cast<uchar>(std::lround(255 * code_of(root * root)));
    }
    const auto encoded = [&codes](float light) {
        const float root = std::sqrt(std::clamp(light, 0.F, 1.F));
        return codes[static_cast<std::size_t>(std::lround(root * 4096))];
    };
    const cv::Matx33f& m = photo.colour.srgb_from_device;
    for (int y = 0; y < pixels.rows; ++y) {
        auto* out = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (int x = 0; x < pixels.cols; ++x) {
            if (plain) {
                const auto& p = pixels.at<cv::Vec3b>(y, x);
                out[x] = qRgb(p[0], p[1], p[2]);
                continue;
            }
            cv::Vec3f light;
            for (int c = 0; c < 3; ++c) {
                const std::size_t code = deep ? pixels.at<cv::Vec3w>(y, x)[c] : pixels.at<cv::Vec3b>(y, x)[c];
                light[c] = photo.colour.linear[static_cast<std::size_t>(c)][code];
            }
            light = m * light;
            out[x] = qRgb(encoded(light[0]), encoded(light[1]), encoded(light[2]));
        }
    }
    return image;
}

Measured shown(const work::MeasureResult& result, const Marks& marks) {
    Measured out;
    const auto text = [](const std::string& s) { return QString::fromStdString(s); };
    for (const Quantity& q : result.readings)
        out.readings.append({text(q.name), text(q.unit), q.value, q.low, q.high, false, {}});
    for (const Refusal& r : result.refused) out.readings.append({text(r.name), {}, 0, 0, 0, true, text(r.text)});
    const QStringList& order = all_reading_names();
    std::stable_sort(out.readings.begin(), out.readings.end(), [&order](const ShownReading& a, const ShownReading& b) {
        return order.indexOf(a.name) < order.indexOf(b.name);
    });
    out.quality = text(result.quality.level);
    for (const Finding& f : result.quality.findings) {
        const auto level = f.level == Level::refused   ? ShownFinding::Level::refused
                           : f.level == Level::warning ? ShownFinding::Level::warning
                                                       : ShownFinding::Level::note;
        out.findings.append({text(f.code), level, text(f.text), text(f.remedy)});
    }
    const card::Calibration& c = result.calibration;
    out.px_per_mm = result.px_per_mm;
    out.tilt_deg = c.tilt_deg;
    out.line_length_mm = result.edges.line_length_mm;
    out.scale_from = c.card_found ? "card" : c.sheet_found ? "sheet" : c.two_points ? "points" : "none";
    for (const Quantity& q : result.readings)
        if (q.name == "curve_diameter") out.curl = text(pattern::word_of(pattern::curl_of(q.value)));
    out.asked = result.asked;
    out.overlay = overlay_from(result, marks);
    return out;
}

}  // namespace

OpenFunction open_with_analysis() {
    return [](const QByteArray& bytes, double printer_scale, const Progress& progress) -> Result<OpenedPhoto> {
        work::MeasureOptions options;
        options.printer_scale = printer_scale;
        auto opened = work::open_photo(bytes, options, progress);
        if (!opened.ok()) return opened.error();
        const std::shared_ptr<const work::OpenPhoto> photo = opened.value();
        OpenedPhoto out;
        out.picture = picture_from(screen_image(photo->decoded.photo));
        // The last measurement: what the hand does not touch is not measured again. One worker thread at a time.
        const auto last = std::make_shared<std::optional<work::Earlier>>();
        out.measure = [photo, options, last](const Marks& marks, bool with_cover,
                                             const Progress& go) -> Result<Measured> {
            work::MeasureOptions with = options;
            with.with_overlay = with_cover;
            auto measured = work::measure_open_photo(*photo, marks, with, go, *last ? &**last : nullptr);
            if (!measured.ok()) return measured.error();
            Measured to_show = shown(measured.value(), marks);
            *last = work::Earlier{marks, std::move(measured.value())};
            return to_show;
        };
        return out;
    };
}

}  // namespace kempt::desk
