// Directories of a TIFF file (TIFF revision 6.0; the 64-bit variant of 2007 as libtiff documents it).
#include <QHash>
#include <algorithm>
#include <limits>
#include <optional>

#include "intake/byte_reader.h"
#include "intake/errors.h"
#include "intake/layout.h"

namespace kempt::intake {
namespace {

enum Tag : quint16 {
    kind_of_page = 254,
    width = 256,
    height = 257,
    bits_per_sample = 258,
    photometric = 262,
    maker = 271,
    model = 272,
    strip_offsets = 273,
    orientation = 274,
    strip_sizes = 279,
    date_time = 306,
    tile_offsets = 324,
    tile_sizes = 325,
    sample_format = 339,
    exif_directory = 34665,
    icc_profile = 34675,
    date_time_original = 36867,
    offset_time = 36880,
    offset_time_original = 36881,
    raw_version = 50706,
};

const QString& format_name() {
    static const QString name = QStringLiteral("TIFF");
    return name;
}

int size_of_type(quint16 type) {
    switch (type) {
        case 3:
        case 8:
            return 2;
        case 4:
        case 9:
        case 11:
        case 13:
            return 4;
        case 5:
        case 10:
        case 12:
        case 16:
        case 17:
        case 18:
            return 8;
        default:
            return 1;
    }
}

class Directory {
  public:
    Directory(const QByteArray& bytes, const ByteReader& reader, bool big, qint64 at) : bytes_(bytes), reader_(reader) {
        const int count_size = big ? 8 : 2, entry_size = big ? 20 : 12, word = big ? 8 : 4;
        if (!reader.holds(at, count_size)) return;
        const quint64 count = reader.number(at, count_size);
        constexpr quint64 most_entries = 4096;  // a photo has some dozens
        if (count == 0 || count > most_entries) return;
        qint64 entry = at + count_size;
        if (!reader.holds(entry, static_cast<qint64>(count) * entry_size + word)) return;
        for (quint64 i = 0; i < count; ++i, entry += entry_size) {
            Entry found{reader.u16(entry + 2), reader.number(entry + 4, word), entry + 4 + word};
            const quint64 unit = static_cast<quint64>(size_of_type(found.type));
            if (found.count > static_cast<quint64>(bytes.size())) {
                whole_ = false;
                continue;
            }
            if (found.count * unit > static_cast<quint64>(word))
                found.at = static_cast<qint64>(std::min<quint64>(reader.number(found.at, word), quint64(1) << 62));
            if (!reader.holds(found.at, static_cast<qint64>(found.count * unit))) whole_ = false;
            entries_.insert(reader.u16(entry), found);
        }
        next_ = static_cast<qint64>(std::min<quint64>(reader.number(entry, word), quint64(1) << 62));
        read_ = true;
    }

    [[nodiscard]] bool read() const { return read_; }    // false: lies outside the file
    [[nodiscard]] bool whole() const { return whole_; }  // false: values of it lie outside the file
    [[nodiscard]] qint64 next() const { return next_; }
    [[nodiscard]] bool has(Tag tag) const { return entries_.contains(tag); }
    [[nodiscard]] quint64 count(Tag tag) const { return entries_.value(tag).count; }
    [[nodiscard]] quint64 number(Tag tag, quint64 index = 0, quint64 otherwise = 0) const {
        const auto found = entries_.constFind(tag);
        if (found == entries_.constEnd() || index >= found->count) return otherwise;
        const int unit = size_of_type(found->type);
        return reader_.number(found->at + static_cast<qint64>(index) * unit, unit);
    }
    [[nodiscard]] QByteArray data(Tag tag) const {
        const auto found = entries_.constFind(tag);
        if (found == entries_.constEnd() || size_of_type(found->type) != 1) return {};
        return bytes_.mid(found->at, static_cast<qsizetype>(found->count));
    }
    [[nodiscard]] QByteArray text(Tag tag) const {
        const auto found = entries_.constFind(tag);
        if (found == entries_.constEnd() || found->type != 2) return {};
        const QByteArray text = bytes_.mid(found->at, static_cast<qsizetype>(std::min<quint64>(found->count, 256)));
        return text.left(text.indexOf('\0')).trimmed();
    }

