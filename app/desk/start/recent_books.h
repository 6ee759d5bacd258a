// The books opened last, newest first, in the person's own settings.
#pragma once

#include <QStringList>

namespace kempt::desk {

[[nodiscard]] QStringList recent_books();
void remember_book(const QString& path);
void forget_book(const QString& path);

}  // namespace kempt::desk
