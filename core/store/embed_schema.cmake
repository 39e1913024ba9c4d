# SPDX-License-Identifier: GPL-3.0-or-later
# Run at build time: writes every resources/schema/NNNN_*.sql into one C++ table, so that the program carries
# its schema and no file can go missing beside it.
# cmake -DFOLDER=<resources/schema> -DOUTPUT=<file.cpp> -P embed_schema.cmake
file(GLOB files "${FOLDER}/[0-9][0-9][0-9][0-9]_*.sql")
list(SORT files)
set(rows "")
set(expected 1)
foreach(file IN LISTS files)
  get_filename_component(name "${file}" NAME)
  string(SUBSTRING "${name}" 0 4 digits)
  string(REGEX REPLACE "^0+" "" number "${digits}")
  if(NOT number EQUAL expected)
    message(FATAL_ERROR "${name}: expected number ${expected}, schema files are numbered without gaps")
  endif()
  math(EXPR expected "${expected} + 1")
  # Hexadecimal, so that neither semicolons nor quotes of the SQL can be misread on the way.
  file(READ "${file}" hex HEX)
  string(REGEX REPLACE "(................................)" "\\1\"\n    \"" hex "${hex}")
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "\\\\x\\1" hex "${hex}")
  string(APPEND rows "    Migration{${number}, std::string_view{\n    \"${hex}\"}},\n")
endforeach()
if(rows STREQUAL "")
  message(FATAL_ERROR "no schema files in ${FOLDER}")
endif()
set(text "// Generated from resources/schema by core/store/embed_schema.cmake.
#include \"core/store/schema.h\"

namespace wickbook::store {

namespace {
constexpr Migration kMigrations[] = {
${rows}};
} // namespace

std::span<const Migration> migrations() { return kMigrations; }

} // namespace wickbook::store
")
file(WRITE "${OUTPUT}" "${text}")
