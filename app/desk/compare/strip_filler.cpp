#include "desk/compare/strip_filler.h"
#include "desk/translations/said.h"

#include <algorithm>

namespace kempt::desk {
namespace {

constexpr std::size_t most_kept = 80;  // of 640 px and three bytes a pixel at most 100 MB, mostly a third of that

}  // namespace

StripFiller::StripFiller(Session& session, QObject* parent) : QObject(parent), session_(session) {}

void StripFiller::put_off() {
    if (job_) job_->cancel();
    job_.reset();
    waiting_.clear();
    ++asked_;
}

void StripFiller::show(Id client, View view, Id reference_visit) {
    put_off();
    stopped_ = false;
    client_ = client;
    view_ = view;
    reference_visit_ = reference_visit;
    reference_.reset();
    job_ = session_.records().start(
        tr("Reading the visits"), this,
        [client, view, reference_visit](Book& book, const Progress&) {
            return work::strip_plan(book, client, view, reference_visit);
        },
        [this, asked = asked_](Result<work::StripPlan> result) {
            if (asked != asked_) return;
            job_.reset();
            if (!result.ok()) {
                emit failed(-1, said(result.error().sentence()));
                return;
            }
            take(result.value());
        });
}

QString StripFiller::key_of(int place) const {
    const work::StripPlace& one = plan_.places[place];
    const work::StripPlace& lead = plan_.places[plan_.reference];
    return QStringLiteral("%1/%2/%3/%4").arg(one.photo).arg(one.marks).arg(lead.photo).arg(lead.marks);
}

void StripFiller::take(const work::StripPlan& plan) {
    plan_ = plan;
    waiting_.clear();
    if (plan_.reference < 0) {
        emit planned({});
        emit finished();
        return;
    }
    for (int i = 0; i < plan_.places.size(); ++i)
        if (plan_.places[i].photo > 0) waiting_.append(i);
    std::reverse(waiting_.begin(), waiting_.end());
    // The picture that leads says how large all are; it is opened once and kept while the strip is filled.
    const QString lead = key_of(plan_.reference);
    emit planned(kept_.contains(lead) ? kept_[lead].picture.size() : QSize());
    QVector<int> missing;
    for (const int place : waiting_) {
        const QString key = key_of(place);
        if (kept_.contains(key))
            emit picture_ready(place, kept_[key]);
        else
            missing.append(place);
    }
    waiting_ = missing;
    next();
}

void StripFiller::next() {
    if (stopped_ || job_) return;
    if (waiting_.isEmpty()) {
        reference_.reset();  // a photo of many megabytes
        emit finished();
        return;
    }
    const work::StripOptions options;
    if (!reference_) {
        job_ = session_.bench().start(
            tr("Opening the photo that all are laid over"), this,
            [place = plan_.places[plan_.reference], options](Book& book, const Progress& progress) {
                return work::strip_reference(book, place, options, progress);
            },
            [this, asked = asked_](Result<std::shared_ptr<const work::StripReference>> result) {
                if (asked != asked_) return;
                job_.reset();
                if (!result.ok()) {
                    if (result.error().kind != ErrorKind::cancelled) emit failed(-1, said(result.error().sentence()));
                    return;
                }
                reference_ = result.value();
                const cv::Size size = reference_->frame.size();
                emit planned(QSize(size.width, size.height));
                next();
            });
        return;
    }
    const int place = waiting_.first();
    job_ = session_.bench().start(
        tr("Laying the photos of all visits over each other"), this,
        [one = plan_.places[place], reference = reference_, options](Book& book, const Progress& progress) {
            return work::strip_picture(book, one, *reference, options, progress);
        },
        [this, place, asked = asked_](Result<work::StripPicture> result) {
            if (asked != asked_) return;
            job_.reset();
            if (!result.ok() && result.error().kind == ErrorKind::cancelled) return;
            waiting_.removeOne(place);
            if (result.ok()) {
                ++made_;
                keep(key_of(place), result.value());
                emit picture_ready(place, result.value());
            } else {
                emit failed(place, said(result.error().sentence()));
            }
            next();
        });
}

void StripFiller::keep(const QString& key, const work::StripPicture& picture) {
    if (!kept_.contains(key)) order_.push_back(key);
    kept_[key] = picture;
    while (order_.size() > most_kept) {
        kept_.remove(order_.front());
        order_.pop_front();
    }
}

void StripFiller::stop() {
    stopped_ = true;
    if (job_) job_->cancel();
    job_.reset();
    ++asked_;
}

void StripFiller::go_on() {
    if (!stopped_) return;
    stopped_ = false;
    if (plan_.places.isEmpty())
        show(client_, view_, reference_visit_);
    else
        next();
}

}  // namespace kempt::desk
