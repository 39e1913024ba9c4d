# SPDX-License-Identifier: GPL-3.0-or-later
# Catalogues resources/translations/wickbook_<language>.ts, compiled and held in the program under :/translations.
# packaging/update-texts.sh brings new texts of the sources into them.
function(wickbook_translations room)
  set(compiled "")
  foreach(language IN LISTS ARGN)
    set(source "${CMAKE_SOURCE_DIR}/resources/translations/wickbook_${language}.ts")
    set(catalogue "${CMAKE_CURRENT_BINARY_DIR}/wickbook_${language}.qm")
    add_custom_command(OUTPUT "${catalogue}"
      COMMAND Qt6::lrelease -silent "${source}" -qm "${catalogue}"
      DEPENDS "${source}" VERBATIM)
    list(APPEND compiled "${catalogue}")
  endforeach()
  qt_add_resources(${room} translations PREFIX /translations BASE "${CMAKE_CURRENT_BINARY_DIR}" FILES ${compiled})
endfunction()
