// A few words of which one holds, as radio buttons in a row that wraps.
#pragma once

#include <QString>
#include <QStringList>
#include <functional>

class QBoxLayout;

namespace kempt::desk {

void add_choice(QBoxLayout* column, const QString& caption, const QStringList& words, int chosen,
                std::function<void(int)> choose);

}  // namespace kempt::desk
