// What a visit still lacks before its readings can be compared.
#pragma once

#include <QString>
#include <QVector>

#include "work/keep_records.h"

namespace kempt::desk {

struct Missing {
    enum class What { photo, second_shot, edge_line, better_shot };
    What what = What::photo;
    View view = View::front_hairline;
    Id photo = 0;   // for edge_line
    QString words;  // one sentence
};

// wanted: the views this client is followed by; empty: the four where edges are read.
[[nodiscard]] QVector<Missing> missing_of(const QVector<work::PhotoRow>& photos, const QVector<View>& wanted);
[[nodiscard]] const QVector<View>& edge_views();

}  // namespace kempt::desk
