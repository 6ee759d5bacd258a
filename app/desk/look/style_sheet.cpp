#include "desk/look/style_sheet.h"

#include <QHash>
#include <algorithm>

namespace kempt::desk {
namespace {

// @name in the templates below stands for a colour or a size.
QString filled(QString text, const QHash<QString, QString>& words) {
    QStringList names = words.keys();
    std::sort(names.begin(), names.end(), [](const QString& a, const QString& b) { return a.size() > b.size(); });
    for (const QString& name : names) text.replace("@" + name, words.value(name));
    return text;
}

const char* const words_part = R"(
QToolTip { background: @ink; color: @ground; border: none; padding: @gap1px; }
QMainWindow, QDialog, QWidget[page="true"] { background: @ground; }
QLabel { background: transparent; border: none; }
QLabel[role="title"] { font-family: "DejaVu Serif"; font-size: @titlepx; }
QLabel[role="heading"] { font-family: "DejaVu Serif"; font-size: @headingpx; }
QLabel[role="lead"] { font-size: @leadpx; font-weight: bold; }
QLabel[role="strong"] { font-weight: bold; }
QLabel[role="caption"] { font-size: @captionpx; color: @ink_soft; }
QLabel[role="figure"] { font-family: "DejaVu Serif"; font-size: @figurepx; }
QLabel[role="soft"] { color: @ink_soft; }
QLabel[tone="better"] { color: @better; }
QLabel[tone="worse"] { color: @worse; }
QLabel[tone="caution"] { color: @caution; }
QFrame[panel="surface"] { background: @surface; border: 1px solid @line; border-radius: @radiuspx; }
QFrame[panel="sunken"] { background: @sunken; border: none; border-radius: @radiuspx; }
QFrame[panel="side"] { background: @sunken; border: none; }
QFrame[panel="bar"] { background: @surface; border: none; border-bottom: 1px solid @line; }
QFrame[panel="better"] { background: @better_wash; border: none; border-left: 4px solid @better; border-radius: 3px; }
QFrame[panel="worse"] { background: @worse_wash; border: none; border-left: 4px solid @worse; border-radius: 3px; }
QFrame[panel="caution"] { background: @caution_wash; border: none; border-left: 4px solid @caution; border-radius: 3px; }
QFrame[panel="plain"] { background: @sunken; border: none; border-left: 4px solid @outline; border-radius: 3px; }
)";

const char* const press_part = R"(
QPushButton, QToolButton { background: @raised; border: 1px solid @outline; border-radius: @radiuspx;
  padding: @gap1px @gap3px; min-height: @targetpx; font-size: @bodypx; }
QToolButton { padding: @gap1px; min-width: @targetpx; }
QPushButton:hover, QToolButton:hover { background: @raised_over; }
QPushButton:pressed, QToolButton:pressed, QToolButton:checked, QPushButton:checked { background: @accent_wash;
  border-color: @accent; color: @accent; }
QPushButton:disabled, QToolButton:disabled { color: @outline; border-color: @line; background: transparent; }
QPushButton[kind="primary"] { background: @accent; color: @on_accent; border-color: @accent; font-weight: bold; }
QPushButton[kind="primary"]:hover { background: @accent_over; }
QPushButton[kind="primary"]:disabled { background: @sunken; color: @ink_soft; border-color: @line; }
QPushButton[kind="quiet"], QToolButton[kind="quiet"] { background: transparent; border-color: transparent; color: @accent; }
QPushButton[kind="quiet"]:hover, QToolButton[kind="quiet"]:hover { background: @accent_wash; }
QPushButton[kind="trail"] { background: transparent; border: 2px solid transparent; color: @accent; padding: 0;
  text-align: left; }
QPushButton[kind="trail"]:hover { background: @accent_wash; }
QToolButton[kind="quiet"]:checked, QToolButton[kind="quiet"]:pressed { background: @accent_wash; border: 1px solid @accent; }
QToolButton[kind="quiet"]:disabled, QPushButton[kind="quiet"]:disabled { color: @outline; }
QPushButton:focus, QToolButton:focus, QPushButton[kind="primary"]:focus, QPushButton[kind="quiet"]:focus,
QPushButton[kind="trail"]:focus, QToolButton[kind="quiet"]:focus { border: 2px solid @focus; }
QToolButton::menu-indicator, QPushButton::menu-indicator { image: none; width: 0; }
QCheckBox, QRadioButton { spacing: @gap2px; min-height: @targetpx; padding: 0 @gap1px; border: 2px solid transparent;
  border-radius: @radiuspx; background: transparent; }
QCheckBox:focus, QRadioButton:focus { border-color: @focus; }
QCheckBox::indicator, QRadioButton::indicator { width: @boxpx; height: @boxpx; border: 1px solid @outline;
  background: @raised; }
QCheckBox::indicator { border-radius: 4px; }
QRadioButton::indicator { border-radius: @halfboxpx; }
QCheckBox::indicator:checked { background: @accent; border: 1px solid @accent; image: url(:/desk/@tick); }
QRadioButton::indicator:checked { background: @accent; border: 1px solid @accent; image: url(:/desk/@dot); }
)";

