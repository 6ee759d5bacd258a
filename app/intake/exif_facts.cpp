#include "intake/exif_facts.h"

#include <libexif/exif-data.h>

#include <QTimeZone>
#include <memory>

namespace kempt::intake {
namespace {

struct FreeExif {
    void operator()(ExifData* data) const { exif_data_unref(data); }
};

QByteArray text_of(ExifData* data, ExifIfd ifd, ExifTag tag) {
    const ExifEntry* entry = exif_content_get_entry(data->ifd[ifd], tag);
    if (!entry || !entry->data || entry->format != EXIF_FORMAT_ASCII) return {};
    const QByteArray text(reinterpret_cast<const char*>(entry->data), static_cast<qsizetype>(entry->size));
    return text.left(text.indexOf('\0')).trimmed();
}

int number_of(ExifData* data, ExifIfd ifd, ExifTag tag) {
    const ExifEntry* entry = exif_content_get_entry(data->ifd[ifd], tag);
    if (!entry || !entry->data || entry->format != EXIF_FORMAT_SHORT || entry->size < 2) return -1;
    return exif_get_short(entry->data, exif_data_get_byte_order(data));
}

}  // namespace

std::optional<QDateTime> exif_time(const QByteArray& text, const QByteArray& offset) {
    QDateTime time = QDateTime::fromString(QString::fromLatin1(text.left(19)), QStringLiteral("yyyy:MM:dd HH:mm:ss"));
    if (!time.isValid() || time.date().year() < 1900) return std::nullopt;
    const bool signed_offset = offset.size() == 6 && (offset[0] == '+' || offset[0] == '-') && offset[3] == ':';
    bool hours_read = false, minutes_read = false;
    const int hours = offset.mid(1, 2).toInt(&hours_read), minutes = offset.mid(4, 2).toInt(&minutes_read);
    if (signed_offset && hours_read && minutes_read && hours <= 14 && minutes < 60) {
        const int seconds = (hours * 60 + minutes) * 60;
        time.setOffsetFromUtc(offset[0] == '-' ? -seconds : seconds);
    }
    return time;
}

QString camera_name(const QByteArray& make, const QByteArray& model) {
    const QString maker = QString::fromUtf8(make.left(64)).simplified();
    const QString name = QString::fromUtf8(model.left(64)).simplified();
    if (maker.isEmpty() || name.startsWith(maker, Qt::CaseInsensitive)) return name;
    return QStringLiteral("%1 %2").arg(maker, name).trimmed();
}

ExifFacts facts_from_exif(const QByteArray& block) {
    ExifFacts facts;
    if (block.size() < 8) return facts;
    const QByteArray prefix("Exif\0\0", 6);
    const QByteArray whole = block.startsWith(prefix) ? block : prefix + block;
    const std::unique_ptr<ExifData, FreeExif> data(exif_data_new_from_data(
        reinterpret_cast<const unsigned char*>(whole.constData()), static_cast<unsigned int>(whole.size())));
    if (!data) return facts;

    const int orientation = number_of(data.get(), EXIF_IFD_0, EXIF_TAG_ORIENTATION);
    if (orientation >= 1 && orientation <= 8) facts.orientation = orientation;
    facts.taken = exif_time(text_of(data.get(), EXIF_IFD_EXIF, EXIF_TAG_DATE_TIME_ORIGINAL),
                            text_of(data.get(), EXIF_IFD_EXIF, EXIF_TAG_OFFSET_TIME_ORIGINAL));
    if (!facts.taken)
        facts.taken = exif_time(text_of(data.get(), EXIF_IFD_0, EXIF_TAG_DATE_TIME),
                                text_of(data.get(), EXIF_IFD_EXIF, EXIF_TAG_OFFSET_TIME));
    facts.camera =
        camera_name(text_of(data.get(), EXIF_IFD_0, EXIF_TAG_MAKE), text_of(data.get(), EXIF_IFD_0, EXIF_TAG_MODEL));
    const int colour_space = number_of(data.get(), EXIF_IFD_EXIF, EXIF_TAG_COLOR_SPACE);
    const QByteArray rules =
        text_of(data.get(), EXIF_IFD_INTEROPERABILITY, static_cast<ExifTag>(EXIF_TAG_INTEROPERABILITY_INDEX));
    facts.adobe_rgb = colour_space == 2 || (colour_space == 0xffff && rules == "R03");
    return facts;
}

}  // namespace kempt::intake
