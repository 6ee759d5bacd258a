// Lines of demarcation on the photos: whose they are, and how fast this client's hair grows.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <algorithm>
#include <map>

#include "book/reading_store.h"
#include "domain/words.h"
#include "work/care_parts.h"
#include "work/care_put.h"

namespace kempt::work {

namespace {

bool meet(const care::GrowthRange& a, const care::GrowthRange& b) {
    return a.low <= b.high && b.low <= a.high;
}

care::GrowthRange range_of(const QJsonObject& line, const char* value, const char* low, const char* high) {
    const double middle = line[QLatin1String(value)].toDouble();
    return {middle, std::clamp(line[QLatin1String(low)].toDouble(), 0.0, middle),
            std::max(middle, line[QLatin1String(high)].toDouble())};
}

// Two shots' strands do not begin at the very same hair root: lines this far apart may be one (own choice).
constexpr double same_line_mm = 2;

// Lines of each visit and view, with the shots that show them.
class Gathered {
  public:
    void add(const ToneShot& shot) {
        ++shots_[{shot.date, shot.view}];
        for (const SeenLine& line : shot.lines) add(line);
    }
    // A line that most of the shots do not show is a lock's shadow or a highlight's end.
    [[nodiscard]] std::vector<SeenLine> lines() const {
        std::vector<SeenLine> means;
        for (const Group& group : groups_)
            if (2 * group.size() > shots_.at({group.front().date, group.front().view})) means.push_back(mean_of(group));
        return means;
    }

