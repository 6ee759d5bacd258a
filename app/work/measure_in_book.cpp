#include "work/measure_in_book.h"

#include <QJsonDocument>

#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/transaction.h"
#include "core/version.h"
#include "work/details_json.h"
#include "work/errors.h"
#include "work/measure_json.h"
#include "work/measure_steps.h"
#include "work/open_book.h"

namespace kempt::work {

namespace {

QString compact(const QJsonObject& object) {
    return QString::fromUtf8(QJsonDocument(object).toJson(QJsonDocument::Compact));
}

QString unit_of(Book& book, const QString& name) {
    const auto names = store::reading_names(book);
    if (names)
        for (const store::ReadingName& known : names.value())
            if (known.name == name) return known.unit;
    return {};
}

QVector<ReadingRecord> records_from(Book& book, const MeasureResult& result, const PhotoRecord& photo,
                                    const Marks& marks, const QString& options, const QDateTime& now) {
    ReadingRecord common;
    common.photo = photo.id;
    common.marks = marks.id;
    common.analysis_version = analysis_version;
    common.options = options;
    common.card = compact(json_of_calibration(result.calibration));
    common.details = compact(json_of_details(result));
    common.photo_sha256 = photo.sha256;
    common.measured_at = now;
    QVector<ReadingRecord> records;
    for (const Quantity& reading : result.readings) {
        ReadingRecord record = common;
        record.name = QString::fromStdString(reading.name);
        record.unit = QString::fromStdString(reading.unit);
        record.value = reading.value;
        record.low = reading.low;
        record.high = reading.high;
        records.push_back(record);
    }
    for (const Refusal& refusal : result.refused) {
        ReadingRecord record = common;
        record.name = QString::fromStdString(refusal.name);
        record.unit = unit_of(book, record.name);
        record.refused = true;
        record.refusal_code = QString::fromStdString(refusal.code);
        record.refusal_text = QString::fromStdString(refusal.text);
        records.push_back(record);
    }
    return records;
}

bool still_stand(const QVector<ReadingRecord>& readings, const Marks& marks, const QString& options) {
    if (readings.isEmpty()) return false;
    const ReadingRecord& one = readings.front();
    return one.marks == marks.id && one.analysis_version == analysis_version && one.options == options;
}

Status keep(Book& book, MeasuredPhoto& measured) {
    auto transaction = Transaction::begin(book);
    if (!transaction) return transaction.error();
    const card::GateReport& quality = measured.result.quality;
    measured.photo.quality_level = QString::fromStdString(quality.level);
    measured.photo.quality_findings =
        QString::fromUtf8(QJsonDocument(json_of_findings(quality.findings)).toJson(QJsonDocument::Compact));
    if (const Status status = store::set_photo_quality(book, measured.photo.id, measured.photo.quality_level,
                                                       measured.photo.quality_findings);
        !status)
        return status.error();
    if (!measured.readings.isEmpty()) {
        const auto run = store::add_readings(book, measured.readings);
        if (!run) return run.error();
        auto stored = store::latest_readings(book, measured.photo.id);
        if (!stored) return stored.error();
        measured.readings = std::move(stored).value();
    }
    return transaction->commit();
}

}  // namespace

Result<ReadyPhoto> make_ready(Book& book, Id photo, const MeasureInBookOptions& options) {
    ReadyPhoto ready;
    auto record = store::get_photo(book, photo);
    if (!record) return record.error();
    ready.measured.photo = std::move(record).value();
    const auto marks = store::latest_marks(book, photo);
    if (!marks) return marks.error();
    if (!marks.value())
        return missing("no-marks", "Nothing has been drawn on this photo yet.", "Draw the edge line first.");
    ready.measured.marks = *marks.value();
    ready.how = options.measure;
    ready.how.with_sha256 = true;
    if (options.use_book_printer_scale) {
        const auto scale = printer_scale_of(book);
        if (!scale) return scale.error();
        ready.how.printer_scale = scale.value();
    }
    ready.how_json = compact(json_of_options(ready.how));
    if (!options.again) {
        auto readings = store::latest_readings(book, photo);
        if (!readings) return readings.error();
        if (still_stand(readings.value(), ready.measured.marks, ready.how_json)) {
            ready.measured.readings = std::move(readings).value();
            ready.measured.kept_as_they_were = true;
            return ready;
        }
    }
    auto bytes = store::photo_bytes(book, photo);
    if (!bytes) return bytes.error();
    ready.bytes = std::move(bytes).value();
    return ready;
}

Status keep_result(Book& book, ReadyPhoto& ready, MeasureResult result, const Clock& clock) {
    MeasuredPhoto& measured = ready.measured;
    if (result.sha256 != measured.photo.sha256)
        return Error{ErrorKind::damaged, "photo-changed",
                     "The bytes of this photo are no longer those that were put into the book.",
                     "Its readings were left as they are.", "Check the book, and restore it from a backup."};
    measured.result = std::move(result);
    measured.readings =
        records_from(book, measured.result, measured.photo, measured.marks, ready.how_json, clock.now());
    return keep(book, measured);
}

Result<MeasuredPhoto> measure_in_book(Book& book, Id photo, const MeasureInBookOptions& options,
                                      const Progress& progress) {
    auto ready = make_ready(book, photo, options);
    if (!ready) return ready.error();
    if (ready->measured.kept_as_they_were) {
        tell(progress, 1, "readings stand as they are");
        return std::move(ready->measured);
    }
    auto result = measure_photo(ready->bytes, ready->measured.marks, ready->how, part_of(progress, 0, 0.95));
    if (!result) return result.error();
    if (tell(progress, 0.95, "keeping the readings") == Go::stop) return stopped();
    if (const Status status = keep_result(book, ready.value(), std::move(result).value(), options.clock); !status)
        return status.error();
    tell(progress, 1, "readings are in the book");
    return std::move(ready->measured);
}

}  // namespace kempt::work
