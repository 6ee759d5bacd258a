#include "desk/plan/work_panel.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "desk/look/look.h"
#include "desk/plan/entry_fields.h"
#include "desk/plan/plan_words.h"
#include "desk/plan/stretch_bar.h"
#include "desk/plan/timeline_view.h"
#include "desk/translations/said.h"
#include "desk/widgets/columns.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/focus_order.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {
namespace {

// A quarter of an hour of brushing on one part of one section, and four hours for a strand, are far beyond what
// occurs (common practice).
constexpr double most_apply = 60, most_strand = 240;

// A line for each head section that is planned, with the minutes that are known of it; sections that were halved stay
// halved.
std::vector<care::SectionMinutes> lines_for(const std::vector<std::string>& sections,
                                            const std::vector<care::SectionMinutes>& known) {
    std::vector<care::SectionMinutes> all;
    for (const std::string& one : sections) all.push_back({one, 0, 0, 0});
    if (sections.empty())
        for (const QString& one : head_sections()) all.push_back({one.toStdString(), 0, 0, 0});
    const auto line_of = [&all](const std::string& name) {
        return std::find_if(all.begin(), all.end(), [&](const care::SectionMinutes& one) { return one.name == name; });
    };
    for (const care::SectionMinutes& one : known)
        if (line_of(one.name) == all.end() && one.name.find(", ") != std::string::npos) return known;
    for (const care::SectionMinutes& one : known)
        if (const auto line = line_of(one.name); line != all.end()) *line = one;
    return all;
}

}  // namespace

WorkPanel::WorkPanel(const work::DraftItem& item, QWidget* parent)
    : QFrame(parent), kind_(item.item.service.kind), in_rounds_(item.in_rounds) {
    setProperty("panel", "surface");
    build(item);
}

void WorkPanel::build(const work::DraftItem& item) {
    const care::Setting setting = item.item.setting.value_or(care::Setting{});
    auto* column = column_in(this, 4, 2);
    const QString kind = said(word_of(kind_));
    column->addWidget(text(tr("Order of work: %1").arg(kind), "heading"));
    stretches_ = new StretchBar;
    column->addWidget(stretches_);
    unsure_ = text({}, "caption");
    column->addWidget(unsure_);
    // What is entered, and beside it what comes of it.
    auto* sides = new Columns(measures().px(1000));
    sides->set_shares(4, 5);
    sides->left()->setSpacing(measures().gap(2));
    sides->right()->setSpacing(measures().gap(2));
    add_entries(sides->left(), setting);
    sides->left()->addStretch();
    say_ = text({});
    sides->right()->addWidget(say_);
    order_ = new QVBoxLayout;
    order_->setSpacing(measures().gap(2));
    sides->right()->addLayout(order_);
    sides->right()->addStretch();
    column->addWidget(sides);
    sections_ = item.item.service.sections;
    fill_table(lines_for(sections_, setting.sections));
}

void WorkPanel::add_entries(QBoxLayout* column, const care::Setting& setting) {
    const QString of = tr(" of %1").arg(said(word_of(kind_)));
    const auto strand = [&](const QString& words, const QString& nothing, double value) {
        auto* field = new NumberField(words + of, {most_strand, 1, 1, tr("min"), nothing, false});
        field->set_number(value > 0 ? std::optional(value) : std::nullopt);
        connect(field, &NumberField::entered, this, &WorkPanel::entered);
        return field;
    };
    auto* row = new FlowLayout(measures().gap(3));
    strand_ = strand(tr("Strand test, mid-shaft"), tr("not entered"), setting.strand_minutes);
    connect(strand_, &NumberField::entered, this, [this] { hint_.clear(); });
    roots_ = strand(tr("Strand test, roots"), tr("half of it"), setting.roots_minutes.value_or(0));
    roots_->setToolTip(
        tr("Not tested: half of the mid-shaft's, since the scalp's heat about doubles the speed (common "
           "practice, no source)."));
    ends_ = strand(tr("Strand test, ends"), tr("by porosity"), setting.ends_minutes.value_or(0));
    ends_->setToolTip(tr("Not tested: the mid-shaft's, shorter where the ends are graded porous (own assumption)."));
    row->addWidget(labelled(tr("Strand test: mid-shaft (up to %1)").arg(most_strand), strand_));
    row->addWidget(labelled(tr("roots, if tested"), roots_));
    row->addWidget(labelled(tr("ends, if tested"), ends_));
    hands_ = new ChoiceRow(tr("People who apply it") + of, {tr("1"), tr("2"), tr("3")});
    hands_->set_chosen(std::clamp(setting.hands, 1, 3) - 1);
    connect(hands_, &ChoiceRow::picked, this, &WorkPanel::entered);
    row->addWidget(labelled(tr("People who apply it"), hands_));
    column->addLayout(row);
    table_box_ = new QWidget;
    auto* inside = column_in(table_box_, 0, 1);
    inside->addWidget(
        text(tr("Minutes to apply it, by head section (0 to %1; nothing: not done there)").arg(most_apply), "caption"));
    table_ = new QGridLayout;
    table_->setHorizontalSpacing(measures().gap(2));
    table_->setVerticalSpacing(measures().gap(1));
    inside->addLayout(table_);
    alike_ = button(tr("All sections as the first"), "quiet");
    alike_->setAccessibleName(tr("Minutes of every section as those of the first") + of);
    inside->addWidget(alike_, 0, Qt::AlignLeft);
    column->addWidget(table_box_);
    connect(alike_, &QPushButton::clicked, this, [this] {
        if (lines_.isEmpty()) return;
        const Line first = lines_.first();
        for (const Line& line : lines_) {
            line.roots->set_number(first.roots->number());
            line.mid->set_number(first.mid->number());
            line.ends->set_number(first.ends->number());
        }
        emit entered();
    });
}

