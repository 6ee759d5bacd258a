#include "edges/network.h"

#include <opencv2/dnn.hpp>

#include "edges/model_bytes.h"

namespace kempt::edges {

struct Network::Inside {
    cv::dnn::Net net;
};

Network::Network() : inside_(std::make_unique<Inside>()) {
    inside_->net = cv::dnn::readNetFromONNX(reinterpret_cast<const char*>(edge_net_bytes), edge_net_size);
    inside_->net.setPreferableBackend(cv::dnn::DNN_BACKEND_OPENCV);
    inside_->net.setPreferableTarget(cv::dnn::DNN_TARGET_CPU);
}

Network::~Network() = default;

HairMaps Network::look(const cv::Mat& band, const Context& context) {
    CV_Assert(band.type() == CV_32FC3 && band.rows % 8 == 0 && band.cols % 8 == 0);
    const int input_shape[] = {1, 3, band.rows, band.cols},
              context_shape[] = {1, context_size, band.rows / 4, band.cols / 4};
    cv::Mat input(4, input_shape, CV_32F), about(4, context_shape, CV_32F);
    std::vector<cv::Mat> planes;
    for (int c = 0; c < 3; ++c) planes.emplace_back(band.rows, band.cols, CV_32F, input.ptr<float>(0, c));
    cv::split(band, planes);
    for (int c = 0; c < context_size; ++c)
        cv::Mat(band.rows / 4, band.cols / 4, CV_32F, about.ptr<float>(0, c)).setTo(context[static_cast<size_t>(c)]);
    inside_->net.setInput(input, "band");
    inside_->net.setInput(about, "context");
    const cv::Mat maps = inside_->net.forward("maps");
    auto plane = [&](int c) {
        return cv::Mat(maps.size[2], maps.size[3], CV_32F, const_cast<float*>(maps.ptr<float>(0, c))).clone();
    };
    HairMaps out;
    out.cover = plane(0);
    for (int k = 0; k < test_directions; ++k) out.crossings[static_cast<size_t>(k)] = plane(k + 1);
    return out;
}

}  // namespace kempt::edges
