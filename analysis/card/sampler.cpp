#include "card/sampler.h"

#include "colour/colour.h"

namespace kempt::card {

bool has_code_tables(const Photo& photo) {
    const size_t codes = photo.pixels.depth() == CV_16U ? 65536 : 256;
    return std::all_of(photo.colour.linear.begin(), photo.colour.linear.end(),
                       [&](const std::vector<float>& table) { return table.size() == codes; });
}

std::array<std::vector<float>, 3> code_tables(const Photo& photo) {
    return has_code_tables(photo) ? photo.colour.linear : colour::srgb_encoding(photo.pixels.depth() == CV_16U).linear;
}

Sampler::Sampler(const Photo& photo)
    : pixels_(photo.pixels),
      cols_(photo.pixels.cols),
      rows_(photo.pixels.rows),
      wide_(photo.pixels.depth() == CV_16U),
      tables_{} {
    const bool given = has_code_tables(photo);
    if (!given) own_ = code_tables(photo);
    for (size_t c = 0; c < 3; ++c) tables_[c] = given ? &photo.colour.linear[c] : &own_[c];
}

float Sampler::at(cv::Point2d px, int channel) const {
    const int x = static_cast<int>(px.x), y = static_cast<int>(px.y);
    const auto fx = static_cast<float>(px.x - x), fy = static_cast<float>(px.y - y);
    const float top = pixel(x, y, channel) * (1 - fx) + pixel(x + 1, y, channel) * fx;
    const float bottom = pixel(x, y + 1, channel) * (1 - fx) + pixel(x + 1, y + 1, channel) * fx;
    return top * (1 - fy) + bottom * fy;
}

}  // namespace kempt::card
