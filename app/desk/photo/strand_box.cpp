#include "desk/photo/strand_box.h"

#include <QLabel>
#include <QPushButton>

#include "desk/look/look.h"
#include "desk/photo/strand_list.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

StrandBox::StrandBox(bool corrects, QWidget* parent) : QWidget(parent), corrects_(corrects) {
    auto* column = column_in(this, 0, 1);
    list_ = new StrandList;
    column->addWidget(list_);
    parts_ = text({}, "caption");
    column->addWidget(parts_);
    words_ = text({}, "caption");
    column->addWidget(words_);
    auto* row = new FlowLayout(measures().gap(1));
    column->addLayout(row);
    drop_ = button(tr("Not hair"));
    drop_->setToolTip(tr("Takes the chosen strand out of the count (Delete)"));
    join_ = button(tr("Join"));
    join_->setToolTip(tr("The chosen strand and the next one that you choose are one hair (J)"));
    whole_ = button(tr("A hair of its own"));
    whole_->setToolTip(tr("The chosen strand is all there, though it ends on another: it is no part of one (O)"));
    row->addWidget(drop_);
    row->addWidget(join_);
    row->addWidget(whole_);
    told_ = text({}, "caption");
    column->addWidget(told_);
    clear_ = button(tr("Take all corrections back"), "quiet");
    column->addWidget(clear_, 0, Qt::AlignLeft);
    connect(list_, &StrandList::pointed_at, this, &StrandBox::pointed_at);
    connect(list_, &StrandList::chosen, this, [this](int strand) {
        took(strand);
        emit chosen(list_->currentRow());
    });
    connect(drop_, &QPushButton::clicked, this, [this] { drop(list_->currentRow()); });
    connect(join_, &QPushButton::clicked, this, [this] { begin_join(joining_ >= 0 ? -1 : list_->currentRow()); });
    connect(whole_, &QPushButton::clicked, this, [this] { say_whole(list_->currentRow()); });
    connect(clear_, &QPushButton::clicked, this, &StrandBox::clear_asked);
    if (corrects_) {
        connect(list_, &StrandList::drop_asked, this, &StrandBox::drop);
        connect(list_, &StrandList::join_asked, this, &StrandBox::begin_join);
        connect(list_, &StrandList::whole_asked, this, &StrandBox::say_whole);
    }
    refresh();
}

void StrandBox::show_strands(const StrandsOverlay& found, const Marks& marks) {
    const int before = list_->count();
    list_->show_strands(found);
    if (next_ >= 0 && list_->count() < before) {
        list_->setCurrentRow(std::min(next_, list_->count() - 1));
        next_ = -1;
    }
    if (joining_ >= found.strands.size()) joining_ = -1;
    torn_.clear();
    for (const ShownStrand& strand : found.strands) torn_.append(strand.looks_torn);
    const bool some = corrects_ && found.parts > 0;
    parts_->setVisible(some);
    if (some)
        parts_->setText(
            tr("%1 traced, counted as %2: some that end on another, perhaps longer, are likely parts of one "
               "hair. Join those that are, and say which are hairs of their own.")
                .arg(counted(found.strands.size(), tr("line"), tr("lines")))
                .arg(found.strands.size() - found.parts));
    QStringList words;
    if (!marks.not_hair.isEmpty())
        words.append(tr("%1 taken out by hand").arg(counted(marks.not_hair.size(), tr("strand"), tr("strands"))));
    if (!marks.joined.isEmpty())
        words.append(tr("%1 by hand").arg(counted(marks.joined.size() / 2, tr("join"), tr("joins"))));
    if (!marks.whole.isEmpty())
        words.append(
            tr("%1 by hand").arg(counted(marks.whole.size(), tr("hair of its own"), tr("hairs of their own"))));
    told_->setText(words.isEmpty() ? QString() : words.join(QStringLiteral(", ")) + QLatin1Char('.'));
    refresh();
}

void StrandBox::choose(int strand) {
    list_->choose(strand);
    took(strand);
}

// The second strand of a join ends it.
void StrandBox::took(int strand) {
    if (joining_ >= 0 && strand >= 0 && strand != joining_) {
        const int one = joining_;
        joining_ = -1;
        emit join_asked(one, strand);
    }
    refresh();
}

void StrandBox::drop(int strand) {
    next_ = strand;
    if (drop_->hasFocus()) list_->setFocus();  // the button goes with the choice
    emit drop_asked(strand);
}

void StrandBox::begin_join(int strand) {
    joining_ = strand;
    refresh();
}

bool StrandBox::looks_torn(int strand) const {
    return strand >= 0 && strand < torn_.size() && torn_[strand];
}

void StrandBox::say_whole(int strand) {
    if (!looks_torn(strand)) return;
    if (whole_->hasFocus()) list_->setFocus();  // the button goes with the doubt
    torn_[strand] = false;                      // a second press says nothing more
    refresh();
    emit whole_asked(strand);
}

void StrandBox::refresh() {
    const bool picked = corrects_ && list_->currentRow() >= 0 && list_->count() > 0;
    const bool told = corrects_ && !told_->text().isEmpty();
    words_->setVisible(corrects_ && list_->count() > 0);
    words_->setText(joining_ >= 0 ? tr("Now choose the other part of the same hair, here or on the photo.")
                    : picked      ? tr("Is this strand wrong?")
                             : tr("Choose a strand that was traced wrongly, here or on the photo, to correct it."));
    drop_->setVisible(picked && joining_ < 0);
    join_->setVisible(picked || joining_ >= 0);
    whole_->setVisible(picked && joining_ < 0 && looks_torn(list_->currentRow()));
    join_->setText(joining_ >= 0 ? tr("Do not join") : tr("Join with another"));
    join_->setAccessibleName(join_->text());
    told_->setVisible(told);
    clear_->setVisible(told);
}

}  // namespace kempt::desk
