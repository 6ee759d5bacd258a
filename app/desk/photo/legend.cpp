#include "desk/photo/legend.h"

#include <QHBoxLayout>
#include <QPainter>

#include "desk/look/look.h"
#include "desk/photo/overlay_painter.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

// A bit of photo with the stroke on it: neither surface nor ground, so that it looks as it does over hair.
class SampleView : public QWidget {
  public:
    explicit SampleView(Sample sample) : sample_(sample) { setFixedSize(measures().px(34), measures().px(16)); }

  protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(rect(), QColor(120, 104, 94));
        paint_sample(painter, QRectF(rect()), sample_, measures().space);
    }

  private:
    Sample sample_;
};

struct Entry {
    Sample sample;
    QString words;
};

QVector<Entry> entries(ReadingGroup group) {
    switch (group) {
        case ReadingGroup::edges:
            return {{Sample::band, Legend::tr("the band that is measured")},
                    {Sample::cover, Legend::tr("taken for hair")}};
        case ReadingGroup::shine:
            return {{Sample::region, Legend::tr("the region; its comb is towards the roots")},
                    {Sample::crest, Legend::tr("crest of the highlight")},
                    {Sample::half_zone, Legend::tr("above half its height")},
                    {Sample::axis, Legend::tr("the way the fibres run")}};
        case ReadingGroup::tone:
            return {{Sample::lane, Legend::tr("the hair whose colours were taken")},
                    {Sample::demarcation, Legend::tr("line of demarcation, and how far it is from the scalp")}};
        case ReadingGroup::ends:
            return {{Sample::hem, Legend::tr("the hem as it is")},
                    {Sample::smooth_hem, Legend::tr("a smooth hem through it")},
                    {Sample::silhouette, Legend::tr("smooth outline; hair outside flies away")},
                    {Sample::cover, Legend::tr("taken for hair")}};
        case ReadingGroup::combings:
        case ReadingGroup::pattern:
            break;
    }
    QVector<Entry> all = {
        {Sample::strand, Legend::tr("one colour for each strand")},
        {Sample::doubtful, Legend::tr("dashed: a guess was made at a crossing or a gap")},
        {Sample::cut_off, Legend::tr("ring: goes on unseen, its length is a least one")},
        {Sample::unresolved, Legend::tr("stripes: could not be made out or is too faint, not counted")}};
    if (group == ReadingGroup::combings) {
        all.append({Sample::taken_out, Legend::tr("taken out by hand; removing the mark brings it back")});
        all.append({Sample::joined, Legend::tr("joined by hand; removing the mark parts them")});
        all.append({Sample::whole, Legend::tr("a hair of its own; removing the mark takes that back")});
    }
    return all;
}

}  // namespace

Legend::Legend(ReadingGroup group, QWidget* parent) : QWidget(parent) {
    auto* rows = column_in(this, 0, 0.5);
    for (const Entry& entry : entries(group)) {
        auto* row = new QHBoxLayout;
        row->setSpacing(measures().gap(2));
        row->addWidget(new SampleView(entry.sample), 0, Qt::AlignTop);
        row->addWidget(text(entry.words, "caption"), 1);
        rows->addLayout(row);
    }
}

}  // namespace kempt::desk
