// The tools of the photo page: what each draws, what it is called, and what to do next with it. No widgets.
#pragma once

#include <QString>
#include <QVector>
#include <optional>

#include "desk/look/icons.h"
#include "desk/photo/marks_editor.h"
#include "domain/readings.h"

namespace kempt::desk {

enum class Tool { edge_line, hair_tap, scalp_tap, shine, tone, hem, combings, strand, anchor, ruler };

// In the order in which they stand in the row.
[[nodiscard]] const QVector<Tool>& all_tools();
// What the photos of a view are mostly taken for: always in the row. The others wait in the menu until they are chosen
// or have drawn something.
[[nodiscard]] QVector<Tool> first_tools(View view);
[[nodiscard]] bool has_drawn(Tool tool, const Marks& marks);

[[nodiscard]] QString name_of(Tool tool);  // one or two words, for its button
[[nodiscard]] QString help_of(Tool tool);  // what it draws, one sentence
[[nodiscard]] Sign sign_of(Tool tool);
[[nodiscard]] MarkKind kind_of(Tool tool);                      // the mark a click makes
[[nodiscard]] QString sheet_of(Tool tool);                      // of the three sheet tools: "hem", "combings", "strand"
[[nodiscard]] std::optional<ReadingGroup> group_of(Tool tool);  // that it asks for; anchor and ruler: none
[[nodiscard]] QString title_of(ReadingGroup group);             // heading of its readings: "Comb-out"
[[nodiscard]] Tool tool_for(ReadingGroup group);

// What F and the turn button do with this tool: "Hair side", "Root side", "Root end"; empty: nothing to turn.
[[nodiscard]] QString turn_words(Tool tool);
[[nodiscard]] bool can_turn(Tool tool, const Marks& marks);

// What to draw next, one or two sentences.
[[nodiscard]] QString hint_for(Tool tool, const Marks& marks);
// For the sheet tools: the words of the button that asks for this tool's readings without a further point; empty when
// there is nothing to ask, or it is asked already.
[[nodiscard]] QString sheet_words(Tool tool, const Marks& marks);
// The words of the button that removes all of this tool's marks; empty when there are none.
[[nodiscard]] QString clear_words(Tool tool, const Marks& marks);

}  // namespace kempt::desk
