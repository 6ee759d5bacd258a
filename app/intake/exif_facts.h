// What Kempt takes from a photo's EXIF block: orientation, capture time, camera, and a hint about its colours.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>
#include <optional>

namespace kempt::intake {

struct ExifFacts {
    int orientation = 1;  // 1..8
    std::optional<QDateTime> taken;
    QString camera;
    bool adobe_rgb = false;  // ColorSpace "uncalibrated" with interoperability "R03" (DCF 2.0), or the older value 2
};

// block: with or without the leading "Exif\0\0". A block that cannot be read gives the defaults.
[[nodiscard]] ExifFacts facts_from_exif(const QByteArray& block);

// "2026:03:04 10:11:12" with "+02:00" or nothing; nothing where it is no date.
[[nodiscard]] std::optional<QDateTime> exif_time(const QByteArray& text, const QByteArray& offset);
// One name out of maker and model, without saying the maker twice.
[[nodiscard]] QString camera_name(const QByteArray& make, const QByteArray& model);

}  // namespace kempt::intake
