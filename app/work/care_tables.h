// The export's tables of services and of what clients told; the columns are the members of care_json.h.
#pragma once

#include <QByteArray>

#include "domain/records.h"

namespace kempt::work {

class CareTables {
  public:
    CareTables();
    void add(const Service& service);
    void add(const ClientProfile& profile);
    void add(const DailyLife& life);
    void add(const ClientAnswer& answer);
    [[nodiscard]] const QByteArray& services() const { return services_; }
    [[nodiscard]] const QByteArray& profiles() const { return profiles_; }
    [[nodiscard]] const QByteArray& daily_life() const { return daily_life_; }
    [[nodiscard]] const QByteArray& answers() const { return answers_; }

  private:
    QByteArray services_, profiles_, daily_life_, answers_;
};

}  // namespace kempt::work
