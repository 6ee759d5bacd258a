#include "bench/support/timing.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <iterator>

#include <fcntl.h>
#include <jpeglib.h>
#include <sched.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace bench {

double now_s() {
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

double median(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

Child run_child(const std::vector<std::string>& command, int cores) {
    std::vector<char*> words;
    for (const std::string& word : command) words.push_back(const_cast<char*>(word.c_str()));
    words.push_back(nullptr);
    const double start = now_s();
    const pid_t child = fork();
    if (child == 0) {
        if (cores > 0) {
            cpu_set_t allowed, some;
            sched_getaffinity(0, sizeof allowed, &allowed);
            CPU_ZERO(&some);
            for (int cpu = 0, given = 0; cpu < CPU_SETSIZE && given < cores; ++cpu)
                if (CPU_ISSET(cpu, &allowed)) CPU_SET(cpu, &some), ++given;
            sched_setaffinity(0, sizeof some, &some);
        }
        dup2(open("/dev/null", O_WRONLY), 1);
        execvp(words[0], words.data());
        _exit(127);
    }
    int status = 0;
    rusage use{};
    wait4(child, &status, 0, &use);
    Child out;
    out.wall_s = now_s() - start;
    out.cpu_s = static_cast<double>(use.ru_utime.tv_sec + use.ru_stime.tv_sec) +
                1e-6 * static_cast<double>(use.ru_utime.tv_usec + use.ru_stime.tv_usec);
    out.peak_kb = use.ru_maxrss;
    out.good = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    return out;
}

double plain_decode_s(const std::string& path) {
    const double start = now_s();
    std::ifstream in(path, std::ios::binary);
    const std::vector<unsigned char> bytes{std::istreambuf_iterator<char>(in), {}};
    jpeg_decompress_struct d;
    jpeg_error_mgr errors;
    d.err = jpeg_std_error(&errors);
    jpeg_create_decompress(&d);
    jpeg_mem_src(&d, bytes.data(), bytes.size());
    jpeg_read_header(&d, TRUE);
    d.out_color_space = JCS_RGB;
    jpeg_start_decompress(&d);
    std::vector<unsigned char> pixels(static_cast<size_t>(d.output_width) * d.output_height * 3);
    while (d.output_scanline < d.output_height) {
        unsigned char* row = pixels.data() + static_cast<size_t>(d.output_scanline) * d.output_width * 3;
        jpeg_read_scanlines(&d, &row, 1);
    }
    jpeg_finish_decompress(&d);
    jpeg_destroy_decompress(&d);
    return now_s() - start;
}

}  // namespace bench
