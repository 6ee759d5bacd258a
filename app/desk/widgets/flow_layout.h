// Lays widgets in rows, as words are laid in lines.
#pragma once

#include <QLayout>
#include <QVector>

namespace kempt::desk {

class FlowLayout : public QLayout {
  public:
    // stretch: the items of a row share what is left of it.
    explicit FlowLayout(int spacing, bool stretch = false, QWidget* parent = nullptr);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override { items_.append(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override { return items_.value(index); }
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override { return place(QRect(0, 0, width, 0), false); }
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    void setGeometry(const QRect& rect) override;

  private:
    int place(const QRect& rect, bool really) const;
    QVector<QLayoutItem*> items_;
    bool stretch_;
};

}  // namespace kempt::desk
