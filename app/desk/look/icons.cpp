#include "desk/look/icons.h"

#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>

#include "desk/look/look.h"

namespace kempt::desk {
namespace {

// Each sign is a list of strokes; a stroke is a list of points, or a circle of centre and radius.
void lines(QPainterPath& path, std::initializer_list<QPointF> points) {
    bool first = true;
    for (const QPointF& p : points) {
        if (first)
            path.moveTo(p);
        else
            path.lineTo(p);
        first = false;
    }
}

void curve(QPainterPath& path, QPointF a, QPointF c1, QPointF c2, QPointF b) {
    path.moveTo(a);
    path.cubicTo(c1, c2, b);
}

void glass(QPainterPath& path) {
    path.addEllipse(QPointF(10.5, 10.5), 6, 6);
    lines(path, {{15, 15}, {20.5, 20.5}});
}

QPainterPath strokes(Sign sign) {
    QPainterPath p;
    switch (sign) {
        case Sign::back:
            lines(p, {{14.5, 5.5}, {8, 12}, {14.5, 18.5}});
            break;
        case Sign::forward:
            lines(p, {{9.5, 5.5}, {16, 12}, {9.5, 18.5}});
            break;
        case Sign::add:
            lines(p, {{12, 5}, {12, 19}});
            lines(p, {{5, 12}, {19, 12}});
            break;
        case Sign::remove:
            lines(p, {{6, 6}, {18, 18}});
            lines(p, {{18, 6}, {6, 18}});
            break;
        case Sign::search:
            glass(p);
            break;
        case Sign::undo:
            lines(p, {{8, 5}, {4, 9}, {8, 13}});
            curve(p, {4.5, 9}, {15, 8}, {20, 11}, {19, 19});
            break;
        case Sign::redo:
            lines(p, {{16, 5}, {20, 9}, {16, 13}});
            curve(p, {19.5, 9}, {9, 8}, {4, 11}, {5, 19});
            break;
        case Sign::closer:
            glass(p);
            lines(p, {{10.5, 8}, {10.5, 13}});
            lines(p, {{8, 10.5}, {13, 10.5}});
            break;
        case Sign::farther:
            glass(p);
            lines(p, {{8, 10.5}, {13, 10.5}});
            break;
        case Sign::fit:
            lines(p, {{4, 9}, {4, 5}, {9, 5}});
            lines(p, {{15, 5}, {20, 5}, {20, 9}});
            lines(p, {{20, 15}, {20, 19}, {15, 19}});
            lines(p, {{9, 19}, {4, 19}, {4, 15}});
            break;
        case Sign::compare:
            p.addRoundedRect(QRectF(3.5, 6, 17, 12), 2, 2);
            lines(p, {{12, 3.5}, {12, 20.5}});
            lines(p, {{9.5, 10}, {7.5, 12}, {9.5, 14}});
            lines(p, {{14.5, 10}, {16.5, 12}, {14.5, 14}});
            break;
        case Sign::report:
            lines(p, {{6, 3.5}, {14.5, 3.5}, {18.5, 7.5}, {18.5, 20.5}, {6, 20.5}, {6, 3.5}});
            lines(p, {{9, 11}, {15.5, 11}});
            lines(p, {{9, 14}, {15.5, 14}});
            lines(p, {{9, 17}, {13, 17}});
            break;
        case Sign::settings:  // three combs' worth of sliders
            for (const auto& [y, x] : {QPair<double, double>{6.5, 15}, {12, 8.5}, {17.5, 14}}) {
                lines(p, {{4, y}, {x - 2.2, y}});
                lines(p, {{x + 2.2, y}, {20, y}});
                p.addEllipse(QPointF(x, y), 2.2, 2.2);
            }
            break;
        case Sign::folder:
            lines(p, {{3.5, 18.5}, {3.5, 6}, {9.5, 6}, {11.5, 8.5}, {20.5, 8.5}, {20.5, 18.5}, {3.5, 18.5}});
            break;
        case Sign::picture:
            p.addRoundedRect(QRectF(3.5, 5, 17, 14), 2, 2);
            lines(p, {{5, 17}, {9.5, 11.5}, {12.5, 15}, {15, 12.5}, {19, 17}});
            p.addEllipse(QPointF(15.5, 9), 1.3, 1.3);
            break;
        case Sign::hair:
            for (int i = 0; i < 4; ++i)
                curve(p, {5.0 + 4 * i, 20}, {4.0 + 4 * i, 13}, {10.0 + 4 * i - 2, 11}, {7.5 + 4 * i, 4});
            break;
        case Sign::scalp:
            curve(p, {3.5, 19}, {5, 3}, {19, 3}, {20.5, 19});
            lines(p, {{3.5, 19}, {20.5, 19}});
            break;
        case Sign::ruler:
            p.addRoundedRect(QRectF(2.5, 8, 19, 8), 1.5, 1.5);
            for (int i = 0; i < 5; ++i) lines(p, {{5.0 + 3.5 * i, 8}, {5.0 + 3.5 * i, i % 2 ? 10.5 : 12.0}});
            break;
        case Sign::pencil:
            lines(p, {{4, 20}, {5, 15.5}, {16, 4.5}, {19.5, 8}, {8.5, 19}, {4, 20}});
            lines(p, {{13.5, 7}, {17, 10.5}});
            break;
        case Sign::flip:
            lines(p, {{3.5, 12}, {20.5, 12}});
            lines(p, {{9, 7}, {12, 3.5}, {15, 7}});
            lines(p, {{9, 17}, {12, 20.5}, {15, 17}});
            break;
        case Sign::book:
            lines(p, {{12, 6.5}, {12, 20}});
            curve(p, {12, 6.5}, {9, 4}, {6, 4}, {3.5, 5});
            lines(p, {{3.5, 5}, {3.5, 18}});
            curve(p, {3.5, 18}, {6, 17}, {9, 17.5}, {12, 20});
            curve(p, {12, 6.5}, {15, 4}, {18, 4}, {20.5, 5});
            lines(p, {{20.5, 5}, {20.5, 18}});
            curve(p, {20.5, 18}, {18, 17}, {15, 17.5}, {12, 20});
            break;
        case Sign::more:
            for (int i = 0; i < 3; ++i) p.addEllipse(QPointF(6 + 6 * i, 12), 1.2, 1.2);
            break;
        case Sign::dark:
            p.moveTo(15, 4);
            p.arcTo(QRectF(4, 4, 16, 16), 60, 300);
            curve(p, {18.8, 16.2}, {8, 17}, {9, 6}, {15.2, 4.6});
            break;
        case Sign::menu:
            for (int i = 0; i < 3; ++i) lines(p, {{4.0, 7.0 + 5 * i}, {20.0, 7.0 + 5 * i}});
            break;
        case Sign::shine:  // a lock with a band of light across it
            curve(p, {7, 3.5}, {5, 9}, {5, 15}, {7, 20.5});
            curve(p, {17, 3.5}, {19, 9}, {19, 15}, {17, 20.5});
            lines(p, {{9, 11}, {15, 11}});
            lines(p, {{9, 14}, {15, 14}});
            break;
        case Sign::tone:  // a lock in three tones
            lines(p, {{8, 3.5}, {16, 3.5}, {16, 20.5}, {8, 20.5}, {8, 3.5}});
            lines(p, {{8, 9}, {16, 9}});
            lines(p, {{8, 15}, {16, 15}});
            lines(p, {{10.7, 15}, {10.7, 20.5}});
            lines(p, {{13.3, 15}, {13.3, 20.5}});
            lines(p, {{12, 9}, {12, 15}});
            break;
        case Sign::ends:  // hair hanging to an uneven hem
            for (const auto& [x, y] : {QPair<double, double>{4.5, 16}, {8.2, 19}, {12, 17}, {15.8, 20}, {19.5, 15.5}})
                lines(p, {{x, 3.5}, {x, y}});
            break;
        case Sign::comb_out:  // a comb, and a strand that left it
            lines(p, {{3.5, 5}, {20.5, 5}});
            for (int i = 0; i < 5; ++i) lines(p, {{4.5 + 3.75 * i, 5}, {4.5 + 3.75 * i, 11}});
            curve(p, {4, 19}, {9, 12.5}, {14, 22}, {20, 15.5});
            break;
        case Sign::wave:
            curve(p, {3, 14}, {6, 3}, {9, 3}, {12, 12});
            curve(p, {12, 12}, {15, 21}, {18, 21}, {21, 10});
            break;
        case Sign::anchor:  // a place that is held
            lines(p, {{12, 4}, {20, 12}, {12, 20}, {4, 12}, {12, 4}});
            p.addEllipse(QPointF(12, 12), 1.6, 1.6);
            break;
        case Sign::plan:  // strands begun one after the other, rinsed at one moment
            lines(p, {{19.5, 3.5}, {19.5, 20.5}});
            lines(p, {{4, 7}, {19.5, 7}});
            lines(p, {{8, 12}, {19.5, 12}});
            lines(p, {{13, 17}, {19.5, 17}});
            break;
        case Sign::measured:  // what was found, traced on the photo
            p.addRoundedRect(QRectF(3.5, 5, 17, 14), 2, 2);
            curve(p, {6, 15.5}, {10, 6}, {13, 18}, {18, 8.5});
            break;
    }
    return p;
}

class SignEngine : public QIconEngine {
  public:
    SignEngine(Sign sign, bool on_accent) : sign_(sign), on_accent_(on_accent) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State state) override {
        const Colours& c = colours();
        const QColor colour = mode == QIcon::Disabled ? c.outline
                              : on_accent_            ? c.on_accent
                              : state == QIcon::On    ? c.accent
                                                      : c.ink;
        const double side = std::min(rect.width(), rect.height());
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->translate(rect.center().x() + 0.5 - side / 2, rect.center().y() + 0.5 - side / 2);
        painter->scale(side / 24, side / 24);
        painter->setPen(QPen(colour, 1.7, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter->drawPath(strokes(sign_));
        painter->restore();
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap map(size);
        map.fill(Qt::transparent);
        QPainter painter(&map);
        paint(&painter, QRect(QPoint(0, 0), size), mode, state);
        return map;
    }

    [[nodiscard]] QIconEngine* clone() const override { return new SignEngine(sign_, on_accent_); }

  private:
    Sign sign_;
    bool on_accent_;
};

}  // namespace

QIcon icon_of(Sign sign, bool on_accent) {
    return QIcon(new SignEngine(sign, on_accent));
}

}  // namespace kempt::desk
