// What the canvas tells screen readers.
#include "desk/photo/photo_canvas.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

// The state in words, for screen readers.
void PhotoCanvas::tell_state() {
    const Marks& m = editor_.marks();
    const auto points = [](qsizetype count) { return counted(count, tr("point"), tr("points")); };
    QStringList words;
    if (tool_ == Tool::edge_line || !m.edge_line.isEmpty())
        words.append(tr("%1 on the edge line.").arg(points(m.edge_line.size())));
    if (tool_ == Tool::tone || !m.strand_line.isEmpty())
        words.append(tr("%1 on the line for the tone.").arg(points(m.strand_line.size())));
    if (tool_ == Tool::shine || !m.shine_region.isEmpty())
        words.append(tr("%1 of 4 corners of the region for the shine.").arg(m.shine_region.size()));
    if (!m.region.isEmpty()) words.append(tr("%1 of 4 corners of the region on the sheet.").arg(m.region.size()));
    if (tool_ == Tool::anchor || !m.anchors.isEmpty())
        words.append(tr("%1.").arg(counted(m.anchors.size(), tr("anchor"), tr("anchors"))));
    if (picked_) {
        const auto numbered = [this](const QString& what) {
            return tr("%1 %2 is picked.").arg(what).arg(picked_->index + 1);
        };
        switch (picked_->kind) {
            case MarkKind::edge_point:
                words.append(numbered(tr("Point")));
                break;
            case MarkKind::hair_side:
                words.append(tr("The sign for the hair's side is picked."));
                break;
            case MarkKind::hair_tap:
                words.append(numbered(tr("Hair sample")));
                break;
            case MarkKind::scalp_tap:
                words.append(numbered(tr("Scalp sample")));
                break;
            case MarkKind::shine_corner:
            case MarkKind::region_corner:
                words.append(numbered(tr("Corner")));
                break;
            case MarkKind::strand_point:
                words.append(numbered(tr("Point of the tone line")));
                break;
            case MarkKind::anchor:
                words.append(numbered(tr("Anchor")));
                break;
            case MarkKind::scale_point:
                words.append(numbered(tr("Ruler end")));
                break;
            case MarkKind::not_hair:
                words.append(
                    tr("A mark on a strand that was taken out is picked; removing it brings the strand back."));
                break;
            case MarkKind::whole:
                words.append(tr("The mark of a hair of its own is picked; removing it counts the strand as before."));
                break;
            case MarkKind::join_point:
                words.append(tr("The mark of a join is picked; removing it parts the strands again."));
                break;
        }
    }
    const QString whole = words.join(QLatin1Char(' '));
    if (whole != accessibleDescription()) setAccessibleDescription(whole);
}

}  // namespace kempt::desk
