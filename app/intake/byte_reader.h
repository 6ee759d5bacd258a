// Numbers out of bytes; whatever lies outside the bytes reads as 0.
#pragma once

#include <QByteArray>

namespace kempt::intake {

class ByteReader {
  public:
    ByteReader(const QByteArray& bytes, bool big_endian) : bytes_(bytes), big_endian_(big_endian) {}

    [[nodiscard]] quint64 number(qint64 at, int size) const {
        if (!holds(at, size)) return 0;
        quint64 value = 0;
        for (int i = 0; i < size; ++i)
            value = value << 8 | static_cast<quint8>(bytes_.at(at + (big_endian_ ? i : size - 1 - i)));
        return value;
    }
    [[nodiscard]] quint8 u8(qint64 at) const { return static_cast<quint8>(number(at, 1)); }
    [[nodiscard]] quint16 u16(qint64 at) const { return static_cast<quint16>(number(at, 2)); }
    [[nodiscard]] quint32 u24(qint64 at) const { return static_cast<quint32>(number(at, 3)); }
    [[nodiscard]] quint32 u32(qint64 at) const { return static_cast<quint32>(number(at, 4)); }
    // at >= 0 and size >= 0 may come from the file and be as large as they like.
    [[nodiscard]] bool holds(qint64 at, qint64 size) const {
        return at >= 0 && size >= 0 && at <= bytes_.size() && size <= bytes_.size() - at;
    }

  private:
    const QByteArray& bytes_;
    bool big_endian_;
};

}  // namespace kempt::intake
