#include "desk/settings/choice_of.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QRadioButton>

#include "desk/look/look.h"
#include "desk/widgets/flow_layout.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

void add_choice(QBoxLayout* column, const QString& caption, const QStringList& words, int chosen,
                std::function<void(int)> choose) {
    column->addWidget(text(caption, "strong"));
    auto* row = new FlowLayout(measures().gap(3));
    auto* group = new QButtonGroup(row);
    for (int i = 0; i < words.size(); ++i) {
        auto* radio = new QRadioButton(words[i]);
        radio->setAccessibleName(caption + QStringLiteral(": ") + words[i]);
        radio->setChecked(i == chosen);
        group->addButton(radio);
        row->addWidget(radio);
        QObject::connect(radio, &QRadioButton::clicked, radio, [choose, i] { choose(i); });
    }
    column->addLayout(row);
}

}  // namespace kempt::desk
