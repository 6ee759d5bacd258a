// Chunks of a WebP file (RFC 9649).
#include "intake/byte_reader.h"
#include "intake/errors.h"
#include "intake/layout.h"

namespace kempt::intake {
namespace {

constexpr quint8 animation_flag = 0x02;  // RFC 9649, 2.7: second lowest bit of VP8X

QSize lossy_size(const ByteReader& reader, qint64 data) {
    const bool start_code = reader.u24(data + 3) == 0x2a019d;  // RFC 6386, 9.1
    return start_code ? QSize(reader.u16(data + 6) & 0x3fff, reader.u16(data + 8) & 0x3fff) : QSize();
}

QSize lossless_size(const ByteReader& reader, qint64 data) {
    if (reader.u8(data) != 0x2f) return {};
    const quint32 bits = reader.u32(data + 1);
    return {static_cast<int>(bits & 0x3fff) + 1, static_cast<int>(bits >> 14 & 0x3fff) + 1};
}

}  // namespace

Result<Layout> webp_layout(const QByteArray& bytes) {
    const QString name = QStringLiteral("WebP");
    const ByteReader reader(bytes, false);
    const qint64 end = qint64(reader.u32(4)) + 8;
    if (end > bytes.size()) return truncated(name);
    Layout layout;
    bool extended = false;
    for (qint64 at = 12; at + 8 <= end;) {
        const QByteArray type = bytes.mid(at, 4);
        const qint64 length = reader.u32(at + 4), data = at + 8;
        if (!reader.holds(data, length)) return truncated(name);
        if (type == "VP8X") {
            if (reader.u8(data) & animation_flag) return animated();
            layout.stored =
                QSize(static_cast<int>(reader.u24(data + 4)) + 1, static_cast<int>(reader.u24(data + 7)) + 1);
            extended = true;
        } else if (type == "ANIM" || type == "ANMF") {
            return animated();
        } else if (type == "VP8 " && !extended) {
            layout.stored = lossy_size(reader, data);
        } else if (type == "VP8L" && !extended) {
            layout.stored = lossless_size(reader, data);
        } else if (type == "ICCP") {
            layout.icc = bytes.mid(data, length);
        } else if (type == "EXIF") {
            layout.exif = facts_from_exif(bytes.mid(data, length));
        }
        at = data + length + (length & 1);
    }
    if (layout.stored.isEmpty()) return damaged(name, QStringLiteral("no picture in it"));
    return layout;
}

}  // namespace kempt::intake
