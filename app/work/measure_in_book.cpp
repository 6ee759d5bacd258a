#include "work/measure_in_book.h"

#include <QJsonDocument>

#include "book/client_store.h"
#include "book/marks_store.h"
#include "book/photo_store.h"
#include "book/reading_store.h"
#include "book/transaction.h"
#include "book/visit_store.h"
#include "core/version.h"
#include "work/details_json.h"
#include "work/errors.h"
#include "work/measure_json.h"
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

Result<MeasuredPhoto> measure_in_book(Book& book, Id photo, const MeasureInBookOptions& options,
                                      const Progress& progress) {
    MeasuredPhoto measured;
    auto record = store::get_photo(book, photo);
    if (!record) return record.error();
    measured.photo = std::move(record).value();
    const auto marks = store::latest_marks(book, photo);
    if (!marks) return marks.error();
    if (!marks.value())
        return missing("no-marks", "Nothing has been drawn on this photo yet.", "Draw the edge line first.");
    measured.marks = *marks.value();
    MeasureOptions how = options.measure;
    how.with_sha256 = true;
    if (options.use_book_printer_scale) {
        const auto scale = printer_scale_of(book);
        if (!scale) return scale.error();
        how.printer_scale = scale.value();
    }
    const QString how_json = compact(json_of_options(how));
    if (!options.again) {
        auto readings = store::latest_readings(book, photo);
        if (!readings) return readings.error();
        if (still_stand(readings.value(), measured.marks, how_json)) {
            measured.readings = std::move(readings).value();
            measured.kept_as_they_were = true;
            tell(progress, 1, "readings stand as they are");
            return measured;
        }
    }
    const auto bytes = store::photo_bytes(book, photo);
    if (!bytes) return bytes.error();
    auto result = measure_photo(bytes.value(), measured.marks, how, part_of(progress, 0, 0.95));
    if (!result) return result.error();
    if (result->sha256 != measured.photo.sha256)
        return Error{ErrorKind::damaged, "photo-changed",
                     "The bytes of this photo are no longer those that were put into the book.",
                     "Its readings were left as they are.", "Check the book, and restore it from a backup."};
    if (tell(progress, 0.95, "keeping the readings") == Go::stop) return stopped();
    measured.result = std::move(result).value();
    measured.readings =
        records_from(book, measured.result, measured.photo, measured.marks, how_json, options.clock.now());
    if (const Status status = keep(book, measured); !status) return status.error();
    tell(progress, 1, "readings are in the book");
    return measured;
}

Result<BatchReport> measure_all(Book& book, Id client, const MeasureInBookOptions& options, const Progress& progress) {
    QVector<Id> clients{client};
    if (client == 0) {
        clients.clear();
        const auto rows = store::list_clients(book);
        if (!rows) return rows.error();
        for (const store::ClientRow& row : rows.value()) clients.push_back(row.client.id);
    } else if (const auto known = store::get_client(book, client); !known) {
        return known.error();
    }
    QVector<Id> photos;
    for (const Id one : clients) {
        const auto visits = store::visits_of_client(book, one);
        if (!visits) return visits.error();
        for (const Visit& visit : visits.value()) {
            const auto records = store::photos_of_visit(book, visit.id);
            if (!records) return records.error();
            for (const PhotoRecord& record : records.value()) photos.push_back(record.id);
        }
    }
    BatchReport report;
    const double count = static_cast<double>(std::max<qsizetype>(photos.size(), 1));
    for (qsizetype i = 0; i < photos.size(); ++i) {
        const std::string words = "measuring photo " + std::to_string(i + 1) + " of " + std::to_string(photos.size());
        const std::string kept = std::to_string(report.measured) + " photos were measured before that.";
        if (tell(progress, static_cast<double>(i) / count, words) == Go::stop) return stopped(kept);
        const auto marks = store::latest_marks(book, photos[i]);
        if (!marks) return marks.error();
        if (!marks.value()) {
            ++report.without_marks;
            continue;
        }
        const auto within = part_of(progress, static_cast<double>(i) / count, static_cast<double>(i + 1) / count);
        const auto measured = measure_in_book(book, photos[i], options, within);
        if (!measured && measured.error().kind == ErrorKind::cancelled) return stopped(kept);
        if (!measured)
            report.failed.emplace_back(photos[i], measured.error());
        else
            ++(measured->kept_as_they_were ? report.kept : report.measured);
    }
    tell(progress, 1, "all photos are measured");
    return report;
}

}  // namespace kempt::work
