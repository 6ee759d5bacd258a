#include "intake/picture_memory.h"

#include <sys/mman.h>

#include <cstdint>
#include <opencv2/core.hpp>

namespace kempt::intake {
namespace {

#ifdef MADV_HUGEPAGE

constexpr size_t large_page = size_t{2} << 20;  // of x86-64 and of most arm64 systems
constexpr size_t least_bytes = large_page / 2;  // below, the rounding up would cost more than the faults

// OpenCV's own way to lay out a picture, with the bytes of large ones from mmap. The block begins at a large page and
// its size is rounded up to whole ones.
class LargePages final : public cv::MatAllocator {
  public:
    explicit LargePages(cv::MatAllocator* usual) : usual_(usual) {}

    cv::UMatData* allocate(int dims, const int* sizes, int type, void* data, size_t* step, cv::AccessFlag flags,
                           cv::UMatUsageFlags usage) const override {
        const auto as_usual = [&] { return usual_->allocate(dims, sizes, type, data, step, flags, usage); };
        size_t total = CV_ELEM_SIZE(type);
        for (int i = 0; i < dims; ++i) total *= static_cast<size_t>(sizes[i]);
        if (data || total < least_bytes) return as_usual();
        uchar* bytes = mapped(total);
        if (!bytes) return as_usual();
        size_t part = CV_ELEM_SIZE(type);
        for (int i = dims - 1; i >= 0; --i) {
            if (step) step[i] = part;
            part *= static_cast<size_t>(sizes[i]);
        }
        auto* block = new cv::UMatData(this);
        block->data = block->origdata = bytes;
        block->size = total;
        return block;
    }

    bool allocate(cv::UMatData* block, cv::AccessFlag, cv::UMatUsageFlags) const override { return block != nullptr; }

    void deallocate(cv::UMatData* block) const override {
        if (!block) return;
        munmap(block->origdata, rounded(block->size));
        block->origdata = nullptr;
        delete block;
    }

  private:
    static size_t rounded(size_t bytes) { return (bytes + large_page - 1) / large_page * large_page; }

    static uchar* mapped(size_t bytes) {
        const size_t size = rounded(bytes);
        void* whole = mmap(nullptr, size + large_page, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
        if (whole == MAP_FAILED) return nullptr;
        auto* first = static_cast<uchar*>(whole);
        const size_t before = (large_page - reinterpret_cast<std::uintptr_t>(first) % large_page) % large_page;
        if (before) munmap(first, before);
        if (before < large_page) munmap(first + before + size, large_page - before);
        madvise(first + before, size, MADV_HUGEPAGE);
        return first + before;
    }

    cv::MatAllocator* usual_;
};

#endif

}  // namespace

void use_large_pages() {
#ifdef MADV_HUGEPAGE
    // Never destroyed: pictures in static places may outlive main.
    static auto* pages = new LargePages(cv::Mat::getStdAllocator());
    cv::Mat::setDefaultAllocator(pages);
#endif
}

}  // namespace kempt::intake
