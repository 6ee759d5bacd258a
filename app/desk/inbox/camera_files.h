// The camera's photos as files, until the book has them: their names say when they were taken and of which view.
#pragma once

#include <QDateTime>
#include <QString>
#include <optional>

#include "domain/records.h"

namespace kempt::desk {

// "camera-20260312-101500-123-left-temple.jpg"
[[nodiscard]] QString camera_file_name(const QDateTime& taken, View view);
// Nothing for a file that is not named so.
[[nodiscard]] std::optional<View> view_of_camera_file(const QString& path);
// Removes a photo of the camera page that the book has, and its folder when that is bare.
void drop_camera_file(const QString& path);

}  // namespace kempt::desk
