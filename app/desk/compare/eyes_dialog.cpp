#include "desk/compare/eyes_dialog.h"

#include <QVBoxLayout>

#include "desk/compare/eye_bands.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

constexpr double turn_step_deg = 6, grow_step = 1.15;

}  // namespace

EyesDialog::EyesDialog(Session& session, Id client, QVector<Id> photos, QWidget* parent)
    : QDialog(parent), session_(session), client_(client), photos_(std::move(photos)) {
    setWindowTitle(tr("Eyes in the pictures"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* column = column_in(this, 5, 2);
    where_ = text({}, "heading");
    told_ = text({}, "strong");
    column->addWidget(where_);
    column->addWidget(told_);
    column->addWidget(
        text(tr("The band is drawn into every picture that leaves the book; the photo in the book stays as "
                "it is. Drag it, its end or its side; arrows, + − and [ ] do the same."),
             "caption"));
    canvas_ = new EyeBands;
    column->addWidget(canvas_, 1);
    auto* acts = new FlowLayout(measures().gap(2));
    const auto tool = [this, acts](const QString& words, std::optional<Sign> sign, auto act) {
        auto* b = button(words, "", sign);
        connect(b, &QPushButton::clicked, canvas_, act);
        tools_.append(b);
        acts->addWidget(b);
        return b;
    };
    tool(tr("Add a band"), Sign::add, [this] { canvas_->add(); });
    tool(tr("Remove it"), Sign::remove, [this] { canvas_->remove(); });
    tool(tr("Turn left"), {}, [this] { canvas_->turn(-turn_step_deg); });
    tool(tr("Turn right"), {}, [this] { canvas_->turn(turn_step_deg); });
    tool(tr("Larger"), {}, [this] { canvas_->grow(grow_step); });
    tool(tr("Smaller"), {}, [this] { canvas_->grow(1 / grow_step); });
    column->addLayout(acts);
    auto* row = new FlowLayout(measures().gap(2));
    keep_ = button(tr("Keep"), "primary");
    forget_ = button(tr("Skip this photo"));
    auto* leave = button(tr("Leave it"));
    for (QPushButton* b : {keep_, forget_, leave}) row->addWidget(b);
    column->addLayout(row);
    connect(keep_, &QPushButton::clicked, this, &EyesDialog::keep);
    connect(forget_, &QPushButton::clicked, this, &EyesDialog::open_next);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(canvas_, &EyeBands::changed, this, [this] {
        keep_->setText(canvas_->bands().isEmpty() ? tr("No eyes to hide here") : tr("Keep"));
        keep_->setAccessibleName(keep_->text());
    });
    resize(measures().px(760), measures().px(620));
    open_next();
}

void EyesDialog::open_next() {
    if (++at_ >= photos_.size()) return accept();
    settled_ = false;
    where_->setText(tr("Photo %1 of %2").arg(at_ + 1).arg(photos_.size()));
    told_->setText(tr("Opening…"));
    for (QPushButton* b : tools_) b->setEnabled(false);
    keep_->setEnabled(false);
    forget_->setVisible(at_ + 1 < photos_.size());
    job_ = session_.bench().start(
        tr("Looking for eyes"), this,
        [client = client_, photo = photos_[at_]](Book& book, const Progress& progress) {
            return work::look_at_face(book, client, photo, progress);
        },
        [this, asked = at_](Result<work::FaceLook> result) {
            if (asked != at_) return;
            settled_ = true;
            if (!result.ok()) {
                if (result.error().kind != ErrorKind::cancelled) told_->setText(said(result.error().sentence()));
                return;
            }
            take(result.value());
        });
}

void EyesDialog::take(const work::FaceLook& look) {
    where_->setText(tr("Photo %1 of %2: %3, %4")
                        .arg(at_ + 1)
                        .arg(photos_.size())
                        .arg(said(word_of(look.view)), date_words(look.date)));
    told_->setText(said(look.cover.told));
    canvas_->set_photo(look.picture, look.picture_px, look.cover.bands);
    for (QPushButton* b : tools_) b->setEnabled(true);
    keep_->setEnabled(true);
    emit canvas_->changed();
    canvas_->setFocus();
}

void EyesDialog::keep() {
    if (at_ < 0 || at_ >= photos_.size()) return;
    keep_->setEnabled(false);
    any_kept_ = true;
    session_.ask(
        session_.records(), tr("Keeping the bands"), this,
        [photo = photos_[at_], bands = canvas_->bands()](Book& book, const Progress&) {
            return work::keep_bands(book, photo, bands);
        },
        [this](Done) { open_next(); }, [this] { keep_->setEnabled(true); });
}

void EyesDialog::done(int result) {
    if (job_) job_->cancel();
    if (any_kept_) emit kept();
    QDialog::done(result);
}

}  // namespace kempt::desk