  private:
    struct Entry {
        quint16 type = 0;
        quint64 count = 0;
        qint64 at = 0;
    };
    const QByteArray& bytes_;
    const ByteReader& reader_;
    QHash<quint16, Entry> entries_;
    qint64 next_ = 0;
    bool read_ = false, whole_ = true;
};

bool data_in_file(const Directory& page, const ByteReader& reader, Tag offsets, Tag sizes) {
    for (quint64 i = 0; i < page.count(offsets); ++i) {
        const quint64 at = page.number(offsets, i), size = page.number(sizes, i);
        constexpr quint64 far = quint64(1) << 62;
        if (at > far || size > far || !reader.holds(static_cast<qint64>(at), static_cast<qint64>(size))) return false;
    }
    return true;
}

std::optional<Error> not_a_photo(const Directory& page) {
    if (page.has(raw_version) || (page.number(kind_of_page) & 1))
        return unsupported(QStringLiteral("photo-raw"), QStringLiteral("The file is a camera's raw file."),
                           QStringLiteral("Develop it and save it as 16-bit TIFF or as JPEG."));
    const quint64 colours = page.number(photometric, 0, 1);
    const auto kind = [](const QString& what) {
        return unsupported(QStringLiteral("photo-tiff-kind"), what,
                           QStringLiteral("Save it as an RGB TIFF of 8 or 16 bits, or as JPEG."));
    };
    if (colours == 5)
        return kind(QStringLiteral("The TIFF holds printing colours (CMYK), which Kempt reads only as JPEG."));
    // 0 and 1 grey, 2 RGB, 3 palette, 6 YCbCr
    if (colours > 3 && colours != 6) return kind(QStringLiteral("The TIFF holds colours that Kempt does not read."));
    if (page.number(sample_format, 0, 1) != 1 || page.number(bits_per_sample, 0, 1) > 16)
        return kind(QStringLiteral("The TIFF holds numbers that are not of 8 or 16 bits."));
    return std::nullopt;
}

ExifFacts facts_of(const Directory& page, const Directory& exif) {
    ExifFacts facts;
    const quint64 turn = page.number(orientation, 0, 1);
    if (turn >= 1 && turn <= 8) facts.orientation = static_cast<int>(turn);
    facts.taken = exif_time(exif.text(date_time_original), exif.text(offset_time_original));
    if (!facts.taken) facts.taken = exif_time(page.text(date_time), exif.text(offset_time));
    facts.camera = camera_name(page.text(maker), page.text(model));
    return facts;
}

}  // namespace

Result<Layout> tiff_layout(const QByteArray& bytes) {
    const bool big_endian = bytes.startsWith('M');
    const ByteReader reader(bytes, big_endian);
    const bool big = reader.u16(2) == 43;
    const qint64 first =
        static_cast<qint64>(std::min<quint64>(big ? reader.number(8, 8) : reader.u32(4), quint64(1) << 62));
    const Directory page(bytes, reader, big, first);
    if (!page.read() || !page.whole()) return truncated(format_name());
    if (auto refused = not_a_photo(page)) return *refused;
    const quint64 columns = page.number(width), rows = page.number(height);
    constexpr quint64 most = std::numeric_limits<int>::max();
    if (columns == 0 || rows == 0 || columns > most || rows > most)
        return damaged(format_name(), QStringLiteral("impossible size"));
    if (!data_in_file(page, reader, strip_offsets, strip_sizes) ||
        !data_in_file(page, reader, tile_offsets, tile_sizes))
        return truncated(format_name());

    Layout layout;
    layout.stored = QSize(static_cast<int>(columns), static_cast<int>(rows));
    layout.grey = page.number(photometric, 0, 1) <= 1;
    layout.icc = page.data(icc_profile);
    layout.exif = facts_of(page, Directory(bytes, reader, big, static_cast<qint64>(page.number(exif_directory))));
    constexpr int most_pages = 1000;  // a chain that bites its own tail ends here
    for (qint64 at = page.next(); at != 0 && layout.pages < most_pages; ++layout.pages) {
        const Directory other(bytes, reader, big, at);
        if (!other.read()) break;
        at = other.next();
    }
    return layout;
}

}  // namespace kempt::intake