const char* const field_part = R"(
QLineEdit, QPlainTextEdit, QTextEdit, QSpinBox, QDoubleSpinBox, QDateEdit, QComboBox { background: @raised;
  border: 1px solid @outline; border-radius: @radiuspx; padding: @gap1px @gap2px; selection-background-color: @accent;
  selection-color: @on_accent; font-size: @bodypx; }
QLineEdit, QSpinBox, QDoubleSpinBox, QDateEdit, QComboBox { min-height: @targetpx; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QSpinBox:focus, QDoubleSpinBox:focus, QDateEdit:focus,
QComboBox:focus { border: 2px solid @focus; }
QLineEdit:disabled, QComboBox:disabled, QSpinBox:disabled, QDoubleSpinBox:disabled { color: @outline; border-color: @line; }
QComboBox::drop-down, QDateEdit::drop-down { border: none; width: @arrowpx; }
QComboBox::down-arrow, QDateEdit::down-arrow { image: url(:/desk/@down); width: @boxpx; height: @boxpx; }
QSpinBox::up-button, QDoubleSpinBox::up-button, QSpinBox::down-button, QDoubleSpinBox::down-button { border: none;
  background: transparent; width: @arrowpx; }
QSpinBox::up-arrow, QDoubleSpinBox::up-arrow { image: url(:/desk/@up); width: @smallpx; height: @smallpx; }
QSpinBox::down-arrow, QDoubleSpinBox::down-arrow { image: url(:/desk/@down); width: @smallpx; height: @smallpx; }
QComboBox QAbstractItemView { background: @raised; border: 1px solid @outline; selection-background-color: @accent_wash;
  selection-color: @ink; outline: none; }
QComboBox QAbstractItemView::item { min-height: @targetpx; }
QMenu { background: @raised; border: 1px solid @outline; padding: @gap1px; }
QMenu::item { padding: @gap1px @gap4px; min-height: @targetpx; border-radius: @radiuspx; }
QMenu::item:selected { background: @accent_wash; }
QMenu::item:disabled { color: @outline; }
QListView, QTreeView, QTableView { background: transparent; border: 2px solid transparent; border-radius: @radiuspx;
  outline: none; }
QListView:focus, QTreeView:focus, QTableView:focus { border-color: @focus; }
QListView::item { padding: @gap1px @gap2px; border-radius: @radiuspx; color: @ink; }
QListView::item:hover { background: @raised_over; }
QListView::item:selected { background: @accent_wash; color: @ink; }
QCalendarWidget QWidget { background: @raised; alternate-background-color: @sunken; }
QCalendarWidget QToolButton { min-height: 24px; min-width: 24px; border: none; }
QCalendarWidget QAbstractItemView { selection-background-color: @accent; selection-color: @on_accent; }
QHeaderView::section { background: @surface; border: none; border-bottom: 1px solid @line; padding: @gap1px @gap2px;
  color: @ink_soft; }
QScrollArea { background: transparent; border: none; }
QScrollArea > QWidget > QWidget[clear="true"] { background: transparent; }
QScrollBar:vertical { background: transparent; width: @scrollpx; margin: 0; }
QScrollBar:horizontal { background: transparent; height: @scrollpx; margin: 0; }
QScrollBar::handle { background: @outline; border-radius: 4px; margin: 3px; }
QScrollBar::handle:vertical { min-height: 36px; }
QScrollBar::handle:horizontal { min-width: 36px; }
QScrollBar::handle:hover { background: @ink_soft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QSlider { min-height: @targetpx; border: 2px solid transparent; border-radius: @radiuspx; }
QSlider:focus { border-color: @focus; }
QSlider::groove:horizontal { height: 6px; border-radius: 3px; background: @line; }
QSlider::sub-page:horizontal { height: 6px; border-radius: 3px; background: @accent; }
QSlider::handle:horizontal { width: @boxpx; margin: -@halfboxpx 0; border-radius: @halfboxpx; background: @raised;
  border: 2px solid @accent; }
QProgressBar { background: @line; border: none; border-radius: 3px; max-height: 6px; min-height: 6px; }
QProgressBar::chunk { background: @accent; border-radius: 3px; }
QSplitter::handle { background: @line; }
)";

}  // namespace

