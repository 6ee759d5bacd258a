#include "domain/marks_json.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonValue>
#include <cmath>
#include <limits>
#include <optional>

#include "domain/words.h"

namespace kempt {
namespace {

// Beyond this a coordinate is a slip of the pen: no photo within the limits is a million pixels wide.
constexpr double largest_coordinate = 1e6;

Error wrong(const QString& member, const QString& what) {
    return {ErrorKind::invalid, "marks-member",
            QStringLiteral("In the marks, \"%1\" %2.").arg(member, what).toStdString(), "",
            "Correct the marks file and try again."};
}

// A wrong member is kept as the first error found; reading goes on with nothing so that the code stays a plain list.
class Reader {
  public:
    explicit Reader(const QJsonObject& object) : object_(object) {}

    QVector<QPointF> points(const QString& name, qsizetype at_least, qsizetype at_most) {
        return points_of(object_.value(name), name, at_least, at_most);
    }

    QVector<QPointF> points_of(const QJsonValue& value, const QString& name, qsizetype at_least, qsizetype at_most) {
        if (value.isUndefined() || value.isNull()) return {};
        if (!value.isArray()) {
            fail(name, QStringLiteral("is not a list of [x, y] points"));
            return {};
        }
        const QJsonArray array = value.toArray();
        QVector<QPointF> list;
        list.reserve(array.size());
        for (qsizetype i = 0; i < array.size(); ++i) {
            const auto point = point_of(array.at(i), QStringLiteral("%1[%2]").arg(name).arg(i));
            if (!point) return {};
            list.append(*point);
        }
        if (list.isEmpty() && at_least != at_most) return list;
        if (list.size() < at_least || list.size() > at_most) {
            const QString wanted = at_least == at_most ? QStringLiteral("%1 points").arg(at_least)
                                                       : QStringLiteral("%1 points or more").arg(at_least);
            fail(name, QStringLiteral("has %1 points where %2 are needed").arg(list.size()).arg(wanted));
            return {};
        }
        return list;
    }

    std::optional<QPointF> point_of(const QJsonValue& value, const QString& name) {
        const QJsonArray pair = value.toArray();
        const bool numbers = value.isArray() && pair.size() == 2 && pair.at(0).isDouble() && pair.at(1).isDouble();
        if (!numbers) {
            fail(name, QStringLiteral("is not a pair of numbers [x, y]"));
            return std::nullopt;
        }
        const QPointF point(pair.at(0).toDouble(), pair.at(1).toDouble());
        if (!(std::abs(point.x()) <= largest_coordinate && std::abs(point.y()) <= largest_coordinate)) {
            fail(name, QStringLiteral("lies far outside any photo"));
            return std::nullopt;
        }
        return point;
    }

    std::optional<QPointF> point(const QString& name) {
        const QJsonValue value = object_.value(name);
        if (value.isUndefined() || value.isNull()) return std::nullopt;
        return point_of(value, name);
    }

    QString text(const QString& name) {
        const QJsonValue value = object_.value(name);
        if (value.isUndefined() || value.isNull()) return {};
        if (!value.isString()) fail(name, QStringLiteral("is not a text"));
        return value.toString();
    }

    void fail(const QString& member, const QString& what) {
        if (!error_) error_ = wrong(member, what);
    }
    [[nodiscard]] const std::optional<Error>& error() const { return error_; }

