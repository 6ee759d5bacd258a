// The network's ONNX file, compiled in (made at build time from model/edge_net.onnx).
#pragma once

#include <cstddef>

namespace kempt::edges {
extern const unsigned char edge_net_bytes[];
extern const std::size_t edge_net_size;
}  // namespace kempt::edges
