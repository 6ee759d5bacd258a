#include "desk/widgets/parts.h"

#include <QCoreApplication>
#include <QDate>
#include <QLayout>
#include <QLocale>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>

#include "desk/look/look.h"
#include "desk/widgets/focus_order.h"

namespace kempt::desk {

QLabel* text(const QString& words, const char* role, QWidget* parent) {
    auto* label = new QLabel(words, parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    if (*role != '\0') label->setProperty("role", QString::fromLatin1(role));
    return label;
}

QPushButton* button(const QString& words, const char* kind, std::optional<Sign> sign) {
    auto* b = new QPushButton(words);
    b->setAutoDefault(false);
    b->setAccessibleName(words);
    if (*kind != '\0') b->setProperty("kind", QString::fromLatin1(kind));
    if (sign) {
        b->setText(QLatin1Char(' ') + words);  // air between sign and words
        b->setIcon(icon_of(*sign, qstrcmp(kind, "primary") == 0));
        b->setIconSize(QSize(measures().px(18), measures().px(18)));
    }
    return b;
}

QToolButton* sign_button(Sign sign, const QString& words, const char* kind) {
    auto* b = new QToolButton;
    b->setIcon(icon_of(sign));
    b->setIconSize(QSize(measures().px(20), measures().px(20)));
    b->setToolTip(words);
    b->setAccessibleName(words);
    b->setFocusPolicy(Qt::StrongFocus);
    if (*kind != '\0') b->setProperty("kind", QString::fromLatin1(kind));
    return b;
}

QFrame* panel(const char* kind, QWidget* parent) {
    auto* frame = new QFrame(parent);
    frame->setProperty("panel", QString::fromLatin1(kind));
    return frame;
}

void set_panel_tone(QFrame* frame, const char* kind) {
    frame->setProperty("panel", QString::fromLatin1(kind));
    frame->style()->unpolish(frame);
    frame->style()->polish(frame);
}

QBoxLayout* column_in(QWidget* widget, double margin_units, double spacing_units) {
    auto* column = new QVBoxLayout(widget);
    const int margin = measures().gap(margin_units);
    column->setContentsMargins(margin, margin, margin, margin);
    column->setSpacing(measures().gap(spacing_units));
    return column;
}

QScrollArea* scroll_area(QWidget* inside) {
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    inside->setProperty("clear", true);
    area->setWidget(inside);
    return area;
}

void take_height_from_width(QWidget* widget) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    widget->setSizePolicy(policy);
}

void empty_layout(QLayout* layout) {
    tidy_focus_order_later(layout->parentWidget());
    while (QLayoutItem* item = layout->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        } else if (QLayout* inner = item->layout()) {
            empty_layout(inner);
        }
        delete item;
    }
}

QString date_words(const QDate& date) {
    //: How a date is written, in Qt's letters: 12 March 2026. Words of its own stand in quotes: d 'de' MMMM
    return QLocale().toString(date, QCoreApplication::translate("dates", "d MMMM yyyy"));
}

QString short_date_words(const QDate& date) {
    //: 12 Mar 2026
    return QLocale().toString(date, QCoreApplication::translate("dates", "d MMM yyyy"));
}

QString counted(qsizetype count, const QString& one, const QString& many) {
    return QStringLiteral("%1 %2").arg(count).arg(count == 1 ? one : many);
}

QString beginning(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

}  // namespace kempt::desk