void WorkPanel::fill_table(const std::vector<care::SectionMinutes>& lines) {
    empty_layout(table_);
    lines_.clear();
    part_heads_.clear();
    const QStringList parts{tr("roots"), tr("mid-shaft"), tr("ends")};
    for (int i = 0; i < 3; ++i) {
        auto* head = text(parts[i], "caption");
        head->setWordWrap(false);
        part_heads_.append(head);
        table_->addWidget(head, 0, i + 1);
    }
    for (const care::SectionMinutes& line : lines) {
        Line made;
        made.section = line.name;
        const QString name = said(line.name);
        const int row = static_cast<int>(lines_.size()) + 1;
        made.label = text(name);
        table_->addWidget(made.label, row, 0);
        const auto field = [&](int column, double minutes) {
            auto* box = new NumberField(
                tr("Minutes to apply %1 to the %2 of the %3").arg(said(word_of(kind_)), parts[column - 1], name),
                {most_apply, 1, 0.5, tr("min"), tr("none"), false});
            box->setMinimumWidth(measures().px(124));
            box->set_number(minutes > 0 ? std::optional(minutes) : std::nullopt);
            connect(box, &NumberField::entered, this, &WorkPanel::entered);
            table_->addWidget(box, row, column);
            return box;
        };
        made.roots = field(1, line.roots);
        made.mid = field(2, line.mid_shaft);
        made.ends = field(3, line.ends);
        lines_.append(made);
    }
    table_->setColumnStretch(4, 1);  // the fields stay beside their section
    alike_->setVisible(lines_.size() > 1);
    tidy_focus_order_later(this);
}

void WorkPanel::set_sections(const std::vector<std::string>& sections) {
    if (sections == sections_) return;
    sections_ = sections;
    std::vector<care::SectionMinutes> known = lines();
    std::erase_if(known, [](const care::SectionMinutes& one) { return one.name.find(", ") != std::string::npos; });
    fill_table(lines_for(sections, known));
}

std::vector<care::SectionMinutes> WorkPanel::lines() const {
    std::vector<care::SectionMinutes> all;
    for (const Line& line : lines_)
        all.push_back({line.section, line.roots->number().value_or(0), line.mid->number().value_or(0),
                       line.ends->number().value_or(0)});
    return all;
}

care::Setting WorkPanel::setting() const {
    care::Setting setting;
    setting.strand_minutes = strand_->number().value_or(0);
    setting.roots_minutes = roots_->number();
    setting.ends_minutes = ends_->number();
    setting.hands = hands_->chosen() + 1;
    // Sections in which nothing is applied are kept out of the calculation; without any the plan asks for them.
    for (const care::SectionMinutes& line : lines())
        if (line.roots + line.mid_shaft + line.ends > 0) setting.sections.push_back(line);
    return setting;
}

NumberField* WorkPanel::minutes(const QString& section, care::Part part) const {
    for (const Line& line : lines_)
        if (line.section == section.toStdString())
            return part == care::Part::roots ? line.roots : part == care::Part::mid_shaft ? line.mid : line.ends;
    return nullptr;
}

// Only the parts that the product is put on have minutes.
void WorkPanel::show_parts(const care::Coverage& coverage) {
    const auto covered = [&](care::Part part) {
        return coverage.put_on.empty() || std::any_of(coverage.put_on.begin(), coverage.put_on.end(),
                                                      [&](const care::Stretch& one) { return one.part == part; });
    };
    const bool on[] = {covered(care::Part::roots), covered(care::Part::mid_shaft), covered(care::Part::ends)};
    for (int i = 0; i < 3; ++i) part_heads_[i]->setVisible(on[i]);
    for (const Line& line : lines_) {
        line.roots->setVisible(on[0]);
        line.mid->setVisible(on[1]);
        line.ends->setVisible(on[2]);
    }
    roots_->parentWidget()->setVisible(on[0]);
    ends_->parentWidget()->setVisible(on[2]);
}

}  // namespace kempt::desk
