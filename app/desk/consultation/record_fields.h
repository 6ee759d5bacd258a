// What is written down of a service by its kind; the rest is not shown, unless the record holds it already.
#pragma once

#include <QString>
#include <QStringList>
#include <QVector>

#include "domain/records.h"

namespace kempt::desk {

enum class RecordField {
    stretch,     // from, to
    cut_length,  // that was left
    sections,
    strength,
    minutes,  // and the maker's maximum
    temperature,
    passes,
    strand_test,
    patch_test,
    reaction,
    line  // of demarcation, by tape
};

[[nodiscard]] bool wants(const QString& kind, RecordField field);
[[nodiscard]] bool holds(const Service& service, RecordField field);
[[nodiscard]] inline bool shows(const Service& service, RecordField field) {
    return wants(service.kind, field) || holds(service, field);
}

// All kinds that a record knows, by what they do.
struct RecordGroup {
    QString name;
    QStringList kinds;
};
[[nodiscard]] QVector<RecordGroup> record_groups();

}  // namespace kempt::desk
