// Works the real window as a person does: only what is shown, enabled, within the window and not covered can be
// pressed, and mouse and keys go in where the window system would deliver them. Every wait has a limit and says what
// it waited for.
#pragma once

#include <QDateEdit>
#include <QStringList>
#include <functional>
#include <memory>

#include "desk/window/main_window.h"
#include "room.h"

QT_BEGIN_NAMESPACE
class QAbstractButton;
QT_END_NAMESPACE

namespace kempt::test {

class Stylist {
  public:
    // A window with the real analysis, of 1280x800, in front.
    Stylist();
    ~Stylist();
    [[nodiscard]] desk::MainWindow& window() const { return *window_; }
    // Closes it as the window's own button does, and waits until the window says that everything is kept.
    void close();
    void open_anew();

    // ---- waiting -----------------------------------------------------------------------------------------------
    void wait(const std::function<bool()>& so, const std::string& what, int limit_ms = 60000);
    // Nothing is being read, kept, measured or drawn.
    void settle(const std::string& what);
    // The page that is shown, once it is one of these and has settled.
    template <class P>
    P* arrive(const std::string& what) {
        P* page = nullptr;
        wait(
            [&] {
                page = qobject_cast<P*>(shown_page());
                return page != nullptr;
            },
            what);
        settle(what);
        return qobject_cast<P*>(shown_page());
    }

    // ---- pressing ----------------------------------------------------------------------------------------------
    // The button with these words on it or as its name, in the dialog in front, else in the window.
    [[nodiscard]] QAbstractButton* button(const QString& words);
    void press(const QString& words);
    // Scrolls to it; fails when it cannot be pressed there: not whole within the window, or covered.
    void reach(QWidget* on);
    void click(QWidget* on);
    void click(QWidget* on, QPoint at);
    void drag(QWidget* on, QPoint from, QPoint to);
    // Opens the button's menu and goes through it by these entries.
    void choose(const QString& words, const QStringList& entries);
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier);
    void type(const QString& words);
    void type_into(QWidget* field, const QString& words);  // in place of what stands there
    void type_day(QDateEdit* field, const QDate& day);
    // From the file manager, anywhere on the page.
    void drop(const QStringList& paths);
    // Words of all labels that are shown now.
    [[nodiscard]] QString seen() const;

    int presses = 0;

  private:
    [[nodiscard]] QWidget* shown_page() const;
    [[nodiscard]] QWidget* front() const;  // a dialog, else the window
    void have_keyboard();
    // Scrolls to it and looks whether it can be pressed there.
    void reach(QWidget* on, QPoint at, bool whole);

    std::unique_ptr<desk::MainWindow> window_;
};

// Files as they come from a phone: copies in `folder`.
[[nodiscard]] QStringList from_phone(const QStringList& photos, const QString& folder);

}  // namespace kempt::test
