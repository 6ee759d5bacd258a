# A room is a folder that is its own static library. Its link line is the list of rooms it may include from,
# so a wrong include fails at link or at include time: every room sees only what it names.

add_library(kempt_strict INTERFACE)
target_compile_options(kempt_strict INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion
                                              -Wnon-virtual-dtor -Woverloaded-virtual -Werror)
if(KEMPT_SANITIZE)
  target_compile_options(kempt_strict INTERFACE -fsanitize=address,undefined -fno-omit-frame-pointer)
  target_link_options(kempt_strict INTERFACE -fsanitize=address,undefined)
endif()

# kempt_room(name [QT_OBJECTS] [USES libs...]): every .cpp of the current folder and the folders below it.
function(kempt_room name)
  cmake_parse_arguments(ROOM "QT_OBJECTS" "PCH" "USES" ${ARGN})
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS *.cpp *.h *.qrc)
  add_library(kempt_${name} STATIC ${sources})
  target_include_directories(kempt_${name} PUBLIC ${CMAKE_SOURCE_DIR}/analysis ${CMAKE_SOURCE_DIR}/app)
  target_link_libraries(kempt_${name} PUBLIC ${ROOM_USES} PRIVATE kempt_strict)
  set_target_properties(kempt_${name} PROPERTIES LINKER_LANGUAGE CXX POSITION_INDEPENDENT_CODE ON)
  if(ROOM_QT_OBJECTS)
    set_target_properties(kempt_${name} PROPERTIES AUTOMOC ON AUTORCC ON)
  endif()
  if(ROOM_PCH)
    target_precompile_headers(kempt_${name} PRIVATE ${ROOM_PCH})
  endif()
endfunction()

# What a test prints: what failed and the sum, so that a short extract of a long run still says it. The XML file has
# every case with its time.
function(kempt_test_prints out name)
  set(${out} "--logger=HRF,error,stdout:XML,test_suite,${CMAKE_CURRENT_BINARY_DIR}/${name}.xml" --color_output=no
      --report_level=short PARENT_SCOPE)
endfunction()

# kempt_test(name USES libs...): one Boost.Test executable of the current folder's .cpp files, run through ctest.
function(kempt_test name)
  cmake_parse_arguments(TEST "QT_OBJECTS" "" "USES" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS *.cpp *.h)
  add_executable(test_${name} ${sources})
  target_link_libraries(test_${name} PRIVATE ${TEST_USES} kempt_strict kempt_boost_main Boost::unit_test_framework)
  target_include_directories(test_${name} PRIVATE ${CMAKE_SOURCE_DIR}/analysis ${CMAKE_SOURCE_DIR}/app ${CMAKE_SOURCE_DIR}/tests)
  if(TEST_QT_OBJECTS)
    set_target_properties(test_${name} PROPERTIES AUTOMOC ON)
  endif()
  kempt_test_prints(prints ${name})
  add_test(NAME ${name} COMMAND test_${name} ${prints} WORKING_DIRECTORY ${CMAKE_SOURCE_DIR})
  set_tests_properties(${name} PROPERTIES ENVIRONMENT "QT_QPA_PLATFORM=offscreen;OMP_NUM_THREADS=2")
endfunction()
