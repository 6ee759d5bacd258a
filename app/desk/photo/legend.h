// What the lines and tints over the photo mean, in words, each beside a sample of itself.
#pragma once

#include <QWidget>

#include "domain/readings.h"

namespace kempt::desk {

class Legend : public QWidget {
    Q_OBJECT
  public:
    explicit Legend(ReadingGroup group, QWidget* parent = nullptr);
};

}  // namespace kempt::desk
