// The one kind of question that the desk asks: before something is erased for good.
#pragma once

#include <QString>
#include <functional>

class QWidget;

namespace kempt::desk {

// Opens without waiting; `erase` runs when she says so. Return and Esc both keep.
void ask_before_erasing(QWidget* parent, const QString& question, const QString& warning, std::function<void()> erase);

}  // namespace kempt::desk
