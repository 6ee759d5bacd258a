// Fills a time strip on the bench, one visit a job, the newest first; keeps what was made.
#pragma once

#include <QHash>
#include <QObject>
#include <list>
#include <memory>

#include "desk/session/session.h"
#include "work/time_strip.h"

namespace kempt::desk {

class StripFiller : public QObject {
    Q_OBJECT
  public:
    explicit StripFiller(Session& session, QObject* parent = nullptr);
    // Another strip: what was asked for before is stopped. reference 0: the newest visit leads.
    void show(Id client, View view, Id reference_visit);
    // Nothing more arrives until go_on().
    void stop();
    void go_on();
    [[nodiscard]] bool stopped() const { return stopped_; }
    [[nodiscard]] bool settled() const { return job_ == nullptr; }
    [[nodiscard]] const work::StripPlan& plan() const { return plan_; }
    [[nodiscard]] qsizetype waiting() const { return waiting_.size(); }
    [[nodiscard]] int made() const { return made_; }  // pictures that were really made, not taken from what was kept

  signals:
    void planned(QSize picture);  // places without pictures; the size that all pictures will have, empty: no photo
    void picture_ready(int place, const kempt::work::StripPicture& picture);
    void failed(int place, const QString& sentence);  // place -1: the strip as a whole
    void finished();

  private:
    void take(const work::StripPlan& plan);
    void next();
    void put_off();
    [[nodiscard]] QString key_of(int place) const;
    void keep(const QString& key, const work::StripPicture& picture);

    Session& session_;
    Id client_ = 0, reference_visit_ = 0;
    View view_ = View::left_temple;
    int asked_ = 0, made_ = 0;
    bool stopped_ = false;
    jobs::JobHandle job_;
    work::StripPlan plan_;
    std::shared_ptr<const work::StripReference> reference_;
    QVector<int> waiting_;
    // The pictures used last, by photos and marks; the oldest falls out.
    QHash<QString, work::StripPicture> kept_;
    std::list<QString> order_;
};

}  // namespace kempt::desk