QString style_sheet(const Colours& c, const Measures& m) {
    const auto px = [](double v) { return QString::number(static_cast<int>(v)); };
    const QString tone = c.dark ? "dark" : "light";
    const QHash<QString, QString> words{{"ground", c.ground.name()},
                                        {"surface", c.surface.name()},
                                        {"sunken", c.sunken.name()},
                                        {"raised", c.raised.name()},
                                        {"raised_over", c.raised_over.name()},
                                        {"line", c.line.name()},
                                        {"outline", c.outline.name()},
                                        {"ink", c.ink.name()},
                                        {"ink_soft", c.ink_soft.name()},
                                        {"accent", c.accent.name()},
                                        {"accent_over", c.accent_over.name()},
                                        {"on_accent", c.on_accent.name()},
                                        {"accent_wash", c.accent_wash.name()},
                                        {"focus", c.focus.name()},
                                        {"better", c.better.name()},
                                        {"worse", c.worse.name()},
                                        {"caution", c.caution.name()},
                                        {"better_wash", c.better_wash.name()},
                                        {"worse_wash", c.worse_wash.name()},
                                        {"caution_wash", c.caution_wash.name()},
                                        {"caption", px(m.caption)},
                                        {"body", px(m.body)},
                                        {"lead", px(m.lead)},
                                        {"heading", px(m.heading)},
                                        {"title", px(m.title)},
                                        {"figure", px(m.figure)},
                                        {"radius", px(m.radius)},
                                        {"target", px(m.target - 2 * m.gap(1) - 2)},
                                        {"gap1", px(m.gap(1))},
                                        {"gap2", px(m.gap(2))},
                                        {"gap3", px(m.gap(3))},
                                        {"gap4", px(m.gap(4))},
                                        {"box", px(m.px(18))},
                                        {"halfbox", px(m.px(9))},
                                        {"dot", "dot-" + tone + ".svg"},
                                        {"small", px(m.px(12))},
                                        {"arrow", px(m.px(24))},
                                        {"scroll", px(m.gap(3.5))},
                                        {"tick", "tick-" + tone + ".svg"},
                                        {"down", "down-" + tone + ".svg"},
                                        {"up", "up-" + tone + ".svg"}};
    return filled(QLatin1String(words_part) + QLatin1String(press_part) + QLatin1String(field_part), words);
}

}  // namespace kempt::desk
