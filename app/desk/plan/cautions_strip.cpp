#include "desk/plan/cautions_strip.h"

#include <QLabel>

#include "care/rules.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {

CautionsStrip::CautionsStrip(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "caution");
    auto* column = column_in(this, 1.5, 0);
    QStringList sentences, sources;
    if (const auto& rules = care::built_in_rules(); rules.ok())
        for (const care::Caution& caution : rules->always) {
            sentences.append(QString::fromStdString(caution.text));
            sources.append(QString::fromStdString(caution.text + " " + caution.source));
        }
    words_ = sentences.join(QLatin1Char(' '));
    auto* label = text(words_, "caption");
    label->setToolTip(sources.join(QLatin1Char('\n')));
    column->addWidget(label);
    setAccessibleName(tr("Always: %1").arg(words_));
}

}  // namespace kempt::desk
