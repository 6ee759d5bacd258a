// The clients of the book down the left side: search by a few letters, pick one, add one.
#pragma once

#include <QAbstractListModel>
#include <QFrame>
#include <QTimer>
#include <optional>

#include "desk/session/session.h"

class QLineEdit;
class QListView;
class QLabel;

namespace kempt::desk {

struct ListedClient {
    Id id = 0;
    QString name, folded;  // as it is searched
    int visits = 0;
    std::optional<QDate> last_visit;
};

class ClientModel : public QAbstractListModel {
    Q_OBJECT
  public:
    using QAbstractListModel::QAbstractListModel;
    void set_clients(QVector<ListedClient> clients);
    void set_search(const QString& letters);
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Id id_at(int row) const;
    [[nodiscard]] int row_of(Id id) const;

  private:
    void filter();
    [[nodiscard]] static QString below(const ListedClient& client);
    QVector<ListedClient> all_;
    QVector<int> shown_;
    QString letters_;
};

class ClientList : public QFrame {
    Q_OBJECT
  public:
    explicit ClientList(Session& session, QWidget* parent = nullptr);
    void pick(Id client);
    void focus_search();
    [[nodiscard]] QListView* view() const { return view_; }
    [[nodiscard]] QLineEdit* search() const { return search_; }
    [[nodiscard]] bool settled() const { return loaded_ && !pause_.isActive(); }

  signals:
    void chosen(kempt::Id client);
    void add_asked();

  private:
    void load();
    void show_emptiness();
    Session& session_;
    ClientModel* model_;
    QLineEdit* search_;
    QListView* view_;
    QLabel* empty_;
    Id picked_ = 0;
    bool loaded_ = false;
    QTimer pause_;
};

}  // namespace kempt::desk
