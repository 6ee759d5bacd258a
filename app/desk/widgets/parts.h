// Small pieces that every page is put together from.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>
#include <optional>

#include "desk/look/icons.h"

class QBoxLayout;
class QLayout;
class QScrollArea;

namespace kempt::desk {

// role: "title", "heading", "lead", "strong", "caption", "figure", "soft" or empty. Wraps; text is plain, never read as
// markup.
[[nodiscard]] QLabel* text(const QString& words, const char* role = "", QWidget* parent = nullptr);
// kind: "primary", "quiet", "trail" or empty.
[[nodiscard]] QPushButton* button(const QString& words, const char* kind = "", std::optional<Sign> sign = {});
// A button that shows only a sign; the words are its tooltip and its accessible name.
[[nodiscard]] QToolButton* sign_button(Sign sign, const QString& words, const char* kind = "quiet");
// panel: "surface", "sunken", "side", "better", "worse", "caution", "plain".
[[nodiscard]] QFrame* panel(const char* kind, QWidget* parent = nullptr);
// Changes what a panel is.
void set_panel_tone(QFrame* frame, const char* kind);
// A column inside a panel, with its margins.
[[nodiscard]] QBoxLayout* column_in(QWidget* widget, double margin_units = 4, double spacing_units = 2);
// A region that scrolls up and down only; `inside` takes its width and shows what is behind it. Never takes the
// keyboard itself: what it holds does.
[[nodiscard]] QScrollArea* scroll_area(QWidget* inside);
// A widget that takes the width there is and the height that this width asks for.
void take_height_from_width(QWidget* widget);
// Deletes everything a layout holds.
void empty_layout(QLayout* layout);
// "12 March 2026"
[[nodiscard]] QString date_words(const QDate& date);
// "1 photo", "3 photos"
[[nodiscard]] QString counted(qsizetype count, const QString& one, const QString& many);
// "12 Mar 2026"
[[nodiscard]] QString short_date_words(const QDate& date);
// First letter large, for words that begin a line: "Left temple".
[[nodiscard]] QString beginning(QString words);

}  // namespace kempt::desk
