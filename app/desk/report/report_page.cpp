#include "desk/report/report_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QLocale>
#include <QScrollArea>
#include <QScrollBar>
#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/compare/compare_choices.h"
#include "desk/look/look.h"
#include "desk/report/page_view.h"
#include "desk/translations/language.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/long_words.h"
#include "desk/widgets/parts.h"
#include "domain/clock.h"
#include "report/report_pages.h"
#include "work/make_report.h"
#include "work/report_language.h"

namespace kempt::desk {
namespace {

struct Found {
    CompareChoices choices;
    std::optional<speech::Language> hers;
};

constexpr int pause_ms = 250;  // a hand that ticks several boxes is not answered at each

}  // namespace

ReportPage::ReportPage(Session& session, QWidget* parent) : Page(session, parent) {
    auto* row = new QBoxLayout(QBoxLayout::LeftToRight, this);
    row->setObjectName(QStringLiteral("report_row"));
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(choices_column());
    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, measures().gap(2), 0, 0);
    column->setSpacing(measures().gap(1));
    state_ = text({}, "caption");
    state_->setContentsMargins(measures().gap(3), 0, measures().gap(3), 0);
    view_ = new PageView;
    column->addWidget(state_);
    column->addWidget(view_, 1);
    row->addWidget(right, 1);
    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, [this] {
        if (model_old_)
            make_model();
        else
            lay_out();
    });
    connect(view_, &PageView::wanted, this, &ReportPage::paint_page);
    connect(view_, &PageView::moved, this, [this] {
        if (view_->count() > 0) state_->setText(tr("Page %1 of %2").arg(view_->current() + 1).arg(view_->count()));
    });
    connect(&session_, &Session::client_changed, this, [this](Id client) {
        if (client != place_.client) return;
        model_old_ = true;
        if (isVisible()) show_place(place_);
    });
}