  private:
    const QJsonObject& object_;
    std::optional<Error> error_;
};

void read_view(Reader& reader, Marks& marks) {
    const QString word = reader.text(QStringLiteral("view"));
    if (word.isEmpty()) return;
    if (const auto view = view_from_word(word)) {
        marks.view = *view;
        return;
    }
    QStringList known;
    for (View view : all_views()) known.append(word_of(view));
    reader.fail(QStringLiteral("view"),
                QStringLiteral("is \"%1\"; the views are %2").arg(word.left(40), known.join(QStringLiteral(", "))));
}

void read_sheet(Reader& reader, Marks& marks) {
    const QString sheet = reader.text(QStringLiteral("sheet"));
    if (sheet.isEmpty() || sheet == u"hem" || sheet == u"combings" || sheet == u"strand")
        marks.sheet = sheet;
    else
        reader.fail(QStringLiteral("sheet"), QStringLiteral("must be hem, combings or strand"));
}

// Pairs of points, kept one after the other.
void read_joined(Reader& reader, const QJsonValue& value, Marks& marks) {
    const QString name = QStringLiteral("joined");
    if (value.isUndefined() || value.isNull()) return;
    if (!value.isArray()) return reader.fail(name, QStringLiteral("is not a list of pairs of points"));
    const QJsonArray pairs = value.toArray();
    for (qsizetype i = 0; i < pairs.size(); ++i) {
        const QVector<QPointF> pair = reader.points_of(pairs.at(i), QStringLiteral("%1[%2]").arg(name).arg(i), 2, 2);
        if (pair.size() != 2) return reader.fail(name, QStringLiteral("holds something that is not a pair of points"));
        marks.joined += pair;
    }
}

void read_scale(Reader& reader, const QJsonValue& value, Marks& marks) {
    if (value.isUndefined() || value.isNull()) return;
    if (!value.isObject()) return reader.fail(QStringLiteral("scale"), QStringLiteral("is not an object"));
    const QJsonObject scale = value.toObject();
    if (!scale.contains(QStringLiteral("points")))
        return reader.fail(QStringLiteral("scale.points"), QStringLiteral("is missing"));
    marks.scale_points = reader.points_of(scale.value(QStringLiteral("points")), QStringLiteral("scale.points"), 2, 2);
    const QJsonValue mm = scale.value(QStringLiteral("mm"));
    if (!mm.isDouble() || !(mm.toDouble() > 0))
        return reader.fail(QStringLiteral("scale.mm"), QStringLiteral("must be a length above 0 in millimetres"));
    marks.scale_mm = mm.toDouble();
    if (marks.scale_points.size() == 2 && marks.scale_points[0] == marks.scale_points[1])
        reader.fail(QStringLiteral("scale.points"), QStringLiteral("are one and the same point"));
}

QJsonArray json_of(const QPointF& point) {
    return {point.x(), point.y()};
}

QJsonArray json_of(const QVector<QPointF>& points) {
    QJsonArray list;
    for (const QPointF& point : points) list.append(json_of(point));
    return list;
}

}  // namespace

Result<Marks> marks_from_json(const QByteArray& json) {
    QJsonParseError problem{};
    const QJsonDocument document = QJsonDocument::fromJson(json, &problem);
    if (problem.error != QJsonParseError::NoError || !document.isObject()) {
        const QString where = problem.error != QJsonParseError::NoError
                                  ? QStringLiteral(" (%1, at byte %2)").arg(problem.errorString()).arg(problem.offset)
                                  : QStringLiteral(" (it holds a list, not an object)");
        return Error{ErrorKind::invalid, "marks-not-json",
                     QStringLiteral("The marks are not a JSON object%1.").arg(where).toStdString(), "",
                     "Correct the marks file and try again."};
    }
    const QJsonObject object = document.object();
    constexpr qsizetype any = std::numeric_limits<int>::max();
    Reader reader(object);
    Marks marks;
    read_view(reader, marks);
    marks.edge_line = reader.points(QStringLiteral("edge_line"), 2, any);
    marks.hair_side = reader.point(QStringLiteral("hair_side"));
    marks.hair_taps = reader.points(QStringLiteral("hair_taps"), 1, any);
    marks.scalp_taps = reader.points(QStringLiteral("scalp_taps"), 1, any);
    marks.shine_region = reader.points(QStringLiteral("shine_region"), 4, 4);
    marks.strand_line = reader.points(QStringLiteral("strand_line"), 2, any);
    marks.region = reader.points(QStringLiteral("region"), 4, 4);
    marks.anchors = reader.points(QStringLiteral("anchors"), 1, any);
    marks.not_hair = reader.points(QStringLiteral("not_hair"), 1, any);
    read_joined(reader, object.value(QStringLiteral("joined")), marks);
    marks.whole = reader.points(QStringLiteral("whole"), 1, any);
    read_sheet(reader, marks);
    read_scale(reader, object.value(QStringLiteral("scale")), marks);
    if (reader.error()) return *reader.error();
    return marks;
}

QJsonObject json_of_marks(const Marks& marks) {
    QJsonObject object{{QStringLiteral("view"), word_of(marks.view)}};
    const auto put = [&object](const QString& name, const QVector<QPointF>& points) {
        if (!points.isEmpty()) object.insert(name, json_of(points));
    };
    put(QStringLiteral("edge_line"), marks.edge_line);
    if (marks.hair_side) object.insert(QStringLiteral("hair_side"), json_of(*marks.hair_side));
    put(QStringLiteral("hair_taps"), marks.hair_taps);
    put(QStringLiteral("scalp_taps"), marks.scalp_taps);
    put(QStringLiteral("shine_region"), marks.shine_region);
    put(QStringLiteral("strand_line"), marks.strand_line);
    put(QStringLiteral("region"), marks.region);
    put(QStringLiteral("anchors"), marks.anchors);
    put(QStringLiteral("not_hair"), marks.not_hair);
    put(QStringLiteral("whole"), marks.whole);
    QJsonArray pairs;
    for (qsizetype i = 0; i + 1 < marks.joined.size(); i += 2)
        pairs.append(QJsonArray{json_of(marks.joined[i]), json_of(marks.joined[i + 1])});
    if (!pairs.isEmpty()) object.insert(QStringLiteral("joined"), pairs);
    if (!marks.sheet.isEmpty()) object.insert(QStringLiteral("sheet"), marks.sheet);
    if (marks.scale_points.size() == 2)
        object.insert(QStringLiteral("scale"), QJsonObject{{QStringLiteral("points"), json_of(marks.scale_points)},
                                                           {QStringLiteral("mm"), marks.scale_mm}});
    return object;
}

}  // namespace kempt
