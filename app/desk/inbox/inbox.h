// New photos on their way into the book: from the watched folder, dropped, or chosen. Sorted by sitting, with a client,
// a visit and a view proposed for each; nothing goes into a record before she says so. One for each open book; it works
// on threads of its own and outlives the pages.
#pragma once

#include <QElapsedTimer>
#include <QFileSystemWatcher>
#include <QHash>
#include <QTimer>
#include <optional>

#include "desk/session/session.h"
#include "desk/window/place.h"
#include "work/sort_incoming.h"
#include "work/sort_sittings.h"
#include "work/sort_take.h"
#include "work/watch_folder.h"

namespace kempt::desk {

struct InboxPhoto {
    int key = 0;
    work::IncomingPhoto photo;
    Place put_on;          // dropped or chosen there; Where::nobody: nowhere
    bool by_hand = false;  // dropped or chosen, not from the watched folder
    Id client_by_hand = 0;
    std::optional<View> view;
    bool view_by_hand = false;
    QString view_why;      // a sentence on the proposed view
    bool looking = false;  // its view is being looked for
    Id looked_for = 0;     // the client whose photos it was compared with
    bool taking = false;
    QString trouble;  // why it could not be taken
    jobs::JobHandle job;
};

struct InboxSitting {
    QVector<int> keys;  // of its photos, in order of time
    QDateTime from, to;
    QDate day;
    work::VisitProposal proposal;
    QVector<View> missing;  // that the visit still lacks
};

class Inbox : public QObject {
    Q_OBJECT
  public:
    explicit Inbox(Session& session);
    // The session's own, made when first asked for.
    [[nodiscard]] static Inbox& of(Session& session);

    // The watched folder as the settings have it (key below) is followed from the first time on; asked again, it is
    // looked at once.
    void follow_settings();
    [[nodiscard]] QString folder() const { return folder_; }
    [[nodiscard]] int older() const { return older_; }  // pictures in it that are too old to be looked at unasked
    void look_at_older();
    [[nodiscard]] QString folder_trouble() const { return folder_trouble_; }

    // Where the camera page lays its photos until the book has them: beside the book. What is found there when the
    // book is opened comes into the tray.
    [[nodiscard]] QString camera_folder() const;

    // What is open while photos come.
    void set_open(const Place& place);
    // Files and folders that she dropped or chose at a place.
    void bring(const QStringList& paths, const Place& on);

    [[nodiscard]] const QVector<InboxSitting>& sittings() const { return sittings_; }
    [[nodiscard]] const InboxPhoto* photo(int key) const;
    [[nodiscard]] int waiting() const { return static_cast<int>(photos_.size()); }
    [[nodiscard]] const QVector<work::IncomingPhoto>& in_record() const { return in_record_; }
    [[nodiscard]] QStringList unreadable() const;  // sentences
    void put_away_told();                          // the two lists before
    // Client and view are there and it is not under way already.
    [[nodiscard]] bool ready(int key) const;

    void choose_client(const QVector<int>& keys, Id client);  // those that are still here and not under way
    void choose_view(int key, View view);
    void take(const QVector<int>& keys);  // those that are ready
    // The last take of this window, back out of the record; what it says: "3 photos of Ada Holloway, visit of ...".
    [[nodiscard]] bool can_undo() const { return !takes_.isEmpty() && !undoing_; }
    [[nodiscard]] QString last_take() const;
    void undo_last_take();
    void leave(int key);
    [[nodiscard]] bool can_bring_back() const { return !left_.isEmpty(); }
    void bring_back_last();
    // Nothing is being read, compared or taken.
    [[nodiscard]] bool settled() const;

  signals:
    void rearranged();            // other photos, sittings or proposals
    void photo_changed(int key);  // its view, or how it stands
    // What was asked to be taken is in the record; the visit it went to last.
    void taken(const kempt::desk::Place& visit);

  private:
    void look_round();
    void seen(const Result<work::FolderLook>& look);
    void look_at(const QString& path, bool by_hand, const Place& on);
    void add(const work::IncomingPhoto& photo, bool by_hand, const Place& on);
    void arrange_soon();
    void arrange();
    void recognise();
    void recognised(const InboxSitting& sitting);
    void took(const QVector<int>& keys, const work::TakeReport& report, const work::VisitProposal& into);
    void remove(int key);
    [[nodiscard]] const InboxSitting* sitting_of(int key) const;
    [[nodiscard]] bool known(const QString& sha256) const;

    Session& session_;
    jobs::JobRunner reading_, comparing_;
    QString folder_, folder_trouble_;
    bool following_ = false, left_overs_asked_ = false, listing_ = false, all_ages_ = false;
    int older_ = 0;
    QFileSystemWatcher watcher_;
    QTimer poll_, arrange_pause_;
    QElapsedTimer clock_;
    work::SettledFiles settled_files_;
    Place open_;
    QHash<int, InboxPhoto> photos_;
    QVector<InboxSitting> sittings_;
    QVector<work::IncomingPhoto> in_record_;
    QHash<QString, QString> unreadable_;  // by path
    QVector<InboxPhoto> left_;
    struct Take {
        work::VisitProposal into;
        work::TakenBack back;
        QVector<InboxPhoto> photos;
    };
    QVector<Take> takes_;
    bool undoing_ = false;
    int next_key_ = 1, reading_now_ = 0, arranging_ = 0, taking_ = 0, generation_ = 0;
};

// In QSettings: path of the folder; empty or missing: none.
inline constexpr auto watched_folder_key = "desk.watched_folder";

}  // namespace kempt::desk
