#include "desk/photo/hint_box.h"

#include <QLabel>
#include <QPushButton>

#include "desk/look/look.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

void show_button(QPushButton* button, const QString& words) {
    button->setVisible(!words.isEmpty());
    button->setText(words);
    button->setAccessibleName(words);
}

}  // namespace

HintBox::HintBox(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "plain");
    auto* column = column_in(this, 2.5, 1);
    words_ = text({});
    column->addWidget(words_);
    auto* row = new FlowLayout(measures().gap(1));
    column->addLayout(row);
    sheet_ = button(tr("Measure the whole sheet"), "primary");
    clear_ = button(tr("Remove"), "quiet");
    row->addWidget(sheet_);
    row->addWidget(clear_);
    connect(sheet_, &QPushButton::clicked, this, &HintBox::sheet_asked);
    connect(clear_, &QPushButton::clicked, this, &HintBox::clear_asked);
}

void HintBox::show_tool(Tool tool, const Marks& marks) {
    words_->setText(hint_for(tool, marks));
    show_button(sheet_, sheet_words(tool, marks));
    show_button(clear_, clear_words(tool, marks));
    setAccessibleName(words_->text());
}

QString HintBox::sentence() const {
    return words_->text();
}

}  // namespace kempt::desk
