// Head sections to choose from; none chosen: the whole head.
#pragma once

#include <QHash>
#include <QStringList>
#include <QWidget>
#include <functional>

class QCheckBox;

namespace kempt::desk {

class SectionPicker : public QWidget {
    Q_OBJECT
  public:
    // name_of: the accessible name of a field, from its own words.
    SectionPicker(const QStringList& chosen, const std::function<QString(const QString&)>& name_of,
                  QWidget* parent = nullptr);
    [[nodiscard]] QCheckBox* check(const QString& section) const { return checks_.value(section); }
    [[nodiscard]] QStringList chosen() const;  // in the order of the head

  signals:
    void picked();

  private:
    QHash<QString, QCheckBox*> checks_;
};

}  // namespace kempt::desk
