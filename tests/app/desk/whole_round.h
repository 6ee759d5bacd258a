// The whole round of a new client through the real windows with the real analysis, from an empty start page to the PDF.
// What was entered is remembered, so that it can be compared with the book.
#pragma once

#include "domain/records.h"
#include "stylist.h"

namespace kempt::test {

class WholeRound {
  public:
    WholeRound();

    // ---- in this order ---------------------------------------------------------------------------------------------
    void start_book();
    void add_client();  // two fields, and her consent
    void tell_hair_and_days();
    void first_visit();            // opened from her page, dated
    void first_photos(int shots);  // dropped on the visit, taken from the tray with the view's key
    void draw_first();             // every point of the edge line by a click; the hair side by a drag; readings come
    void nudge_and_undo();
    void carry_to_second();  // the second shot has the marks of the first
    void grade();
    void services();  // one done, one planned
    void plan();
    void second_visit();  // photos dropped on her page; in its middle the window is closed and opened again
    void compare();
    void report();

    Stylist hands;
    QTemporaryDir folder;
    QString book_path, name = QStringLiteral("Imani Castell"), note = QStringLiteral("edges first, thin since spring");
    // The days that the cameras of the demo's photos say; one that is to come.
    QDate first_day{2026, 3, 3}, second_day{2026, 4, 14}, planned_day;
    QVector<QString> first_files, second_files;  // as dropped
    QVector<QPointF> clicked_line;               // of the first shot, in photo pixels
    QPointF dragged_side;
    double pixel = 0;   // of the screen, in photo pixels, while it was drawn
    QPointF nudged_by;  // as the book held it before it was undone, against clicked_line[0]
    QString answered;   // the question's name
    int answer = -1;
    QString second_note = QStringLiteral("less pulling, edges softer");
    QVector<QPointF> left_line;  // drawn when the window was closed
    QString verdict_shown;
    QString pdf, table, pictures;
};

// The demo's photos of one view and day.
[[nodiscard]] QString sample(int day, int shot, const char* ending);

}  // namespace kempt::test
