// Chunks of a PNG file (W3C, Portable Network Graphics, 3rd edition).
#include <algorithm>
#include <array>
#include <limits>

#include "intake/byte_reader.h"
#include "intake/errors.h"
#include "intake/layout.h"

namespace kempt::intake {
namespace {

// CRC-32 of ISO 3309 by table, as annex D of the PNG standard gives it.
quint32 crc_of(const char* data, qint64 size) {
    static const std::array<quint32, 256> table = [] {
        std::array<quint32, 256> sums{};
        for (quint32 byte = 0; byte < 256; ++byte) {
            quint32 sum = byte;
            for (int bit = 0; bit < 8; ++bit) sum = (sum & 1) ? 0xedb88320u ^ (sum >> 1) : sum >> 1;
            sums[byte] = sum;
        }
        return sums;
    }();
    quint32 crc = 0xffffffffu;
    for (qint64 i = 0; i < size; ++i) crc = table[(crc ^ static_cast<quint8>(data[i])) & 0xff] ^ (crc >> 8);
    return ~crc;
}

// A name, a zero byte, the method 0, then a zlib stream. The profiles of cameras and phones have 0.5 to 3 kB; beyond
// this limit, which a stream made to burst could fill a thousandfold, the profile is left to the decoder.
QByteArray profile_of(const QByteArray& chunk) {
    constexpr qsizetype most_compressed = 256 * 1024;
    const qsizetype name_end = chunk.indexOf('\0');
    if (name_end < 1 || name_end > 79 || chunk.size() > most_compressed || !chunk.mid(name_end + 1, 1).startsWith('\0'))
        return {};
    const QByteArray guess_of_length("\0\0\x10\0", 4);  // 4 kB, which qUncompress() enlarges as needed
    return qUncompress(guess_of_length + chunk.mid(name_end + 2));
}

}  // namespace

bool png_sums_agree(const QByteArray& bytes) {
    const ByteReader reader(bytes, true);
    for (qint64 at = 8; reader.holds(at, 12);) {
        const qint64 length = reader.u32(at);
        if (!reader.holds(at + 8, length + 4)) return false;
        if (crc_of(bytes.constData() + at + 4, length + 4) != reader.u32(at + 8 + length)) return false;
        at += 12 + length;
    }
    return true;
}

Result<Layout> png_layout(const QByteArray& bytes) {
    const QString name = QStringLiteral("PNG");
    const ByteReader reader(bytes, true);
    Layout layout;
    bool complete = false, deep_rgb = false;
    for (qint64 at = 8; !complete;) {
        if (!reader.holds(at, 12)) return truncated(name);
        const qint64 length = reader.u32(at), data = at + 8;
        if (!reader.holds(data, length + 4)) return truncated(name);
        const QByteArray type = bytes.mid(at + 4, 4);
        if (at == 8) {
            if (type != "IHDR" || length != 13) return damaged(name, QStringLiteral("no header"));
            const quint32 width = reader.u32(data), height = reader.u32(data + 4);
            const quint32 most = std::numeric_limits<int>::max();
            if (width == 0 || height == 0 || std::max(width, height) > most)
                return damaged(name, QStringLiteral("impossible size"));
            layout.stored = QSize(static_cast<int>(width), static_cast<int>(height));
            const quint8 colour_type = reader.u8(data + 9);
            deep_rgb = colour_type == 2 && reader.u8(data + 8) == 16;
            layout.grey = colour_type == 0 || colour_type == 4;
        } else if (type == "acTL" && reader.u32(data) > 1) {
            return animated();
        } else if (type == "tRNS" && deep_rgb) {
            // Qt 6.4 leaves part of such a picture unset (seen with PngSuite's ftbbn2c16).
            return unsupported(
                QStringLiteral("photo-png-kind"),
                QStringLiteral("The 16-bit PNG marks one colour as transparent, which cannot be read here."),
                QStringLiteral("Save it without transparency."));
        } else if (type == "iCCP") {
            if (crc_of(bytes.constData() + at + 4, length + 4) == reader.u32(data + length))
                layout.icc = profile_of(bytes.mid(data, length));
        } else if (type == "eXIf") {
            layout.exif = facts_from_exif(bytes.mid(data, length));
        }
        complete = type == "IEND";
        at = data + length + 4;
    }
    return layout;
}

}  // namespace kempt::intake