QWidget* ReportPage::choices_column() {
    auto* inside = new QWidget;
    QScrollArea* area = scroll_area(inside);
    area->setAccessibleName(tr("What the report holds"));
    area->setObjectName(QStringLiteral("report_choices"));
    auto* page = new QVBoxLayout(inside);
    const int margin = measures().gap(4);
    page->setContentsMargins(margin, measures().gap(3), measures().gap(3), margin);
    page->setSpacing(measures().gap(3));
    title_ = text({}, "title");
    title_->setAlignment(Qt::AlignLeft | Qt::AlignAbsolute);  // also a name that is written from the right
    page->addWidget(title_);
    consent_box_ = panel("caution");
    auto* consent = column_in(consent_box_, 4, 2);
    consent_words_ = text({});
    agree_ = button(tr("She agrees today"));
    consent->addWidget(consent_words_);
    consent->addWidget(agree_, 0, Qt::AlignLeft);
    page->addWidget(consent_box_);
    eyes_box_ = panel("plain");
    auto* eyes = column_in(eyes_box_, 4, 2);
    eyes_words_ = text({});
    eyes_ = button(tr("Eyes in the pictures…"), "", Sign::pencil);
    eyes_->setAccessibleName(tr("Eyes in the pictures"));
    eyes->addWidget(eyes_words_);
    eyes->addWidget(eyes_, 0, Qt::AlignLeft);
    page->addWidget(eyes_box_);

    auto* acts = new FlowLayout(measures().gap(2));
    write_ = button(tr("Save the report…"), "primary", Sign::report);
    print_ = button(tr("Print…"));
    save_pictures_ = button(tr("Save its pictures…"), "", Sign::picture);
    save_table_ = button(tr("Save the readings…"));
    save_table_->setAccessibleName(tr("Save the readings as a table"));
    for (QPushButton* b : {write_, print_, save_pictures_, save_table_}) acts->addWidget(b);
    page->addLayout(acts);

    auto* choices = panel("surface");
    auto* column = column_in(choices, 4, 1);
    const auto field = [column](const QString& words, QWidget* widget) {
        auto* label = text(words, "caption");
        label->setBuddy(widget);
        widget->setAccessibleName(words);
        column->addWidget(label);
        column->addWidget(widget);
        column->addSpacing(measures().gap(1));
    };
    const auto combo = [this] {
        auto* c = new QComboBox;
        c->setMinimumContentsLength(12);
        c->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        connect(c, &QComboBox::currentIndexChanged, this, &ReportPage::choose_again);
        return c;
    };
    from_ = combo();
    to_ = combo();
    copy_ = combo();
    copy_->addItem(tr("for the client to take home"), static_cast<int>(report::Copy::client));
    copy_->addItem(tr("for the salon's own file, with every reading"), static_cast<int>(report::Copy::record));
    paper_ = combo();
    paper_->addItem(tr("A4"), static_cast<int>(report::Paper::a4));
    paper_->addItem(tr("US Letter"), static_cast<int>(report::Paper::letter));
    language_ = combo();
    language_->setToolTip(tr("Kept with the client: in it she reads the report and the words on its pictures."));
    for (const auto language : {speech::Language::english, speech::Language::spanish})
        language_->addItem(
            language == speech::Language::english ? QStringLiteral("English") : QStringLiteral("Español"),
            static_cast<int>(language));
    connect(language_, &QComboBox::activated, this, &ReportPage::keep_language);
    salon_ = new QLineEdit(QSettings().value("report/salon").toString());
    salon_->setPlaceholderText(tr("your name or your salon's"));
    const QSettings settings;
    const bool letter =
        settings.value("report/letter", QLocale::system().measurementSystem() == QLocale::ImperialUSSystem).toBool();
    paper_->setCurrentIndex(letter ? 1 : 0);
    column->addWidget(text(tr("What it compares"), "heading"));
    field(tr("Visit before"), from_);
    field(tr("Visit after"), to_);
    column->addWidget(text(tr("How it is made"), "heading"));
    field(tr("This copy is"), copy_);
    field(tr("Her language"), language_);
    field(tr("Paper"), paper_);
    field(tr("Prepared by"), salon_);
    column->addWidget(text(tr("What it tells"), "heading"));
    const auto box = [this, column](const QString& words) {
        auto* b = new QCheckBox(words);
        b->setAccessibleName(words);
        b->setChecked(true);
        column->addWidget(b);
        connect(b, &QCheckBox::toggled, this, &ReportPage::choose_again);
        return b;
    };
    pictures_ = box(tr("before and after photos"));
    using P = report::Parts;
    for (const auto& [words, part] : {std::pair<QString, bool P::*>{tr("table of readings"), &P::readings},
                                      {tr("charts"), &P::charts},
                                      {tr("the way to the targets"), &P::targets},
                                      {tr("services"), &P::services},
                                      {tr("what the hair has been through"), &P::hair},
                                      {tr("grades"), &P::grades},
                                      {tr("what is planned"), &P::plan},
                                      {tr("next dates and care at home"), &P::next},
                                      {tr("what was left out, and why"), &P::left_out}})
        parts_.append({box(words), part});
    column->addWidget(
        text(tr("Who, when, the verdicts in short, how it was measured and the cautions always stand."), "caption"));
    page->addWidget(choices);
    page->addStretch();
    connect(salon_, &QLineEdit::textChanged, this, &ReportPage::choose_again);
    connect(pictures_, &QCheckBox::toggled, this, &ReportPage::show_consent);
    connect(agree_, &QPushButton::clicked, this, &ReportPage::keep_consent);
    connect(eyes_, &QPushButton::clicked, this, &ReportPage::open_eyes);
    connect(write_, &QPushButton::clicked, this, &ReportPage::choose_file);
    connect(print_, &QPushButton::clicked, this, &ReportPage::choose_printer);
    connect(save_pictures_, &QPushButton::clicked, this, &ReportPage::choose_folder);
    connect(save_table_, &QPushButton::clicked, this, &ReportPage::choose_table);
    return area;
}

QVector<QCheckBox*> ReportPage::parts() const {
    QVector<QCheckBox*> boxes;
    for (const Part& part : parts_) boxes.append(part.box);
    return boxes;
}

