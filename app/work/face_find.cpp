#include "work/face_find.h"

#include <QDir>
#include <QtMath>
#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>
#include <opencv2/objdetect.hpp>

#include "work/errors.h"

namespace kempt::work {

namespace {

constexpr int longest_px = 480;  // a face of an eighth of the shorter side still has 30 px and more
constexpr double smallest_share = 0.125, smallest_turned_share = 0.2;
// The cascades' square about a grown face is some 150 mm wide; one two and a half times as far off as the hair is left.
// Close photos of an edge, which are slow to look through for their texture, are done with at once; of 70 photos of
// the demo, none of which shows a face, four had one "found" without this bound.
constexpr double smallest_mm = 60;
constexpr double step = 1.1;           // between sizes; OpenCV's own default
constexpr int frontal_neighbours = 4;  // OpenCV's own default is 3
constexpr int profile_neighbours = 6;  // turned and from the side: more places to be wrong in
constexpr double turn_deg = 25;        // a head laid on its side by that much is still found upright

// Where the eyes lie in the cascades' square: calibrated on eight portraits of the npm package material-kit 2.0.4 (eyes
// set by hand: 0.30 to 0.48 of its height, 0.22 to 0.73 of its width), with a tenth on all sides for brows and lids.
constexpr double band_top = 0.20, band_bottom = 0.58, band_left = 0.06, band_right = 0.94;

struct Cascades {
    cv::CascadeClassifier front, other_front, profile;
};

bool load(cv::CascadeClassifier& cascade, const char* name) {
    const QString path = QDir(QStringLiteral(KEMPT_CASCADES)).filePath(QString::fromLatin1(name));
    return cascade.load(path.toStdString()) && !cascade.empty();
}

// CascadeClassifier is not for two threads at once: each has its own.
const Cascades* cascades() {
    thread_local Cascades kept;
    thread_local const bool there = load(kept.front, "haarcascade_frontalface_alt2.xml") &&
                                    load(kept.other_front, "haarcascade_frontalface_default.xml") &&
                                    load(kept.profile, "haarcascade_profileface.xml");
    return there ? &kept : nullptr;
}

cv::Mat small_grey(const cv::Mat& rgb, double& scale) {
    cv::Mat eight = rgb;
    if (rgb.depth() == CV_16U) rgb.convertTo(eight, CV_8U, 1 / 257.0);
    scale = std::min(1.0, static_cast<double>(longest_px) / std::max(rgb.cols, rgb.rows));
    if (scale < 1) cv::resize(eight, eight, {}, scale, scale, cv::INTER_AREA);
    cv::Mat grey;
    cv::cvtColor(eight, grey, cv::COLOR_RGB2GRAY);
    cv::equalizeHist(grey, grey);
    return grey;
}

EyeBand band_in(const cv::Rect2d& face, double scale) {
    EyeBand band;
    band.middle = QPointF((face.x + face.width * (band_left + band_right) / 2) / scale,
                          (face.y + face.height * (band_top + band_bottom) / 2) / scale);
    band.length = face.width * (band_right - band_left) / scale;
    band.height = face.height * (band_bottom - band_top) / scale;
    return band;
}

// The picture turned by `degrees` counter-clockwise about its middle, at its own size.
cv::Mat turned(const cv::Mat& grey, double degrees, cv::Mat& back) {
    const cv::Point2f middle(static_cast<float>(grey.cols) / 2, static_cast<float>(grey.rows) / 2);
    const cv::Mat there = cv::getRotationMatrix2D(middle, degrees, 1);
    cv::invertAffineTransform(there, back);
    cv::Mat out;
    cv::warpAffine(grey, out, there, grey.size(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    return out;
}

// Largest first; a square whose band another one covers already is the same face once more. Of others that overlap both
// stay: on the portraits either the larger or the smaller was the right one, and a band too many is soon removed.
std::vector<cv::Rect> apart(std::vector<cv::Rect> faces) {
    std::sort(faces.begin(), faces.end(), [](const cv::Rect& a, const cv::Rect& b) { return a.area() > b.area(); });
    const auto band = [](const cv::Rect& face) {
        return cv::Rect2d(face.x + band_left * face.width, face.y + band_top * face.height,
                          (band_right - band_left) * face.width, (band_bottom - band_top) * face.height);
    };
    std::vector<cv::Rect> kept;
    for (const cv::Rect& face : faces) {
        const cv::Rect2d own = band(face);
        const cv::Point2d middle(own.x + own.width / 2, own.y + own.height / 2);
        if (std::none_of(kept.begin(), kept.end(), [&](const cv::Rect& k) { return band(k).contains(middle); }))
            kept.push_back(face);
    }
    return kept;
}

struct Look {
    cv::CascadeClassifier* cascade;
    double degrees;
    bool mirrored;
    int neighbours;
    int least_px;
};

std::vector<EyeBand> look(const cv::Mat& grey, const Look& how, double scale) {
    cv::Mat back, upright = grey;
    if (how.degrees != 0) upright = turned(grey, how.degrees, back);
    if (how.mirrored) cv::flip(upright, upright, 1);
    const int least = how.least_px;
    if (least > std::min(grey.cols, grey.rows)) return {};
    std::vector<cv::Rect> faces;
    how.cascade->detectMultiScale(upright, faces, step, how.neighbours, 0, {least, least});
    std::vector<EyeBand> bands;
    for (cv::Rect face : apart(faces)) {
        if (how.mirrored) face.x = grey.cols - face.x - face.width;
        EyeBand band = band_in(face, scale);
        if (how.degrees != 0) {
            const double x = band.middle.x() * scale, y = band.middle.y() * scale;
            band.middle = QPointF(back.at<double>(0, 0) * x + back.at<double>(0, 1) * y + back.at<double>(0, 2),
                                  back.at<double>(1, 0) * x + back.at<double>(1, 1) * y + back.at<double>(1, 2)) /
                          scale;
            band.turn_deg = how.degrees;
        }
        bands.push_back(band);
    }
    return bands;
}

}  // namespace

std::array<QPointF, 4> EyeBand::corners() const {
    const double angle = qDegreesToRadians(turn_deg);
    const QPointF along(std::cos(angle) * length / 2, std::sin(angle) * length / 2);
    const QPointF across(-std::sin(angle) * height / 2, std::cos(angle) * height / 2);
    return {middle - along - across, middle + along - across, middle + along + across, middle - along + across};
}

Result<QVector<EyeBand>> find_eyes(const cv::Mat& rgb, double px_per_mm, const Progress& progress) {
    return guarded([&]() -> Result<QVector<EyeBand>> {
        QVector<EyeBand> found;
        if (rgb.empty()) return found;
        const Cascades* kept = cascades();
        if (kept == nullptr)
            return Error{ErrorKind::unsupported, "no-cascades",
                         "The files that faces are found with are not installed (" KEMPT_CASCADES ").", "",
                         "Install Debian's opencv-data, or draw the band by hand."};
        double scale = 1;
        const cv::Mat grey = small_grey(rgb, scale);
        auto* own = const_cast<Cascades*>(kept);  // detecting changes what the cascade remembers, of this thread only
        const double side = std::min(grey.cols, grey.rows), by_scale = smallest_mm * px_per_mm * scale;
        const int least = static_cast<int>(std::max({20.0, smallest_share * side, by_scale}));
        const int turned_least = static_cast<int>(std::max({20.0, smallest_turned_share * side, by_scale}));
        std::vector<Look> looks = {{&own->front, 0, false, frontal_neighbours, least},
                                   {&own->other_front, 0, false, frontal_neighbours, least},
                                   {&own->front, turn_deg, false, profile_neighbours, turned_least},
                                   {&own->front, -turn_deg, false, profile_neighbours, turned_least}};
        for (const double degrees : {0.0, turn_deg, -turn_deg})
            for (const bool mirrored : {false, true})
                looks.push_back({&own->profile, degrees, mirrored, profile_neighbours, turned_least});
        for (std::size_t i = 0; i < looks.size(); ++i) {
            if (tell(progress, static_cast<double>(i) / static_cast<double>(looks.size()), "looking for eyes") ==
                Go::stop)
                return stopped();
            for (const EyeBand& band : look(grey, looks[i], scale)) found.append(band);
            if (!found.isEmpty()) break;
        }
        return found;
    });
}

}  // namespace kempt::work
