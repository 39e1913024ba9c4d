# SPDX-License-Identifier: GPL-3.0-or-later
# One interface target that every room links privately: the warnings we live by.
option(WICKBOOK_WERROR "Treat warnings as errors" ON)

add_library(wickbook_warnings INTERFACE)
target_compile_options(wickbook_warnings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wold-style-cast
  -Wnon-virtual-dtor -Woverloaded-virtual -Wcast-align -Wformat=2 -Wunused
  -Wdouble-promotion -Wimplicit-fallthrough)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
  # g++ 12 takes assigning a literal to a std::string for overlapping memory when it optimises (GCC bug 105651).
  target_compile_options(wickbook_warnings INTERFACE -Wno-restrict)
endif()
if(WICKBOOK_WERROR)
  target_compile_options(wickbook_warnings INTERFACE -Werror)
endif()
