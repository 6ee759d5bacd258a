// A page of the book window.
#pragma once

#include <QWidget>
#include <functional>

#include "desk/session/session.h"
#include "desk/window/place.h"

class QScrollArea;
class QVBoxLayout;

namespace kempt::desk {

class Page : public QWidget {
    Q_OBJECT
  public:
    explicit Page(Session& session, QWidget* parent = nullptr);
    virtual void show_place(const Place& place) = 0;
    // Keeps what has not been kept yet, then calls `then` (at once when there is nothing to keep).
    virtual void put_away(std::function<void()> then) { then(); }
    [[nodiscard]] virtual bool wants_whole_width() const { return false; }
    // Ctrl+Z and Ctrl+Shift+Z: the last entry of her whose page this is, unless a page has an undo of its own.
    virtual void undo(const Place& here);
    virtual void redo(const Place& here);
    // What would be taken back, where the page itself does not say it; empty: nothing.
    [[nodiscard]] virtual QString undo_words(const Place& here) const;
    // Nothing more will arrive for what is shown (for screenshots and tests).
    [[nodiscard]] virtual bool settled() const { return true; }

  signals:
    void go(const kempt::desk::Place& place);
    void trail_changed(const kempt::desk::Trail& trail);

  protected:
    // A scrolled column with the page's margins; the layout to fill.
    QVBoxLayout* scrolled();
    void to_top();  // of the scrolled column
    Session& session_;

  private:
    QScrollArea* area_ = nullptr;
};

}  // namespace kempt::desk
