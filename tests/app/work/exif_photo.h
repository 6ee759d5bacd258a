// A JPEG with an EXIF block that holds DateTimeOriginal, and OffsetTimeOriginal where one is given (EXIF 2.31; JPEG
// marker APP1).
#pragma once

#include <QByteArray>

namespace kempt::tests {

inline QByteArray taken_at(const QByteArray& jpeg, const QByteArray& when, const QByteArray& offset = {}) {
    const auto u16 = [](int v) {
        return QByteArray().append(static_cast<char>(v & 255)).append(static_cast<char>(v >> 8));
    };
    const auto u32 = [&](int v) { return u16(v & 0xffff) + u16(v >> 16); };
    const int entries = offset.isEmpty() ? 1 : 2;
    const int values = 26 + 2 + 12 * entries + 4;  // where the texts begin
    QByteArray tiff = "II" + u16(42) + u32(8);
    tiff += u16(1) + u16(0x8769) + u16(4) + u32(1) + u32(26) + u32(0);    // IFD0: where the EXIF directory is
    tiff += u16(entries) + u16(0x9003) + u16(2) + u32(20) + u32(values);  // DateTimeOriginal, 20 characters
    if (!offset.isEmpty()) tiff += u16(0x9011) + u16(2) + u32(7) + u32(values + 20);  // OffsetTimeOriginal, 7
    tiff += u32(0) + when + QByteArray(1, 0);
    if (!offset.isEmpty()) tiff += offset + QByteArray(1, 0);
    const QByteArray block = QByteArray("Exif\0\0", 6) + tiff;
    const int length = static_cast<int>(block.size()) + 2;
    const QByteArray app1 =
        QByteArray("\xff\xe1", 2).append(static_cast<char>(length >> 8)).append(static_cast<char>(length & 255));
    return jpeg.left(2) + app1 + block + jpeg.mid(2);
}

}  // namespace kempt::tests
