# SPDX-License-Identifier: GPL-3.0-or-later
# WICKBOOK_SANITIZE=address,undefined (or thread): the whole build, tests included.
set(WICKBOOK_SANITIZE "" CACHE STRING "Comma-separated sanitizers, empty for none")
if(WICKBOOK_SANITIZE)
  add_compile_options(-fsanitize=${WICKBOOK_SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=all)
  add_link_options(-fsanitize=${WICKBOOK_SANITIZE})
endif()
# WICKBOOK_FUZZ: the domain is watched by libFuzzer, and both sanitizers stop at the first slip.
if(WICKBOOK_FUZZ)
  if(NOT CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
    message(FATAL_ERROR "libFuzzer comes with clang: configure with the preset \"fuzz\"")
  endif()
  add_compile_options(-fsanitize=fuzzer-no-link,address,undefined -fno-omit-frame-pointer -fno-sanitize-recover=all)
  add_link_options(-fsanitize=address,undefined)
endif()
