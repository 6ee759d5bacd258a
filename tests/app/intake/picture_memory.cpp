#include "intake/picture_memory.h"

#include <boost/test/unit_test.hpp>
#include <cstdint>
#include <opencv2/core.hpp>

BOOST_AUTO_TEST_SUITE(picture_memory)

BOOST_AUTO_TEST_CASE(pictures_of_every_size_are_laid_out_as_before_and_given_back) {
    kempt::intake::use_large_pages();
    for (const cv::Size size : {cv::Size(3, 2), cv::Size(700, 500), cv::Size(1024, 683), cv::Size(4032, 3024)})
        for (const int type : {CV_8UC1, CV_8UC3, CV_32FC3}) {
            cv::Mat whole(size, type, cv::Scalar::all(7));
            BOOST_TEST_REQUIRE(whole.isContinuous());
            BOOST_TEST(whole.step[0] == static_cast<size_t>(size.width) * whole.elemSize());
            cv::Mat part = whole(cv::Rect(1, 1, size.width - 2, 1));
            part.setTo(cv::Scalar::all(9));
            const cv::Mat copy = whole.clone();
            whole.release();  // the part still holds the pixels
            BOOST_TEST(cv::norm(part, copy(cv::Rect(1, 1, size.width - 2, 1)), cv::NORM_INF) == 0);
            BOOST_TEST(cv::sum(copy.row(0))[0] == 7.0 * size.width);
            cv::Mat grown = copy;
            grown.create(size.height + 1, size.width, type);
            grown.setTo(cv::Scalar::all(1));
            BOOST_TEST(cv::sum(grown.row(size.height))[0] == size.width);
        }
    const int three[] = {40, 300, 200};
    cv::Mat block(3, three, CV_32F, cv::Scalar(2));
    BOOST_TEST(block.step[0] == size_t{300 * 200 * 4});
    BOOST_TEST(cv::sum(block.reshape(1, 40 * 300))[0] == 2.0 * 40 * 300 * 200);
}

BOOST_AUTO_TEST_CASE(memory_that_a_large_picture_gave_back_serves_the_next_of_its_size) {
    kempt::intake::use_large_pages();
    cv::Mat first(3024, 4032, CV_8UC3, cv::Scalar::all(7));
    const uchar* const there = first.data;
    first.release();
    const cv::Mat other(1024, 1500, CV_8UC3), next(3024, 4032, CV_8UC3), more(3024, 4032, CV_8UC3);
    BOOST_TEST(next.data == there);
    BOOST_TEST(more.data != there);
    BOOST_TEST(other.data != there);
}

BOOST_AUTO_TEST_CASE(a_picture_over_foreign_bytes_leaves_them_where_they_are) {
    kempt::intake::use_large_pages();
    std::vector<unsigned char> bytes(3'000'000, 5);
    const cv::Mat over(1000, 3000, CV_8U, bytes.data());
    BOOST_TEST(over.data == bytes.data());
    BOOST_TEST(over.clone().at<unsigned char>(999, 2999) == 5);
}

BOOST_AUTO_TEST_SUITE_END()
