// Records as JSON objects and as plain lines.
#pragma once

#include <QJsonArray>
#include <QJsonObject>

#include "domain/records.h"
#include "work/keep_records.h"

namespace kempt::command {

[[nodiscard]] QJsonObject json_of(const Client& client);
[[nodiscard]] QJsonObject json_of(const Visit& visit);
[[nodiscard]] QJsonObject json_of(const PhotoRecord& photo);
[[nodiscard]] QJsonObject json_of(const ReadingRecord& reading);
[[nodiscard]] QJsonObject json_of(const Grade& grade);
[[nodiscard]] QJsonObject json_of(const Service& service);
[[nodiscard]] QJsonObject json_of(const Target& target);

[[nodiscard]] QString line_of(const Client& client);
[[nodiscard]] QString line_of(const Visit& visit);
[[nodiscard]] QString line_of(const PhotoRecord& photo);
[[nodiscard]] QString line_of(const ReadingRecord& reading);
[[nodiscard]] QString line_of(const Grade& grade);
[[nodiscard]] QString line_of(const Service& service);
[[nodiscard]] QString line_of(const Target& target);

template <class Records>
[[nodiscard]] QJsonArray array_of(const Records& records) {
    QJsonArray array;
    for (const auto& record : records) array.append(json_of(record));
    return array;
}
template <class Records>
[[nodiscard]] QStringList lines_of(const Records& records) {
    QStringList lines;
    for (const auto& record : records) lines.append(line_of(record));
    return lines;
}

}  // namespace kempt::command
