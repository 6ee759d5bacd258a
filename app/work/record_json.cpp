#include "work/record_json.h"

#include <QJsonArray>
#include <QJsonDocument>

#include "domain/words.h"

namespace kempt::work {

QJsonObject json_of_hair(const HairState& hair) {
    return {{"wet", hair.wet}, {"styled", hair.styled}, {"product", hair.product}};
}

QJsonObject json_of_photo_file(const PhotoRecord& photo) {
    return {{"id", photo.id},
            {"view", word_of(photo.view)},
            {"shot", photo.shot},
            {"file", photo.file_name},
            {"format", photo.format},
            {"width", photo.size.width()},
            {"height", photo.size.height()},
            {"sha256", photo.sha256},
            {"taken", photo.taken ? QJsonValue(photo.taken->toString(Qt::ISODate)) : QJsonValue::Null},
            {"findings", QJsonDocument::fromJson(photo.quality_findings.toUtf8()).array()}};
}

}  // namespace kempt::work
