// The registration core on a real photograph. Its making: astronaut.png (public domain, Debian's python3-skimage), the
// face below the hair as skin, 1.5 pixels stated as one "mm" so that the face is as wide as a hairline's close-up; the
// second photo is the first one warped by a known homography (a turn of 4 degrees, a shift and some perspective), lit
// from one side, with another tone curve, and with the hair above the line mirrored, so that whoever followed the hair
// would go wrong. The truth is the homography.
#include <QImage>
#include <boost/test/unit_test.hpp>
#include <cmath>
#include <iostream>
#include <opencv2/imgproc.hpp>

#include "align/register_skin.h"
#include "align/skin.h"
#include "align/texture.h"
#include "colour/colour.h"
#include "work/real_photo.h"

using namespace kempt;

namespace {

constexpr double px_per_mm = 1.5;
// Along the hair's lower edge on the forehead, drawn by eye at fivefold size (portrait.marks.json has the same line).
const std::vector<cv::Point2d> line_px{{187, 75}, {200, 80}, {214, 78}, {226, 80}, {240, 81}, {252, 84}, {264, 88}};
const cv::Point2d hair_px(230, 58);

cv::Mat portrait() {
    for (const QString& folder :
         {work::fixtures_folder(), QStringLiteral("/usr/lib/python3/dist-packages/skimage/data")})
        if (const QString path = work::find_portrait(folder); !path.isEmpty()) {
            const QImage image = QImage(path).convertToFormat(QImage::Format_RGB888);
            return cv::Mat(image.height(), image.width(), CV_8UC3, const_cast<uchar*>(image.constBits()),
                           static_cast<std::size_t>(image.bytesPerLine()))
                .clone();
        }
    std::cout << "skipped: the portrait astronaut.png is not here (KEMPT_FIXTURES, tests/support/fetch_fixtures.sh)\n";
    return {};
}

cv::Point2d mm(cv::Point2d px) {
    return px / px_per_mm;
}

std::vector<cv::Point2d> line_mm() {
    std::vector<cv::Point2d> line;
    for (const cv::Point2d& p : line_px) line.push_back(mm(p));
    return line;
}

cv::Point2d through(const cv::Matx33d& h, cv::Point2d p) {
    const cv::Vec3d q = h * cv::Vec3d(p.x, p.y, 1);
    return {q[0] / q[2], q[1] / q[2]};
}

cv::Matx33d homography() {
    const double c = std::cos(4 * CV_PI / 180), s = std::sin(4 * CV_PI / 180);
    const cv::Matx33d from(1, 0, -226, 0, 1, -110, 0, 0, 1), back(1, 0, 226 + 13, 0, 1, 110 - 9, 0, 0, 1);
    const cv::Matx33d view(c, -s, 0, s, c, 0, 0.0003, -0.0002, 1);
    return back * view * from;
}

// The second photo.
cv::Mat made(const cv::Mat& first) {
    cv::Mat changed = first.clone(), mirrored;
    const cv::Rect hair(150, 30, 160, 44);  // above the line
    cv::flip(first(hair), mirrored, 1);
    mirrored.copyTo(changed(hair));
    cv::Mat warped;
    cv::warpPerspective(changed, warped, homography(), first.size(), cv::INTER_CUBIC, cv::BORDER_REPLICATE);
    for (int y = 0; y < warped.rows; ++y)
        for (int x = 0; x < warped.cols; ++x)
            for (int c = 0; c < 3; ++c) {
                uchar& code = warped.at<cv::Vec3b>(y, x)[c];
                const double light = std::pow(code / 255.0, c == 2 ? 1.25 : 1.1) * (0.62 + 0.0011 * x);
                code = cv::saturate_cast<uchar>(255 * light);
            }
    return warped;
}

align::Ground ground_of(const cv::Mat& rgb, const cv::Rect2d& area_mm, cv::Mat& linear) {
    align::Ground ground;
    ground.origin_mm = area_mm.tl();
    ground.px_per_mm = 6;
    const cv::Size size(cvRound(area_mm.width * 6), cvRound(area_mm.height * 6));
    cv::Mat where(size, CV_32FC2);
    for (int j = 0; j < size.height; ++j)
        for (int i = 0; i < size.width; ++i) {
            const cv::Point2d px = ground.mm(i, j) * px_per_mm;
            where.at<cv::Vec2f>(j, i) = {static_cast<float>(px.x), static_cast<float>(px.y)};
        }
    rgb.convertTo(linear, CV_32FC3, 1 / 255.0);
    for (auto v = linear.begin<cv::Vec3f>(); v != linear.end<cv::Vec3f>(); ++v)
        for (int c = 0; c < 3; ++c) (*v)[c] = static_cast<float>(colour::linear_from_srgb((*v)[c]));
    cv::remap(linear, linear, where, cv::noArray(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    ground.weight = cv::Mat(size, CV_32FC1, cv::Scalar(1));
    ground.layers.create(size, CV_32FC2);
    for (int j = 0; j < size.height; ++j)
        for (int i = 0; i < size.width; ++i) {
            const cv::Vec3f v = linear.at<cv::Vec3f>(j, i);
            const auto log = [](float light) { return std::log(light + 0.004f); };
            ground.layers.at<cv::Vec2f>(j, i) = {0.25f * log(v[0]) + 0.6f * log(v[1]) + 0.15f * log(v[2]),
                                                 log(v[0]) - log(v[1])};
        }
    return ground;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(align_real)

BOOST_AUTO_TEST_CASE(a_real_face_is_laid_over_itself_after_a_known_warp_with_other_light_and_hair) {
    const cv::Mat first = portrait();
    if (first.empty()) return;
    const cv::Mat second = made(first);
    const align::LineSide side{line_mm(), mm(hair_px)};
    cv::Mat linear;
    align::Ground before = ground_of(first, {90, 40, 130, 90}, linear);
    before.weight = before.weight.mul(align::bare_side(before, side));
    const align::SkinColour skin = align::skin_colour(linear, before.weight);
    before.weight = before.weight.mul(align::skin_like(linear, skin, 0));
    align::Ground after = ground_of(second, {70, 20, 180, 140}, linear);
    after.weight = after.weight.mul(align::skin_like(linear, skin, 0.3));
    const auto found = align::register_skin(before, after, line_mm(), {});
    BOOST_REQUIRE_MESSAGE(found.ok(), (found.ok() ? "" : found.error().sentence()));
    double worst = 0;
    for (std::size_t i = 0; i < line_px.size(); ++i)
        worst = std::max(worst, cv::norm(found->fit.map(mm(line_px[i])) - mm(through(homography(), line_px[i]))));
    BOOST_TEST_MESSAGE("worst place of the line " << worst << " mm (" << worst * px_per_mm << " pixels), share "
                                                  << found->skin_share << ", evidence " << found->evidence());
    BOOST_TEST(worst < 0.3);  // less than half a pixel of the photo
    BOOST_TEST(found->skin_share > 0.5);
    BOOST_TEST(found->evidence() > 3 * align::least_evidence);
}

BOOST_AUTO_TEST_CASE(the_face_upside_down_is_no_match) {
    const cv::Mat first = portrait();
    if (first.empty()) return;
    cv::Mat turned, linear;
    cv::rotate(first(cv::Rect(140, 60, 172, 150)), turned, cv::ROTATE_180);
    cv::Mat second = first.clone();
    turned.copyTo(second(cv::Rect(140, 60, 172, 150)));
    const align::LineSide side{line_mm(), mm(hair_px)};
    align::Ground before = ground_of(first, {90, 40, 130, 90}, linear);
    before.weight = before.weight.mul(align::bare_side(before, side));
    const align::SkinColour skin = align::skin_colour(linear, before.weight);
    before.weight = before.weight.mul(align::skin_like(linear, skin, 0));
    align::Ground after = ground_of(second, {70, 20, 180, 140}, linear);
    after.weight = after.weight.mul(align::skin_like(linear, skin, 0.3));
    after.weight(cv::Rect(0, 0, after.weight.cols, cvRound((60 / px_per_mm - 20) * 6))).setTo(0);
    const auto found = align::register_skin(before, after, line_mm(), {});
    BOOST_TEST(!found.ok());
}

BOOST_AUTO_TEST_SUITE_END()
