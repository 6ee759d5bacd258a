#include "desk/plan/cautions_strip.h"

#include <QHBoxLayout>
#include <QHash>
#include <QLabel>
#include <QPushButton>

#include "care/rules.h"
#include "desk/look/look.h"
#include "desk/translations/said.h"
#include "desk/widgets/parts.h"

namespace kempt::desk {
namespace {

constexpr double most_of_page = 0.12;  // of its height: what is planned needs the rest

}  // namespace

QString brief_caution(const QString& id) {
    static const QHash<QString, QString> all{
        {"professional-use", QObject::tr("professionals only")},
        {"makers-directions", QObject::tr("maker's directions come first")},
        {"strand-and-patch", QObject::tr("strand test and patch test")},
        {"stop-at-burning", QObject::tr("burning, stinging, itching: rinse off")},
        {"local-rules", QObject::tr("law and licence come first")},
        {"see-a-doctor", QObject::tr("disease, sudden or patchy loss, pain, scars: a doctor")},
        {"never-a-clearance", QObject::tr("no finding clears nothing")}};
    return all.value(id);
}

CautionsStrip::CautionsStrip(QWidget* parent) : QFrame(parent) {
    setProperty("panel", "caution");
    auto* row = new QHBoxLayout(this);
    const int margin = measures().gap(1.5);
    row->setContentsMargins(2 * margin, margin, margin, margin);
    QStringList sentences, briefs, sources;
    if (const auto& rules = care::built_in_rules(); rules.ok())
        for (const care::Caution& caution : rules->always) {
            const QString sentence = said(caution.text);
            const QString brief = brief_caution(QString::fromStdString(caution.id));
            sentences.append(sentence);
            briefs.append(brief.isEmpty() ? sentence : brief);
            sources.append(sentence + QLatin1Char(' ') + said(caution.source));
        }
    full_ = sentences.join(QLatin1Char(' '));
    brief_ = beginning(briefs.join(QStringLiteral("\u00a0\u00a0·  ")));
    label_ = text({}, "caption");
    label_->setToolTip(sources.join(QLatin1Char('\n')));
    press_ = button(tr("In full"), "quiet");
    press_->setAccessibleName(tr("Spell the cautions out"));
    row->addWidget(label_, 1);
    row->addWidget(press_);
    setAccessibleName(tr("Always: %1").arg(full_));
    connect(press_, &QPushButton::clicked, this, [this] {
        spelled_out_ = !spelled_out_;
        press_->setText(spelled_out_ ? tr("In brief") : tr("In full"));
        show_words();
    });
    show_words();
}

void CautionsStrip::fit(int width, int page_height) {
    const QFontMetrics metrics(label_->font());
    const QRect needed =
        metrics.boundingRect(0, 0, std::max(100, width - measures().gap(8)), 10000, Qt::TextWordWrap, full_);
    const bool small = needed.height() > page_height * most_of_page;
    if (small == small_) return;
    small_ = small;
    show_words();
}

QString CautionsStrip::words() const {
    return label_->text();
}

void CautionsStrip::show_words() {
    label_->setText(small_ && !spelled_out_ ? brief_ : full_);
    press_->setVisible(small_);
}

}  // namespace kempt::desk
