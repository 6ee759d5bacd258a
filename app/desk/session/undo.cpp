#include "desk/session/undo.h"

#include <algorithm>

#include "desk/session/session.h"

namespace kempt::desk {
namespace {

constexpr std::size_t most_steps = 200;  // of all clients together: more than a day's entries that somebody regrets

}  // namespace

Undo::Undo(Session& session) : session_(session) {}

void Undo::add(UndoStep step) {
    // What was taken back of her before is not done again after something else.
    std::erase_if(ahead_, [&](const UndoStep& one) { return one.client == step.client; });
    behind_.push_back(std::move(step));
    if (behind_.size() > most_steps) behind_.erase(behind_.begin());
    emit changed();
}

int Undo::last_of(const Steps& steps, Id client, const QString& about) {
    for (int i = static_cast<int>(steps.size()) - 1; i >= 0; --i) {
        const UndoStep& one = steps[static_cast<std::size_t>(i)];
        if (one.client == client && one.about.startsWith(about)) return i;
    }
    return -1;
}

QString Undo::words(Id client, const QString& about) const {
    const int last = last_of(behind_, client, about);
    return last < 0 ? QString() : behind_[static_cast<std::size_t>(last)].words;
}

QString Undo::words_again(Id client, const QString& about) const {
    const int last = last_of(ahead_, client, about);
    return last < 0 ? QString() : ahead_[static_cast<std::size_t>(last)].words;
}

void Undo::take_back(Id client, const QString& about) {
    ask(behind_, client, about, true);
}

void Undo::do_again(Id client, const QString& about) {
    ask(ahead_, client, about, false);
}

// The entry of a moment ago may still be under way: its step comes with its answer, and answers come in their order.
void Undo::ask(Steps& from, Id client, const QString& about, bool back) {
    session_.ask(
        session_.records(), tr("Taking back"), this, [](Book&, const Progress&) { return Status(Done{}); },
        [this, &from, client, about, back](Done) { run(from, client, about, back); });
}

void Undo::run(Steps& from, Id client, const QString& about, bool back) {
    const int last = last_of(from, client, about);
    if (last < 0) return;
    UndoStep step = std::move(from[static_cast<std::size_t>(last)]);
    from.erase(from.begin() + last);
    emit changed();
    session_.ask(
        session_.records(), back ? tr("Taking back") : tr("Doing it again"), this,
        [act = back ? step.back : step.again](Book& book, const Progress&) { return act(book); },
        [this, step, back](Done) {
            if (!back || step.again) (back ? ahead_ : behind_).push_back(step);
            emit changed();
            emit taken(step);
            session_.changed(step.client, step.visit);
            emit session_.news((back ? tr("Taken back: %1.") : tr("Done again: %1.")).arg(step.words));
        });
}

void Undo::forget(const QString& about) {
    for (Steps* steps : {&behind_, &ahead_})
        std::erase_if(*steps, [&](const UndoStep& one) { return one.about == about; });
    emit changed();
}

}  // namespace kempt::desk