  private:
    using Group = std::vector<SeenLine>;
    void add(const SeenLine& line) {
        for (Group& group : groups_) {
            care::GrowthRange near = mean_of(group).at_mm;
            near.low -= same_line_mm;
            near.high += same_line_mm;
            if (group.front().date != line.date || group.front().view != line.view || !meet(near, line.at_mm)) continue;
            group.push_back(line);
            return;
        }
        groups_.push_back({line});
    }
    // What the shots share (the strand drawn, the scale) does not average out, so the range stays as wide as theirs.
    static SeenLine mean_of(const Group& group) {
        SeenLine mean = group.front();
        const double count = static_cast<double>(group.size());
        const auto over = [&](care::GrowthRange SeenLine::*member) {
            care::GrowthRange sum;
            for (const SeenLine& line : group) {
                sum.value += (line.*member).value / count;
                sum.low += (line.*member).low / count;
                sum.high += (line.*member).high / count;
            }
            return sum;
        };
        mean.at_mm = over(&SeenLine::at_mm);
        mean.step = over(&SeenLine::step);
        return mean;
    }
    std::vector<Group> groups_;
    std::map<std::pair<QDate, View>, std::size_t> shots_;
};

// Colour that stays leaves a line of its own; what washes out (semi-permanent colour, gloss) does not, and a
// straightener changes the shape, not the tone.
bool leaves_line(care::Kind kind) {
    for (const char* name : {"oxidative", "henna", "metallic-dye"})
        if (care::belongs(*care::find_family(name), kind)) return true;
    return false;
}

// Where the line of a service can be on a day.
care::GrowthRange where_it_can_be(const care::PastService& service, care::Day day, care::HairGroup group) {
    const care::RateWindow window = care::plausible_rates(group);
    const double days = day - service.day;
    return {service.from_mm, service.from_mm + window.least * days / 1000, service.from_mm + window.most * days / 1000};
}

std::vector<SeenLine> lines_of(const std::vector<ToneShot>& shots, QDate today) {
    Gathered gathered;
    for (const ToneShot& shot : shots)
        if (shot.date <= today) gathered.add(shot);
    std::vector<SeenLine> lines = gathered.lines();
    std::stable_sort(lines.begin(), lines.end(), [](const SeenLine& a, const SeenLine& b) {
        return std::pair(a.date, a.view) < std::pair(b.date, b.view);
    });
    return lines;
}

}  // namespace

ToneShot tone_shot(QDate date, View view, const QString& details) {
    ToneShot shot{date, view, {}};
    const QJsonObject tone = QJsonDocument::fromJson(details.toUtf8()).object()[QLatin1String("tone")].toObject();
    for (const QJsonValue& value : tone[QLatin1String("lines")].toArray()) {
        const QJsonObject line = value.toObject();
        shot.lines.push_back({date, view, range_of(line, "at_mm", "at_low", "at_high"),
                              range_of(line, "step", "step_low", "step_high")});
    }
    return shot;
}

Result<std::vector<SeenLine>> lines_of_client(Book& book, Id client, QDate today) {
    std::vector<ToneShot> shots;
    for (const View view : all_views()) {
        const auto readings = store::readings_of_client(book, client, view, QStringLiteral("tone_spread"));
        if (!readings) return readings.error();
        for (const store::DatedReading& one : readings.value())
            if (!one.reading.refused && !one.drawn_anew && one.quality_level != u"refused")
                shots.push_back(tone_shot(one.date, one.view, one.reading.details));
    }
    return lines_of(shots, today);
}

std::vector<std::optional<std::size_t>> services_of_lines(const std::vector<SeenLine>& lines,
                                                          const std::vector<care::PastService>& services,
                                                          care::HairGroup group) {
    const auto could_be = [&](const SeenLine& line, const care::PastService& service) {
        const care::Day day = care_day(line.date);
        return leaves_line(service.kind) && service.day < day && meet(line.at_mm, where_it_can_be(service, day, group));
    };
    std::vector<std::optional<std::size_t>> owners(lines.size());
    for (std::size_t l = 0; l < lines.size(); ++l) {
        std::vector<std::size_t> candidates;
        for (std::size_t s = 0; s < services.size(); ++s)
            if (could_be(lines[l], services[s])) candidates.push_back(s);
        if (candidates.size() != 1) continue;
        const bool alone = std::none_of(lines.begin(), lines.end(), [&](const SeenLine& other) {
            return &other != &lines[l] && other.date == lines[l].date && other.view == lines[l].view &&
                   could_be(other, services[candidates.front()]);
        });
        if (alone) owners[l] = candidates.front();
    }
    return owners;
}

namespace {

// By date: the newest line of a service stays, on one day that of the photo before that of the tape. Earlier ones began
// on the same day and are no evidence of their own.
void put(const std::vector<SeenLine>& lines, care::ClientState& state) {
    auto& services = state.history.services;
    const auto owners = services_of_lines(lines, services, state.group);
    for (std::size_t l = 0; l < owners.size(); ++l) {
        if (!owners[l]) continue;
        care::PastService& service = services[*owners[l]];
        if (service.line_mm && service.line_day > care_day(lines[l].date)) continue;
        service.line_mm = lines[l].at_mm;
        service.line_day = care_day(lines[l].date);
        service.line_by_tape = false;
    }
    std::vector<care::GrowthRate> own;
    for (const care::PastService& service : services) {
        if (service.unsure || !service.line_mm || !(service.line_mm->low >= service.from_mm)) continue;
        const care::GrowthRange grown{service.line_mm->value - service.from_mm, service.line_mm->low - service.from_mm,
                                      service.line_mm->high - service.from_mm};
        // Too few weeks, or a rate that no hair has: the line stays, the rate is not learnt from it.
        if (auto rate = care::own_rate(grown, (service.line_day - service.day) / 7.0, state.group))
            own.push_back(std::move(rate).value());
    }
    if (!own.empty()) state.own_rate = care::with_own_rates(care::expected_rate(state.group), own);
}

}  // namespace

void put_lines(const std::vector<ToneShot>& shots, QDate today, care::ClientState& state) {
    put(lines_of(shots, today), state);
}

Status add_lines(Book& book, Id client, QDate today, care::ClientState& state) {
    const auto lines = lines_of_client(book, client, today);
    if (!lines) return lines.error();
    put(lines.value(), state);
    return Done{};
}

}  // namespace kempt::work