bool ReportPage::settled() const {
    return settled_ && drawn_ && !pause_.isActive();
}

void ReportPage::show_place(const Place& place) {
    if (place.client != place_.client) {
        model_.reset();
        report_.reset();
        view_->set_pages(0, {595, 842});
        state_->setText(tr("Reading…"));
        model_old_ = true;
    }
    place_ = place;
    settled_ = false;
    session_.ask(
        session_.records(), tr("Reading the visits"), this,
        [client = place.client](Book& book, const Progress& progress) -> Result<Found> {
            auto choices = compare_choices(book, client, progress);
            if (!choices.ok()) return choices.error();
            const auto hers = work::report_language_of(book, client);
            if (!hers.ok()) return hers.error();
            return Found{std::move(choices).value(), hers.value()};
        },
        [this](const Found& found) {
            show_language(found.choices, found.hers);
            take(found.choices);
        },
        [this] { settled_ = true; });
}

void ReportPage::show_language(const CompareChoices& found, const std::optional<speech::Language>& hers) {
    if (found.client.id != place_.client) return;
    const QSignalBlocker block(language_);
    const auto ours = spoken() == Language::spanish ? speech::Language::spanish : speech::Language::english;
    language_->setCurrentIndex(language_->findData(static_cast<int>(hers.value_or(ours))));
}

void ReportPage::take(const CompareChoices& found) {
    if (found.client.id != place_.client) return;  // she went on to another one meanwhile
    client_ = found.client;
    title_->setText(tr("Report for %1").arg(name_within(client_.name)));
    for (QComboBox* combo : {from_, to_}) {
        const QSignalBlocker block(combo);
        const QVariant before = combo->currentData();
        combo->clear();
        combo->addItem(combo == from_ ? tr("the first that compares") : tr("the last that compares"),
                       QVariant::fromValue<Id>(0));
        for (const Visit& visit : found.visits) combo->addItem(date_words(visit.date), visit.id);
        combo->setCurrentIndex(std::max(0, combo->findData(before)));
    }
    const bool any = !found.visits.isEmpty();
    for (QPushButton* b : {write_, print_, save_pictures_, save_table_}) b->setEnabled(any);
    show_consent();
    emit trail_changed({{client_.name, {Where::client, client_.id}}, {tr("Report"), place_}});
    model_old_ = true;  // the book may hold more than when the page was left
    make_model();
}

work::ReportOptions ReportPage::options() const {
    work::ReportOptions options;
    options.client = place_.client;
    if (const Id from = from_->currentData().toLongLong(); from > 0) options.from_visit = from;
    if (const Id to = to_->currentData().toLongLong(); to > 0) options.to_visit = to;
    options.salon = salon_->text().trimmed();
    options.look.copy = static_cast<report::Copy>(copy_->currentData().toInt());
    options.look.paper = static_cast<report::Paper>(paper_->currentData().toInt());
    options.look.length = look().length();
    options.look.speech = speech::Speech(static_cast<speech::Language>(language_->currentData().toInt()));
    for (const Part& part : parts_) options.look.parts.*(part.part) = part.box->isChecked();
    options.with_pictures = pictures_->isChecked();
    options.plan_of_desk = true;
    return options;
}

// Hers from now on, whatever the windows speak.
void ReportPage::keep_language() {
    session_.ask(
        session_.records(), tr("Keeping the language of her report"), this,
        [client = place_.client, language = static_cast<speech::Language>(language_->currentData().toInt())](
            Book& book, const Progress&) { return work::keep_report_language(book, client, language); },
        [](Done) {});
}

void ReportPage::choose_again() {
    if (place_.client == 0) return;
    // Only these change what is read from the book; the rest is another way of laying out the same.
    const QObject* by = sender();
    if (by == from_ || by == to_ || by == pictures_ || by == salon_) model_old_ = true;
    pause_.start();
}

