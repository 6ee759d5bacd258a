// The program's own run of the network against OpenCV's run of the same ONNX file.
#include <boost/test/unit_test.hpp>
#include <opencv2/dnn.hpp>
#include <opencv2/imgproc.hpp>

#include "edges/model_bytes.h"
#include "edges/network.h"
#include "edges/weights.h"

using namespace kempt::edges;

namespace {

// Soft and hard changes, about the spread of log light beside bare skin.
cv::Mat band_of(cv::Size size, cv::RNG& rng) {
    cv::Mat band(size, CV_32FC3);
    rng.fill(band, cv::RNG::NORMAL, -0.5, 0.7);
    cv::GaussianBlur(band, band, {5, 5}, 1);
    rng.fill(band(cv::Rect(0, 0, size.width / 2, size.height / 2)), cv::RNG::NORMAL, -1, 1);
    return band;
}

Context context_of(cv::RNG& rng) {
    Context context{};
    for (float& slot : context) slot = static_cast<float>(rng.gaussian(0.7));
    return context;
}

HairMaps by_opencv(const cv::Mat& band, const Context& context) {
    cv::dnn::Net net =
        cv::dnn::readNetFromONNX(reinterpret_cast<const char*>(edge_net_bytes), static_cast<size_t>(edge_net_size));
    net.setPreferableBackend(cv::dnn::DNN_BACKEND_OPENCV);
    const int input_shape[] = {1, 3, band.rows, band.cols},
              context_shape[] = {1, context_size, band.rows / 4, band.cols / 4};
    cv::Mat input(4, input_shape, CV_32F), about(4, context_shape, CV_32F);
    std::vector<cv::Mat> planes;
    for (int c = 0; c < 3; ++c) planes.emplace_back(band.rows, band.cols, CV_32F, input.ptr<float>(0, c));
    cv::split(band, planes);
    for (int c = 0; c < context_size; ++c)
        cv::Mat(band.rows / 4, band.cols / 4, CV_32F, about.ptr<float>(0, c)).setTo(context[static_cast<size_t>(c)]);
    net.setInput(input, "band");
    net.setInput(about, "context");
    const cv::Mat maps = net.forward("maps");
    const auto plane = [&](int c) {
        return cv::Mat(maps.size[2], maps.size[3], CV_32F, const_cast<float*>(maps.ptr<float>(0, c))).clone();
    };
    HairMaps out{plane(0), plane(1), plane(1)};
    for (int k = 2; k <= test_directions; ++k) out.cross_mean += plane(k);
    out.cross_mean /= test_directions;
    return out;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(network)

// Rows and columns that fill whole groups of rows and whole lanes, and such that leave rests of each kind.
BOOST_AUTO_TEST_CASE(every_machine_gives_the_maps_of_opencv) {
    cv::RNG rng(20261129);
    for (const cv::Size size : {cv::Size(256, 128), cv::Size(8, 8), cv::Size(16, 72), cv::Size(744, 88),
                                cv::Size(1032, 40), cv::Size(104, 456)}) {
        const cv::Mat band = band_of(size, rng);
        const Context context = context_of(rng);
        const HairMaps wanted = by_opencv(band, context);
        // The maps must say something for the difference to say something.
        BOOST_REQUIRE_GT(cv::norm(wanted.cover, cv::NORM_INF), 0.1);
        BOOST_REQUIRE_GT(cv::norm(wanted.cross_mean, cv::NORM_INF), 0.01);
        for (const Convolver* machine : convolvers()) {
            BOOST_TEST_CONTEXT(machine->name << ", " << size) {
                const HairMaps found = Network(*machine).look(band, context);
                // Rounding of 32-bit floats gives some 1e-6; a thousandth of cover is a tenth of a point.
                BOOST_TEST(cv::norm(found.cover, wanted.cover, cv::NORM_INF) < 1e-4);
                BOOST_TEST(cv::norm(found.cross_edge, wanted.cross_edge, cv::NORM_INF) < 1e-4);
                BOOST_TEST(cv::norm(found.cross_mean, wanted.cross_mean, cv::NORM_INF) < 1e-4);
            }
        }
    }
}

// Used again, on another size and on as many threads as there are, it gives the same to the last bit.
BOOST_AUTO_TEST_CASE(the_same_band_gives_the_same_maps) {
    cv::RNG rng(7);
    const cv::Mat one = band_of({328, 88}, rng), other = band_of({64, 120}, rng);
    const Context context = context_of(rng);
    Network network;
    const HairMaps first = network.look(one, context);
    (void)network.look(other, context);
    const int threads = cv::getNumThreads();
    cv::setNumThreads(1);
    const HairMaps again = network.look(one, context);
    cv::setNumThreads(threads);
    BOOST_TEST(cv::norm(first.cover, again.cover, cv::NORM_INF) == 0);
    BOOST_TEST(cv::norm(first.cross_mean, again.cross_mean, cv::NORM_INF) == 0);
}

BOOST_AUTO_TEST_CASE(weights_of_another_name_or_shape_are_not_taken) {
    BOOST_TEST(weights_of(edge_net_bytes, edge_net_size, "stem_w", {14, 3, 4, 4}).values.size() == 672u);
    BOOST_CHECK_THROW((void)weights_of(edge_net_bytes, edge_net_size, "stem_w", {14, 3, 3, 3}), cv::Exception);
    BOOST_CHECK_THROW((void)weights_of(edge_net_bytes, edge_net_size, "stem", {14, 3, 4, 4}), cv::Exception);
    BOOST_CHECK_THROW((void)weights_of(edge_net_bytes, edge_net_size / 2, "last_w", {7, 14, 1, 1}), cv::Exception);
}

BOOST_AUTO_TEST_SUITE_END()
