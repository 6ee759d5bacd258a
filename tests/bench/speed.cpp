// Time and memory of `kempt measure` on a 12-megapixel JPEG against decoding that JPEG alone with libjpeg-turbo, in one
// run.
//   bench_speed KEMPT FOLDER [RUNS]    makes FOLDER/speed.jpg when it is missing; prints name,value lines
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include <fcntl.h>
#include <jpeglib.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include "render/write_photo.h"

namespace {

double now() {
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

// What any reader must do: bytes from the disk to rows of RGB.
double plain_decode(const std::string& path) {
    const double start = now();
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
    return now() - start;
}

double measure(const std::string& kempt, const std::string& photo, const std::string& marks, long& peak_kb,
               double& cpu) {
    const double start = now();
    const pid_t child = fork();
    if (child == 0) {
        const int null = open("/dev/null", O_WRONLY);
        dup2(null, 1);
        execl(kempt.c_str(), kempt.c_str(), "measure", photo.c_str(), "--marks", marks.c_str(), "--json",
              static_cast<char*>(nullptr));
        _exit(127);
    }
    int status = 0;
    rusage use{};
    wait4(child, &status, 0, &use);
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) std::exit(1);
    peak_kb = std::max(peak_kb, use.ru_maxrss);
    cpu = static_cast<double>(use.ru_utime.tv_sec + use.ru_stime.tv_sec) +
          1e-6 * static_cast<double>(use.ru_utime.tv_usec + use.ru_stime.tv_usec);
    return now() - start;
}

double median(std::vector<double> v) {
    std::nth_element(v.begin(), v.begin() + static_cast<std::ptrdiff_t>(v.size() / 2), v.end());
    return v[v.size() / 2];
}

}  // namespace

int main(int argc, char** argv) {
    if (argc < 3) return 2;
    const std::string kempt = argv[1], folder = argv[2], photo = folder + "/speed.jpg",
                      marks = folder + "/speed.marks.json";
    const int runs = argc > 3 ? std::atoi(argv[3]) : 9;
    std::filesystem::create_directories(folder);
    if (!std::filesystem::exists(marks)) {
        render::CloseUpOptions options;
        options.skin_class = 2;
        options.hair_colour = 1;
        options.px_per_mm = 31;
        options.quarter_turns = false;
        options.tilt_max_deg = 8;
        options.field_mm_x = 4032 / 31.0 + 0.01;
        options.field_mm_y = 3024 / 31.0 + 0.01;
        const render::Scene scene = render::close_up(424242, 77, render::printed_card(), options);
        const render::Shot shot = render::take(scene);
        render::write_file(photo, render::jpeg_of(shot, 92, false, {}));
        std::ofstream out(marks);
        out << "{\"view\": \"left temple\", \"edge_line\": [";
        for (size_t i = 0; i < shot.truth.edge_px.size(); i += 4)
            out << (i ? ", " : "") << "[" << shot.truth.edge_px[i].x << ", " << shot.truth.edge_px[i].y << "]";
        out << "], \"hair_side\": [" << shot.truth.hair_side_px.x << ", " << shot.truth.hair_side_px.y << "]}\n";
        std::printf("line_mm,%.1f\n", shot.truth.length_mm);
    }
    std::vector<double> plain, whole, cpus, ratio;
    long peak = 0;
    (void)plain_decode(photo);
    double cpu = 0;
    (void)measure(kempt, photo, marks, peak, cpu);
    for (int i = 0; i < runs; ++i) {  // alternating, so that a busy neighbour hits both
        plain.push_back(plain_decode(photo));
        whole.push_back(measure(kempt, photo, marks, peak, cpu));
        cpus.push_back(cpu);
        ratio.push_back(whole.back() / plain.back());
    }
    std::printf(
        "file_mb,%.2f\nplain_decode_ms,%.1f\nmeasure_ms,%.1f\nmeasure_cpu_ms,%.1f\nratio,%.2f\npeak_mb,%.0f\nruns,%d\n",
        static_cast<double>(std::filesystem::file_size(photo)) / 1e6, 1e3 * median(plain), 1e3 * median(whole),
        1e3 * median(cpus), median(ratio), static_cast<double>(peak) / 1024, runs);
    return 0;
}