void ReportPage::make_model() {
    if (job_) job_->cancel();
    const int asked = ++asked_;
    settled_ = false;
    state_->setText(tr("Putting the report together…"));
    job_ = session_.bench().start(
        tr("Putting the report together"), this,
        [options = options(), today = Clock().today()](
            Book& book, const Progress& progress) -> Result<std::shared_ptr<const report::Model>> {
            auto model = work::report_model_of(book, options, today, progress);
            if (!model.ok()) return model.error();
            return std::make_shared<const report::Model>(std::move(model).value());
        },
        [this, asked](Result<std::shared_ptr<const report::Model>> result) {
            if (asked != asked_) return;
            job_.reset();
            settled_ = true;
            if (!result.ok()) {
                if (result.error().kind != ErrorKind::cancelled) state_->setText(said(result.error().sentence()));
                return;
            }
            model_ = result.value();
            model_old_ = false;
            show_consent();
            lay_out();
        });
}

void ReportPage::lay_out() {
    if (!model_) return;
    const int asked = ++laid_out_;
    drawn_ = false;
    session_.live().start_without_book(
        tr("Laying out the pages"), this,
        [model = model_, look = options().look](const Progress&) { return report::ReportPages::lay_out(model, look); },
        [this, asked](Result<std::shared_ptr<const report::ReportPages>> result) {
            if (asked != laid_out_) return;
            drawn_ = true;
            if (!result.ok()) return state_->setText(said(result.error().sentence()));
            report_ = result.value();
            view_->set_pages(report_->count(), report_->size_points());
            state_->setText(tr("Page %1 of %2").arg(view_->current() + 1).arg(report_->count()));
        });
}

void ReportPage::paint_page(int page, int width_px) {
    if (!report_) return;
    drawn_ = false;
    session_.live().start_latest(
        QStringLiteral("report-page"), tr("Drawing a page"), this,
        [report = report_, page, width_px](const Progress&) -> Result<QImage> {
            return report->picture(page, width_px);
        },
        [this, page, report = report_](Result<QImage> result) {
            drawn_ = true;
            if (report == report_ && result.ok()) view_->set_page(page, result.value());
        });
}

void ReportPage::show_consent() {
    consent_box_->setVisible(!client_.photo_consent && pictures_->isChecked());
    consent_words_->setText(
        tr("%1 has not agreed that photos leave this book. Ask her: without her yes the report is made "
           "without photos and says so.")
            .arg(name_within(client_.name)));
    const bool photos = model_ && !model_->photos.isEmpty() && pictures_->isChecked() && client_.photo_consent;
    eyes_box_->setVisible(photos);
    if (!photos) return;
    const bool must = !model_->to_look_at.isEmpty();
    set_panel_tone(eyes_box_, must ? "caution" : "plain");
    eyes_words_->setText(
        must ? tr("She does not want her face seen. Until you have looked at every photo, those pictures are left out.")
             : tr("Where a face was found its eyes are hidden. Faces are missed now and then: look before the photos "
                  "leave."));
}

void ReportPage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    if (!job_) return;
    job_->cancel();  // shown again, it begins anew
    job_.reset();
    ++asked_;
    settled_ = true;
    model_old_ = true;
}

void ReportPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    auto* row = findChild<QBoxLayout*>(QStringLiteral("report_row"));
    auto* choices = findChild<QScrollArea*>(QStringLiteral("report_choices"));
    if (row == nullptr || choices == nullptr) return;
    // Side by side while a page can be read beside the choices; else the choices take the upper half.
    // At least as wide as the longest choice in the language of the windows, with the bar that scrolls them.
    const int wanted = std::max(measures().px(330), choices->widget()->minimumSizeHint().width() +
                                                        choices->verticalScrollBar()->sizeHint().width());
    const bool beside = width() - wanted >= 420;
    const auto direction = beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom;
    if (row->direction() != direction) row->setDirection(direction);
    choices->setMinimumWidth(beside ? wanted : 0);
    choices->setMaximumWidth(beside ? wanted : QWIDGETSIZE_MAX);
    choices->setMaximumHeight(beside ? QWIDGETSIZE_MAX : height() / 2);
}

}  // namespace kempt::desk
