// Chunks of a PNG file (W3C, Portable Network Graphics, 3rd edition).
#include <algorithm>
#include <limits>

#include "intake/byte_reader.h"
#include "intake/errors.h"
#include "intake/layout.h"

namespace kempt::intake {

Result<Layout> png_layout(const QByteArray& bytes) {
    const QString name = QStringLiteral("PNG");
    const ByteReader reader(bytes, true);
    Layout layout;
    bool complete = false;
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
            layout.grey = colour_type == 0 || colour_type == 4;
        } else if (type == "acTL" && reader.u32(data) > 1) {
            return animated();
        } else if (type == "eXIf") {
            layout.exif = facts_from_exif(bytes.mid(data, length));
        }
        complete = type == "IEND";
        at = data + length + 4;
    }
    return layout;
}

}  // namespace kempt::intake
