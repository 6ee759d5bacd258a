#include "desk/plan/findings_panel.h"

#include <QHBoxLayout>
#include <QHash>
#include <QPushButton>
#include <QStyle>
#include <algorithm>

#include "desk/look/look.h"
#include "desk/plan/plan_words.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"
#include "work/plan_words.h"

namespace kempt::desk {
namespace {

constexpr int notes_shown = 2;  // more of them are folded away: they change nothing that is done today

const char* tone_of(care::RuleLevel level) {
    return level == care::RuleLevel::stop ? "worse" : level == care::RuleLevel::caution ? "caution" : "plain";
}

}  // namespace

QString place_words(const care::Finding& finding) {
    QStringList services;
    QHash<QString, QStringList> parts;  // of each service, in the rules' order
    for (const care::Place& place : finding.where) {
        const QString service = place.service ? said(word_of(*place.service)) : QString();
        if (!services.contains(service)) services.append(service);
        QStringList words;
        if (place.part) words.append(said(word_of(*place.part)));
        if (!place.section.empty()) words.append(said(place.section));
        if (!words.isEmpty()) parts[service].append(words.join(QLatin1Char(' ')));
    }
    QStringList all;
    for (const QString& service : services) {
        const QString where = parts.value(service).join(QStringLiteral(", "));
        if (service.isEmpty() || where.isEmpty())
            all.append(service + where);
        else
            all.append(QObject::tr("%1: %2").arg(service, where));
    }
    all.removeAll(QString());
    return all.join(QStringLiteral("; "));
}

FindingsPanel::FindingsPanel(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "surface");
    auto* column = column_in(this, 4, 2);
    column->addWidget(text(tr("What speaks against it"), "heading"));
    sum_ = text({});
    column->addWidget(sum_);
    boxes_ = new QVBoxLayout;
    boxes_->setSpacing(measures().gap(2));
    column->addLayout(boxes_);
    more_ = button({}, "quiet");
    column->addWidget(more_, 0, Qt::AlignLeft);
    notes_ = new QWidget;
    note_boxes_ = column_in(notes_, 0, 2);
    column->addWidget(notes_);
    more_->hide();
    notes_->hide();
    connect(more_, &QPushButton::clicked, this, [this] {
        notes_open_ = !notes_open_;
        notes_->setVisible(notes_open_);
        more_->setText(notes_open_ ? tr("Fewer notes") : more_->property("closed").toString());
        more_->setAccessibleName(more_->text());
    });
}

QWidget* FindingsPanel::finding_box(const care::Finding& finding, bool planned) {
    auto* box = panel(tone_of(finding.level));
    auto* column = column_in(box, 3, 1);
    const QString level = said(work::word_of_level(finding.level));
    const QString places = place_words(finding);
    auto* head = text(places.isEmpty() ? level : level + QStringLiteral("\u00a0\u00a0·  ") + places, "strong");
    if (finding.level != care::RuleLevel::note) head->setProperty("tone", QString::fromLatin1(tone_of(finding.level)));
    column->addWidget(head);
    column->addWidget(text(said(finding.reason)));
    if (!finding.remedy.empty()) column->addWidget(text(said(finding.remedy), "strong"));
    if (finding.wait_until)
        column->addWidget(
            text(tr("The wait is over on %1.").arg(date_words(work::date_of(*finding.wait_until))), "strong"));
    if (finding.choose && !planned) {
        auto* choose = button(tr("Plan %1").arg(said(word_of(*finding.choose))));
        connect(choose, &QPushButton::clicked, this, [this, kind = *finding.choose] { emit kind_chosen(kind); });
        column->addWidget(choose, 0, Qt::AlignLeft);
    }
    column->addWidget(text(tr("Source: %1").arg(said(finding.source)), "caption"));
    box->setAccessibleName(level + QStringLiteral(": ") + said(care::sentence_of(finding)));
    return box;
}

void FindingsPanel::show_plan(const work::CarePlan& plan) {
    empty_layout(boxes_);
    empty_layout(note_boxes_);
    rules_.clear();
    int stops = 0, cautions = 0, notes = 0;
    std::vector<const care::Finding*> held;
    for (const care::Finding& finding : plan.advice.findings)
        if (finding.sort == care::FindingSort::speaks_against) held.push_back(&finding);
    const auto all_notes = std::count_if(held.begin(), held.end(),
                                         [](const care::Finding* one) { return one->level == care::RuleLevel::note; });
    for (const care::Finding* finding : held) {
        rules_.append(QString::fromStdString(finding->rule));
        if (finding->level == care::RuleLevel::stop) ++stops;
        if (finding->level == care::RuleLevel::caution) ++cautions;
        const bool note = finding->level == care::RuleLevel::note;
        const bool folded = note && all_notes > notes_shown + 1 && notes >= notes_shown;
        const bool planned = finding->choose &&
                             std::any_of(plan.services.begin(), plan.services.end(), [&](const work::ServicePlan& one) {
                                 return one.service.kind == *finding->choose;
                             });
        (folded ? note_boxes_ : boxes_)->addWidget(finding_box(*finding, planned));
        if (note) ++notes;
    }
    QStringList sum;
    if (stops > 0) sum.append(counted(stops, tr("stop"), tr("stops")));
    if (cautions > 0) sum.append(counted(cautions, tr("caution"), tr("cautions")));
    if (notes > 0) sum.append(counted(notes, tr("note"), tr("notes")));
    const bool open = !plan.questions.empty();
    QString words = sum.isEmpty() ? tr("On what is written down, no rule speaks against it.")
                                  : sum.join(QStringLiteral(", ")) + QLatin1Char('.');
    if (stops == 0) words += open ? tr(" What has to be checked first is still open.") : tr(" That clears nothing.");
    sum_->setText(words);
    sum_->setProperty("role", stops > 0 ? "strong" : "soft");
    sum_->style()->unpolish(sum_);
    sum_->style()->polish(sum_);
    const int folded = all_notes > notes_shown + 1 ? static_cast<int>(all_notes) - notes_shown : 0;
    more_->setVisible(folded > 0);
    notes_->setVisible(folded > 0 && notes_open_);
    const QString closed = tr("%1 more notes").arg(folded);
    more_->setProperty("closed", closed);
    more_->setText(notes_open_ ? tr("Fewer notes") : closed);
    more_->setAccessibleName(more_->text());
}

void FindingsPanel::show_error(const Error& error) {
    empty_layout(boxes_);
    empty_layout(note_boxes_);
    rules_.clear();
    more_->hide();
    notes_->hide();
    sum_->setText(tr("Nothing can be said of this plan as it stands."));
    auto* box = panel("worse");
    auto* column = column_in(box, 3, 1);
    column->addWidget(text(said(error.what)));
    column->addWidget(text(error.kept.empty() ? tr("What you entered is kept.") : said(error.kept)));
    if (!error.remedy.empty()) column->addWidget(text(said(error.remedy), "strong"));
    box->setAccessibleName(said(error.sentence()));
    boxes_->addWidget(box);
}

}  // namespace kempt::desk
