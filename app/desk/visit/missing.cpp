#include "desk/visit/missing.h"

#include <QCoreApplication>
#include <algorithm>

#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("kempt::desk", words);
}

// "1, 2 and 3"
QString in_a_row(QStringList words) {
    const QString last = words.takeLast();
    return tr("%1 and %2").arg(words.join(QStringLiteral(", ")), last);
}

}  // namespace

const QVector<View>& edge_views() {
    static const QVector<View> views{View::front_hairline, View::left_temple, View::right_temple, View::nape};
    return views;
}

QVector<Missing> missing_of(const QVector<work::PhotoRow>& photos, const QVector<View>& wanted) {
    QVector<Missing> out;
    for (const View view : wanted.isEmpty() ? edge_views() : wanted) {
        const QString name = beginning(said(word_of(view)));
        QVector<const work::PhotoRow*> shots, sound;
        for (const work::PhotoRow& row : photos) {
            if (row.photo.view != view) continue;
            shots.append(&row);
            if (row.photo.quality_level != "refused") sound.append(&row);
        }
        if (shots.isEmpty()) {
            out.append({Missing::What::photo, view, 0, tr("%1: no photo yet.").arg(name)});
            continue;
        }
        if (sound.isEmpty())
            out.append({Missing::What::better_shot, view, 0,
                        tr("%1: no shot was good enough. What to do is written below it.").arg(name)});
        else if (sound.size() == 1)
            out.append({Missing::What::second_shot, view, 0,
                        tr("%1: one shot. A second, set up anew, tells a real change from chance.").arg(name)});
        if (!edge_views().contains(view)) continue;
        QStringList waiting;
        Id first = 0;
        for (const work::PhotoRow* row : sound) {
            if (row->has_marks) continue;
            if (first == 0) first = row->photo.id;
            waiting.append(QString::number(row->photo.shot));
        }
        if (waiting.size() == 1)
            out.append({Missing::What::edge_line, view, first,
                        tr("%1, shot %2: waits for its edge line.").arg(name, waiting.first())});
        else if (waiting.size() > 1)
            out.append({Missing::What::edge_line, view, first,
                        tr("%1, shots %2: wait for their edge lines.").arg(name, in_a_row(waiting))});
    }
    return out;
}

}  // namespace kempt::desk
