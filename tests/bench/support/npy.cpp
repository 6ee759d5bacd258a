#include "bench/support/npy.h"

#include <fstream>

namespace bench {

void write_npy(const std::string& path, const cv::Mat& picture) {
    std::string shape = std::to_string(picture.rows) + ", " + std::to_string(picture.cols);
    if (picture.channels() > 1) shape += ", " + std::to_string(picture.channels());
    // Magic, length of the heading, heading padded so that the values begin at a multiple of 64.
    const std::string type = picture.depth() == CV_8U ? "|u1" : "<f4";
    std::string head = "{'descr': '" + type + "', 'fortran_order': False, 'shape': (" + shape + "), }";
    head.append(63 - (10 + head.size()) % 64, ' ');
    head += '\n';
    std::ofstream out(path, std::ios::binary);
    out.write("\x93NUMPY\x01\x00", 8);
    const char size[2] = {static_cast<char>(head.size() & 255), static_cast<char>(head.size() >> 8)};
    out.write(size, 2);
    out << head;
    for (int y = 0; y < picture.rows; ++y)
        out.write(reinterpret_cast<const char*>(picture.ptr(y)),
                  static_cast<std::streamsize>(static_cast<std::size_t>(picture.cols) * picture.elemSize()));
}

}  // namespace bench
