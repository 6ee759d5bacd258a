// What the tray tells below the photos: files that could not be read, and photos that the book has already.
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/inbox/inbox_page.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "desk/widgets/photo_tile.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

constexpr int most_told = 24;

}  // namespace

void InboxPage::fill_told() {
    empty_layout(told_);
    const QStringList bad = inbox_.unreadable();
    const auto& known = inbox_.in_record();
    if (bad.isEmpty() && known.isEmpty()) return;
    if (!bad.isEmpty()) {
        told_->addWidget(text(tr("Could not be read"), "heading"));
        for (qsizetype i = 0; i < std::min<qsizetype>(bad.size(), most_told); ++i) told_->addWidget(text(bad[i]));
    }
    if (!known.isEmpty()) {
        told_->addWidget(text(tr("In the book already"), "heading"));
        auto* tiles = new FlowLayout(measures().gap(2));
        for (qsizetype i = 0; i < std::min<qsizetype>(known.size(), most_told); ++i) {
            const work::InRecord& where = *known[i].in_record;
            auto* one = panel("plain");
            auto* row = new QHBoxLayout(one);
            row->setContentsMargins(measures().gap(1), 0, measures().gap(3), 0);
            const QString words =
                tr("already in the record of %1 on %2: %3, shot %4")
                    .arg(name_within(where.client_name), date_words(where.day), said(word_of(where.view)))
                    .arg(where.shot);
            auto* tile = new PhotoTile(known[i].thumbnail, {}, {}, PhotoTile::Stand::none);
            tile->set_picture_size({96, 68});
            tile->setAccessibleName(words);
            tile->setToolTip(words);
            connect(tile, &PhotoTile::clicked, this, [this, where] {
                emit go({Where::photo, where.client, where.visit, where.photo, where.view});
            });
            row->addWidget(tile);
            auto* label = text(words);
            label->setFixedWidth(measures().px(210));
            row->addWidget(label);
            tiles->addWidget(one);
        }
        told_->addLayout(tiles);
    }
    const qsizetype more =
        std::max<qsizetype>(0, bad.size() - most_told) + std::max<qsizetype>(0, known.size() - most_told);
    if (more > 0) told_->addWidget(text(tr("And %1 more.").arg(more), "soft"));
    auto* away = button(tr("Put these away"), "quiet");
    connect(away, &QPushButton::clicked, &inbox_, &Inbox::put_away_told);
    told_->addWidget(away, 0, Qt::AlignLeft);
}

}  // namespace kempt::desk
