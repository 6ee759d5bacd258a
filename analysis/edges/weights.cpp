#include "edges/weights.h"

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <opencv2/core.hpp>
#include <string_view>

namespace kempt::edges {

namespace {

// Fields that are looked at: ModelProto.graph, GraphProto.initializer; of TensorProto dims, data_type, name, raw_data.
constexpr unsigned graph_field = 7, initializer_field = 5;
constexpr unsigned dims_field = 1, type_field = 2, name_field = 8, raw_field = 9;
constexpr std::uint64_t type_float = 1;

struct Field {
    unsigned number = 0;
    std::uint64_t value = 0;  // of a varint
    std::string_view bytes;   // of a field with a length
};

class Fields {
  public:
    explicit Fields(std::string_view bytes) : left_(bytes) {}
    bool next(Field& field) {
        if (left_.empty()) return false;
        const std::uint64_t key = varint();
        field = {static_cast<unsigned>(key >> 3), 0, {}};
        switch (key & 7) {
            case 0:
                field.value = varint();
                break;
            case 1:
                field.bytes = take(8);
                break;
            case 2:
                field.bytes = take(varint());
                break;
            case 5:
                field.bytes = take(4);
                break;
            default:
                CV_Error(cv::Error::StsParseError, "the network's file is damaged");
        }
        return true;
    }

  private:
    std::string_view left_;

    std::string_view take(std::uint64_t count) {
        CV_Assert(count <= left_.size());
        const std::string_view taken = left_.substr(0, static_cast<std::size_t>(count));
        left_.remove_prefix(taken.size());
        return taken;
    }
    std::uint64_t varint() {
        std::uint64_t value = 0;
        for (unsigned shift = 0; shift < 64; shift += 7) {
            const auto byte = static_cast<unsigned char>(take(1).front());
            value |= static_cast<std::uint64_t>(byte & 0x7f) << shift;
            if (byte < 0x80) return value;
        }
        CV_Error(cv::Error::StsParseError, "the network's file is damaged");
    }
};

// dims come one a field (as onnx's own writer does) or packed into one.
void add_dims(const Field& field, std::vector<int>& shape) {
    if (field.bytes.empty()) {
        shape.push_back(static_cast<int>(field.value));
        return;
    }
    for (std::size_t i = 0, value = 0, shift = 0; i < field.bytes.size(); ++i) {
        const auto byte = static_cast<unsigned char>(field.bytes[i]);
        value |= static_cast<std::size_t>(byte & 0x7f) << shift;
        shift += 7;
        if (byte < 0x80) shape.push_back(static_cast<int>(value)), value = shift = 0;
    }
}

bool read_tensor(std::string_view bytes, const std::string& name, Weights& out) {
    Fields fields(bytes);
    Field field;
    std::string_view raw, called;
    std::uint64_t type = 0;
    out = {};
    while (fields.next(field)) {
        if (field.number == dims_field) add_dims(field, out.shape);
        if (field.number == type_field) type = field.value;
        if (field.number == name_field) called = field.bytes;
        if (field.number == raw_field) raw = field.bytes;
    }
    if (called != name || type != type_float) return false;
    out.values.resize(raw.size() / sizeof(float));
    std::memcpy(out.values.data(), raw.data(), out.values.size() * sizeof(float));  // little-endian, as the file is
    return true;
}

}  // namespace

Weights weights_of(const unsigned char* bytes, std::size_t size, const std::string& name,
                   std::initializer_list<int> shape) {
    Fields model({reinterpret_cast<const char*>(bytes), size});
    Field part, tensor;
    while (model.next(part)) {
        if (part.number != graph_field) continue;
        Fields graph(part.bytes);
        while (graph.next(tensor)) {
            Weights found;
            if (tensor.number != initializer_field || !read_tensor(tensor.bytes, name, found)) continue;
            std::size_t count = 1;
            for (const int side : shape) count *= static_cast<std::size_t>(side);
            CV_Assert(std::equal(shape.begin(), shape.end(), found.shape.begin(), found.shape.end()) &&
                      found.values.size() == count);
            return found;
        }
    }
    CV_Error(cv::Error::StsObjectNotFound, "the network's file holds no " + name);
}

}  // namespace kempt::edges
