# SPDX-License-Identifier: GPL-3.0-or-later
# The schema files become part of the room's library.
file(GLOB schema_files CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/resources/schema/*.sql")
set(schema_table "${CMAKE_CURRENT_BINARY_DIR}/schema_files.cpp")
add_custom_command(
  OUTPUT "${schema_table}"
  COMMAND "${CMAKE_COMMAND}" "-DFOLDER=${CMAKE_SOURCE_DIR}/resources/schema" "-DOUTPUT=${schema_table}"
          -P "${CMAKE_SOURCE_DIR}/core/store/embed_schema.cmake"
  DEPENDS ${schema_files} "${CMAKE_SOURCE_DIR}/core/store/embed_schema.cmake"
  COMMENT "Building the schema into the store"
  VERBATIM)
target_sources(wickbook_core_store PRIVATE "${schema_table}")
