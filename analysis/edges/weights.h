// The network's weights out of its ONNX file, read without a library: the file is a chain of protobuf fields (Protocol
// Buffers Encoding, protobuf.dev; field numbers from onnx.proto of ONNX 1.12).
#pragma once

#include <cstddef>
#include <initializer_list>
#include <string>
#include <vector>

namespace kempt::edges {

struct Weights {
    std::vector<int> shape;  // outermost first
    std::vector<float> values;
};

// The named initializer of an ONNX model. Throws cv::Exception when the bytes hold none of that name and shape with
// 32-bit floats: then the network in the program is not the one that the code was written for.
[[nodiscard]] Weights weights_of(const unsigned char* bytes, std::size_t size, const std::string& name,
                                 std::initializer_list<int> shape);

}  // namespace kempt::edges
