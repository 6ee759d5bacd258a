#include "desk/camera/camera_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QShortcut>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>

#include "desk/camera/guide_view.h"
#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/translations/said.h"
#include "desk/widgets/numbered_views.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"
#include "work/keep_records.h"
#include "work/open_book.h"

namespace kempt::desk {
namespace {

// A camera that has not given its photo by then gives none; those tried take less than two seconds (own choice).
constexpr int await_limit_ms = 5000;

}  // namespace

CameraPage::CameraPage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* row = new QHBoxLayout(this);
    const int margin = measures().gap(4);
    row->setContentsMargins(margin, measures().gap(3), margin, margin);
    row->setSpacing(measures().gap(4));
    picture_ = new GuideView;
    none_ = build_none();
    row->addWidget(picture_, 1);
    row->addWidget(none_, 1);
    row->addWidget(build_side());
    none_->hide();
    await_limit_.setSingleShot(true);
    await_limit_.setInterval(await_limit_ms);
    connect(&await_limit_, &QTimer::timeout, this, [this] {
        say(tr("The camera gave no photo. Take it again."), "worse");
        answered();
    });
}

QWidget* CameraPage::build_none() {
    auto* inside = new QWidget;
    auto* outer = column_in(inside, 0, 2);
    auto* box = panel("caution");
    auto* column = column_in(box, 4, 2);
    none_words_ = text({}, "lead");
    column->addWidget(none_words_);
    column->addWidget(
        text(tr("Plug a camera in, see that no other program uses it, and look again. A phone takes better "
                "photos than most of them: drop its photos on this window, or let them come into the "
                "watched folder (settings)."),
             "strong"));
    auto* again = button(tr("Look again"));
    connect(again, &QPushButton::clicked, this, &CameraPage::look_for_cameras);
    column->addWidget(again, 0, Qt::AlignLeft);
    outer->addWidget(box);
    outer->addStretch();
    return scroll_area(inside);
}

QWidget* CameraPage::build_side() {
    auto* side = new QWidget;
    auto* column = column_in(side, 0, 3);
    title_ = text({}, "lead");
    column->addWidget(title_);
    take_ = button(tr("Take (space)"), "primary");
    take_->setAccessibleName(tr("Take a photo"));
    column->addWidget(take_);
    told_ = new QVBoxLayout;
    told_->setSpacing(measures().gap(1));
    column->addLayout(told_);
    column->addWidget(text(tr("View"), "heading"));
    views_ = new ChoiceRow(tr("View to take"), numbered_views());
    column->addWidget(views_);
    guide_words_ = text({}, "caption");
    column->addWidget(guide_words_);
    strength_words_ = text(tr("Strength of the guide"), "caption");
    column->addWidget(strength_words_);
    strength_ = new QSlider(Qt::Horizontal);
    strength_->setRange(0, 100);
    strength_->setValue(static_cast<int>(picture_->strength() * 100));
    strength_->setAccessibleName(tr("Strength of the last visit’s photo over the camera’s picture"));
    strength_words_->setBuddy(strength_);
    column->addWidget(strength_);
    cameras_ = new QComboBox;
    cameras_->setAccessibleName(tr("Camera"));
    column->addWidget(cameras_);
    column->addStretch();
    QScrollArea* area = scroll_area(side);
    area->setFixedWidth(static_cast<int>(300 * measures().space));

    connect(take_, &QPushButton::clicked, this, &CameraPage::ask_for_photo);
    connect(views_, &ChoiceRow::picked, this, [this](int index) { pick_view(all_views()[index]); });
    connect(strength_, &QSlider::valueChanged, this, [this](int v) { picture_->set_strength(v / 100.0); });
    connect(cameras_, &QComboBox::currentIndexChanged, this, [this](int index) {
        if (source_ && index >= 0) source_->start(index);
    });
    const auto on_key = [this](int pressed, auto act) {
        auto* shortcut = new QShortcut(QKeySequence(pressed), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, act);
    };
    on_key(Qt::Key_Space, [this] {
        if (take_->isEnabled()) take_->click();
    });
    for (int i = 0; i < all_views().size(); ++i) on_key(Qt::Key_1 + i, [this, i] { pick_view(all_views()[i]); });
    return area;
}

void CameraPage::show_place(const Place& place) {
    place_ = place;
    data_ = {};  // nothing of the client before: not her guide, not her day
    ++guide_turn_;
    picture_->show_guide({});
    empty_layout(told_);
    look_for_cameras();
    load(true);
}

