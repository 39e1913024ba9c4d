# SPDX-License-Identifier: GPL-3.0-or-later
# A room is one folder and one library. What it links is what it may know:
# the arrows of DEVELOPERS.md stand here as link lines, and tests/architecture
# holds the includes against the same list.

# WICKBOOK_FEWER_UNITS puts several files of a room into one compilation: a cold build takes half the time, and a
# change costs more. Names in unnamed namespaces are therefore unique within a room.
option(WICKBOOK_FEWER_UNITS "Compile several files of a room together" OFF)

# wickbook_room(<folder relative to the top> LINKS <targets a user of the room sees>
#               PRIVATE_LINKS <targets only the room itself uses>)
function(wickbook_room folder)
  cmake_parse_arguments(ROOM "" "" "LINKS;PRIVATE_LINKS" ${ARGN})
  string(REPLACE "/" "_" name "wickbook_${folder}")
  file(GLOB sources CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/${folder}/*.cpp" "${CMAKE_SOURCE_DIR}/${folder}/*.h")
  file(GLOB units CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/${folder}/*.cpp")
  if(NOT units) # a room of headers only
    add_library(${name} INTERFACE)
    target_include_directories(${name} INTERFACE "${CMAKE_SOURCE_DIR}")
    target_link_libraries(${name} INTERFACE ${ROOM_LINKS} ${ROOM_PRIVATE_LINKS})
    return()
  endif()
  add_library(${name} STATIC ${sources})
  set_target_properties(${name} PROPERTIES UNITY_BUILD ${WICKBOOK_FEWER_UNITS} UNITY_BUILD_BATCH_SIZE 8)
  target_include_directories(${name} PUBLIC "${CMAKE_SOURCE_DIR}")
  target_link_libraries(${name} PUBLIC ${ROOM_LINKS} PRIVATE ${ROOM_PRIVATE_LINKS} wickbook_warnings)
endfunction()

# wickbook_test(<folder under tests/> LINKS <targets>): one program of GoogleTest cases per room.
function(wickbook_test folder)
  cmake_parse_arguments(TEST "" "" "LINKS" ${ARGN})
  string(REPLACE "/" "_" name "test_${folder}")
  file(GLOB sources CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/tests/${folder}/*.cpp" "${CMAKE_SOURCE_DIR}/tests/${folder}/*.h")
  add_executable(${name} ${sources})
  target_include_directories(${name} PRIVATE "${CMAKE_SOURCE_DIR}")
  target_compile_definitions(${name} PRIVATE
    WICKBOOK_TEST_DATA="${CMAKE_SOURCE_DIR}/tests"
    WICKBOOK_SOURCE_DIR="${CMAKE_SOURCE_DIR}"
    WICKBOOK_DATASETS="${CMAKE_SOURCE_DIR}/../shared/datasets")
  target_link_libraries(${name} PRIVATE ${TEST_LINKS} GTest::gmock GTest::gtest_main wickbook_warnings)
  gtest_discover_tests(${name} DISCOVERY_TIMEOUT 120 PROPERTIES TIMEOUT 300)
endfunction()
