#include "work/shot_rank.h"

namespace kempt::work {

int rank_of(const PhotoRecord& photo, bool marked, const QVector<ReadingRecord>& readings) {
    int rank = photo.quality_level == u"good" ? 2 : photo.quality_level == u"usable" ? 1 : 0;
    if (marked) rank += 10;
    for (const ReadingRecord& reading : readings)
        if (!reading.refused) rank += 20;
    return rank;
}

}  // namespace kempt::work
