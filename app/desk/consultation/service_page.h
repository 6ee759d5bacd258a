// One service of the record, written down or changed. Every entry is kept a moment after the hand is still.
#pragma once

#include <QTimer>
#include <optional>

#include "desk/window/page.h"
#include "domain/records.h"

class QComboBox;
class QDateEdit;
class QLabel;

namespace kempt::desk {

class KeptStrip;
class ServiceRecord;

struct ServiceData {
    Client client;
    Service service;
    std::optional<double> length_mm;  // of her hair on the day of the service
};
[[nodiscard]] Result<ServiceData> service_data(Book& book, Id service);

class ServicePage : public Page {
    Q_OBJECT
  public:
    explicit ServicePage(Session& session, QWidget* parent = nullptr);
    void show_place(const Place& place) override;
    void put_away(std::function<void()> then) override;
    [[nodiscard]] bool settled() const override;
    void take_back();
    void do_again();
    void undo(const Place&) override { take_back(); }
    void redo(const Place&) override { do_again(); }
    [[nodiscard]] QString undo_words(const Place&) const override { return {}; }  // its strip says them
    // For tests and for whoever works by name.
    [[nodiscard]] ServiceRecord* record() const { return record_; }
    [[nodiscard]] KeptStrip* strip() const { return strip_; }
    [[nodiscard]] QComboBox* kind() const { return kind_; }
    [[nodiscard]] QDateEdit* day() const { return day_; }

  private:
    void load();
    void take(const ServiceData& read);
    void show_service(const Service& service);
    void entered();
    void keep();
    void erase();
    void show_undo();

    Place place_;
    ServiceData data_;  // as the book holds it
    Service shown_;     // as it stands on the page
    bool settled_ = true, keeping_ = false, filling_ = false;
    QTimer pause_;
    QLabel *title_, *below_;
    QComboBox* kind_;
    QDateEdit* day_;
    KeptStrip* strip_;
    QLayout* body_;
    ServiceRecord* record_ = nullptr;
};

}  // namespace kempt::desk
