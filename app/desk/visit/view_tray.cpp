#include "desk/visit/view_tray.h"

#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QMenu>
#include <QMimeData>
#include <QStyle>
#include <QUrl>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "desk/widgets/photo_tile.h"
#include "domain/words.h"
#include "work/measure_json.h"

namespace kempt::desk {
namespace {

constexpr int widest_tray = 560;  // fits the smallest window beside nothing

QStringList local_files(const QMimeData* mime) {
    QStringList paths;
    for (const QUrl& url : mime->urls())
        if (url.isLocalFile()) paths.append(url.toLocalFile());
    return paths;
}

// What stands below a shot: its cover or else its first reading, or what it waits for.
QString standing(const work::PhotoRow& row, const QString& quality) {
    if (quality == "refused") return QObject::tr("refused");
    for (const QString& name : all_reading_names())
        for (const ReadingRecord& r : row.readings) {
            if (r.name != name || r.refused) continue;
            const QString value = in_figures(plain_value(r.value, (r.high - r.low) / 2, r.unit, look().length()));
            return name == "edge_coverage"
                       ? QObject::tr("covered %1–%2 %").arg(std::lround(r.low)).arg(std::lround(r.high))
                       : QStringLiteral("%1 %2").arg(said(title_of_reading(name)), value);
        }
    if (!row.readings.isEmpty()) return QObject::tr("no reading");
    return row.has_marks ? QObject::tr("not measured yet") : QObject::tr("nothing marked yet");
}

}  // namespace

QVector<ShownFinding> findings_of(const PhotoRecord& photo) {
    QVector<ShownFinding> out;
    for (const Finding& f : work::findings_from_json(photo.quality_findings.toUtf8()))
        out.append({QString::fromStdString(f.code),
                    f.level == Level::refused   ? ShownFinding::Level::refused
                    : f.level == Level::warning ? ShownFinding::Level::warning
                                                : ShownFinding::Level::note,
                    said(f.text), said(f.remedy)});
    return out;
}

QWidget* finding_panel(const ShownFinding& finding, const QString& of) {
    const bool refused = finding.level == ShownFinding::Level::refused;
    const bool note = finding.level == ShownFinding::Level::note;
    auto* box = panel(refused ? "worse" : note ? "plain" : "caution");
    auto* column = column_in(box, 2, 0.5);
    const QString words = of.isEmpty() ? said(finding.text) : QObject::tr("%1: %2").arg(of, said(finding.text));
    auto* what = text(words);
    column->addWidget(what);
    if (!finding.remedy.isEmpty()) {
        auto* remedy = text(said(finding.remedy), "strong");
        column->addWidget(remedy);
    }
    box->setAccessibleName(words + QLatin1Char(' ') + said(finding.remedy));
    return box;
}

ViewTray::ViewTray(View view, QWidget* parent) : QFrame(parent), view_(view) {
    setProperty("panel", "surface");
    setAcceptDrops(true);
    const QString name = beginning(said(word_of(view)));
    setAccessibleName(tr("Photos of the view %1").arg(said(word_of(view))));
    auto* column = column_in(this, 3, 2);
    auto* head = new QHBoxLayout;
    auto* title = text(name, "lead");
    title->setWordWrap(false);
    head->addWidget(title);
    head->addStretch();
    auto* add = sign_button(Sign::add, tr("Add photos of the %1").arg(said(word_of(view))));
    auto* folder = sign_button(Sign::folder, tr("Add a folder of photos of the %1").arg(said(word_of(view))));
    head->addWidget(folder);
    head->addWidget(add);
    column->addLayout(head);
    hint_ = text(tr("Drop photos or a folder here."), "caption");
    column->addWidget(hint_);
    tiles_ = new FlowLayout(measures().gap(1));
    column->addLayout(tiles_);
    findings_ = new QVBoxLayout;
    findings_->setSpacing(measures().gap(1));
    column->addLayout(findings_);
    column->addStretch();
    connect(add, &QToolButton::clicked, this, [this] { emit choose_files(view_); });
    connect(folder, &QToolButton::clicked, this, [this] { emit choose_folder(view_); });
}

void ViewTray::show_photos(const QVector<work::PhotoRow>& photos, const GateLooks& looks) {
    // What had the keyboard has it again afterwards.
    int focused = -1;
    for (int i = 0; i < tiles_->count(); ++i)
        if (tiles_->itemAt(i)->widget() != nullptr && tiles_->itemAt(i)->widget()->hasFocus()) focused = i;
    empty_layout(tiles_);
    empty_layout(findings_);
    int shots = 0;
    struct Told {
        ShownFinding finding;
        QStringList shots;
    };
    QVector<Told> told;  // a finding that several shots share is told once
    for (const work::PhotoRow& row : photos) {
        if (row.photo.view != view_) continue;
        ++shots;
        const bool looked = row.photo.quality_level.isEmpty() && looks.contains(row.photo.id);
        const QString quality = looked ? looks[row.photo.id].first : row.photo.quality_level;
        const auto findings = looked ? looks[row.photo.id].second : findings_of(row.photo);
        const bool measured =
            std::any_of(row.readings.begin(), row.readings.end(), [](const ReadingRecord& r) { return !r.refused; });
        const auto stand = quality == "refused"            ? PhotoTile::Stand::refused
                           : quality == "usable"           ? PhotoTile::Stand::attention
                           : quality == "good" && measured ? PhotoTile::Stand::good
                                                           : PhotoTile::Stand::none;
        const QString shot = tr("Shot %1").arg(row.photo.shot);
        auto* tile = new PhotoTile(row.photo.thumbnail, shot, standing(row, quality), stand);
        connect(tile, &PhotoTile::clicked, this, [this, id = row.photo.id] { emit photo_chosen(id); });
        connect(tile, &PhotoTile::asked_to_erase, this, [this, id = row.photo.id] { emit erase_asked(id); });
        tile->setContextMenuPolicy(Qt::CustomContextMenu);
        connect(tile, &QWidget::customContextMenuRequested, this, [this, tile, id = row.photo.id](const QPoint& at) {
            auto* menu = new QMenu(tile);
            menu->setAttribute(Qt::WA_DeleteOnClose);
            menu->addAction(tr("Open"), this, [this, id] { emit photo_chosen(id); });
            menu->addAction(tr("Erase this photo…"), this, [this, id] { emit erase_asked(id); });
            menu->popup(tile->mapToGlobal(at));
        });
        tiles_->addWidget(tile);
        for (const ShownFinding& finding : findings) {
            if (finding.level == ShownFinding::Level::note) continue;
            const auto same = std::find_if(told.begin(), told.end(), [&](const Told& t) {
                return t.finding.code == finding.code && t.finding.level == finding.level;
            });
            if (same == told.end())
                told.append({finding, {QString::number(row.photo.shot)}});
            else if (!same->shots.contains(QString::number(row.photo.shot)))
                same->shots.append(QString::number(row.photo.shot));
        }
    }
    for (const Told& t : told)
        findings_->addWidget(finding_panel(
            t.finding, (t.shots.size() == 1 ? tr("Shot %1") : tr("Shots %1")).arg(t.shots.join(QStringLiteral(", ")))));
    hint_->setVisible(shots == 0);
    shots_ = shots;
    // Two shots stand side by side, as they are looked at.
    const int tile = shots > 0 ? tiles_->itemAt(0)->widget()->sizeHint().width() + tiles_->spacing() : 0;
    setMinimumWidth(std::max(measures().px(250), std::min(std::min(shots, 2) * tile + measures().gap(7), widest_tray)));
    if (focused >= 0 && shots > 0) tiles_->itemAt(std::min(focused, shots - 1))->widget()->setFocus();
}

void ViewTray::set_open(bool open) {
    setStyleSheet(open ? QStringLiteral("kempt--desk--ViewTray { border: 2px dashed %1; background: %2; }")
                             .arg(colours().accent.name(), colours().accent_wash.name())
                       : QString());
}

void ViewTray::dragEnterEvent(QDragEnterEvent* event) {
    if (local_files(event->mimeData()).isEmpty()) return;
    set_open(true);
    event->acceptProposedAction();
}

void ViewTray::dragLeaveEvent(QDragLeaveEvent*) {
    set_open(false);
}

void ViewTray::dropEvent(QDropEvent* event) {
    set_open(false);
    const QStringList paths = local_files(event->mimeData());
    if (paths.isEmpty()) return;
    event->acceptProposedAction();
    emit files_given(view_, paths);
}

}  // namespace kempt::desk
