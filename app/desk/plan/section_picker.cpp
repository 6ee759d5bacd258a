#include "desk/plan/section_picker.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QLabel>

#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"
#include "domain/words.h"

namespace kempt::desk {

SectionPicker::SectionPicker(const QStringList& chosen_now, const std::function<QString(const QString&)>& name_of,
                             QWidget* parent)
    : QWidget(parent) {
    auto* inside = column_in(this, 0, 0);
    auto* where = text({}, "caption");
    inside->addWidget(where);
    auto* row = new FlowLayout(measures().gap(1));
    const auto say = [this, where] {
        where->setText(chosen().isEmpty() ? tr("Head sections: the whole head, unless some are chosen")
                                          : tr("Head sections: only those chosen"));
    };
    for (const QString& section : head_sections()) {
        auto* check = new QCheckBox(said(section));
        check->setAccessibleName(name_of(tr("Head section %1").arg(said(section))));
        check->setChecked(chosen_now.contains(section));
        checks_.insert(section, check);
        connect(check, &QCheckBox::toggled, this, [this, say] {
            say();
            emit picked();
        });
        row->addWidget(check);
    }
    say();
    inside->addLayout(row);
}

QStringList SectionPicker::chosen() const {
    QStringList list;
    for (const QString& section : head_sections())
        if (const QCheckBox* one = check(section); one && one->isChecked()) list.append(section);
    return list;
}

}  // namespace kempt::desk