void CameraPage::put_away(std::function<void()> then) {
    if (awaiting_) return leaving_.append(std::move(then));
    if (source_) source_->stop();  // its light goes out with the page
    source_.reset();
    then();
}

// ---- cameras -------------------------------------------------------------------------------------------------------

void CameraPage::look_for_cameras() {
    if (awaiting_) {  // unplugged between the press and the photo
        say(tr("The camera gave no photo. Take it again."), "worse");
        answered();
    }
    source_ = make_camera();
    connect(source_.get(), &CameraSource::frame, picture_, &GuideView::show_frame);
    connect(source_.get(), &CameraSource::took, this, &CameraPage::took);
    connect(source_.get(), &CameraSource::cameras_changed, this, &CameraPage::look_for_cameras, Qt::QueuedConnection);
    connect(source_.get(), &CameraSource::trouble, this, [this](const QString& reason) {
        say(tr("The camera: %1").arg(reason), "worse");
        answered();
    });
    const QStringList names = source_->names();
    picture_->show_frame({});
    {
        const QSignalBlocker quiet(cameras_);
        cameras_->clear();
        cameras_->addItems(names);
    }
    cameras_->setVisible(names.size() > 1);
    none_->setVisible(names.isEmpty());
    picture_->setVisible(!names.isEmpty());
    strength_->setVisible(!names.isEmpty());
    strength_words_->setVisible(!names.isEmpty());
    take_->setEnabled(!names.isEmpty());
    take_->setToolTip(names.isEmpty() ? tr("There is no camera") : QString());
    none_words_->setText(tr("No camera was found on this computer."));
    if (names.isEmpty()) return;
    source_->start(0);
    take_->setFocus();
    if (data_.visit.id == place_.visit) show_guide();  // plugged in while the page was open
}

// ---- the visit -----------------------------------------------------------------------------------------------------

void CameraPage::load(bool choose_view) {
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading the visit"), this,
        [id = place_.visit](Book& book, const Progress& progress) { return camera_data(book, id, progress); },
        [this, choose_view](const CameraData& found) {
            settled_ = true;
            if (found.visit.id == place_.visit) take(found, choose_view);
        },
        [this] { settled_ = true; });
}

void CameraPage::take(const CameraData& found, bool fresh) {
    data_ = found;
    emit trail_changed({{found.client.name, {Where::client, found.client.id}},
                        {date_words(found.visit.date), {Where::visit, found.client.id, found.visit.id}},
                        {tr("Camera"), place_}});
    if (!fresh && picked_since_) return choose_view(view_);  // she is ahead of the proposal
    const auto next = next_view(data_, fresh ? std::nullopt : std::optional(view_));
    choose_view(next.value_or(fresh ? place_.view : view_));
    if (!next && !fresh) say(tr("Every view has its two shots."), "better");
}

void CameraPage::pick_view(View view) {
    picked_since_ = true;
    choose_view(view);
}

void CameraPage::choose_view(View view) {
    view_ = view;
    views_->set_chosen(static_cast<int>(all_views().indexOf(view)));
    const int shots = data_.shots.value(view);
    title_->setText(tr("%1, shot %2").arg(beginning(said(word_of(view)))).arg(shots + 1));
    show_guide();
}

void CameraPage::show_guide() {
    picture_->show_guide({});
    const int turn = ++guide_turn_;
    const auto guide = data_.guides.constFind(view_);
    if (guide == data_.guides.constEnd()) {
        guide_words_->setText(tr("There is no earlier photo of this view to guide by."));
        return;
    }
    if (!take_->isEnabled()) return guide_words_->setText({});  // no camera: nothing to lie over
    guide_words_->setText(
        tr("The photo of %1 lies over the picture: stand so that both agree.").arg(date_words(guide->day)));
    ++looking_;
    session_.bench().start(
        tr("Opening the guide"), this,
        [photo = guide->photo, open = session_.open_photo()](Book& book,
                                                             const Progress& progress) -> Result<OpenedPhoto> {
            const auto bytes = work::photo_bytes(book, photo);
            if (!bytes.ok()) return bytes.error();
            return open(bytes.value(), 1.0, progress);
        },
        [this, turn](Result<OpenedPhoto> opened) {
            --looking_;
            if (!opened.ok()) return session_.tell(opened.error());
            // As large as the page at most.
            if (turn == guide_turn_) picture_->show_guide(opened->picture.level_for(0.5));
        });
}

}  // namespace kempt::desk
