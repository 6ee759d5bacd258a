// The Tab key walks what is on the page in the order in which it is laid out, also after parts of it were made anew.
#pragma once

class QWidget;

namespace kempt::desk {

// Sets the tab order of everything below `root` now.
void tidy_focus_order(QWidget* root);
// The same for the whole window of `widget`, once control is back in the event loop; asked any number of times.
void tidy_focus_order_later(QWidget* widget);

}  // namespace kempt::desk
