# SPDX-License-Identifier: GPL-3.0-or-later
# What an installation holds besides the program, and the Debian package: cpack -G DEB --config build/<preset>/CPackConfig.cmake
set(app_id org.wickbook.Wickbook)
set(desktop "${CMAKE_SOURCE_DIR}/packaging/desktop")
set(icons "${CMAKE_SOURCE_DIR}/resources/icons")
install(FILES "${desktop}/${app_id}.desktop" DESTINATION "${CMAKE_INSTALL_DATADIR}/applications")
install(FILES "${desktop}/${app_id}.metainfo.xml" DESTINATION "${CMAKE_INSTALL_DATADIR}/metainfo")
install(FILES "${desktop}/${app_id}.mime.xml" DESTINATION "${CMAKE_INSTALL_DATADIR}/mime/packages" RENAME "${app_id}.xml")
install(FILES "${icons}/${app_id}.svg" DESTINATION "${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps")
install(FILES "${icons}/${app_id}-symbolic.svg" DESTINATION "${CMAKE_INSTALL_DATADIR}/icons/hicolor/symbolic/apps")
install(FILES "${icons}/application-vnd.wickbook.book.svg"
  DESTINATION "${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/mimetypes")
install(FILES "${CMAKE_SOURCE_DIR}/packaging/completion/wickbook.bash"
  DESTINATION "${CMAKE_INSTALL_DATADIR}/bash-completion/completions" RENAME wickbook)

# Manual and change log are compressed as Debian wants them, without a time of day inside.
find_program(GZIP gzip REQUIRED)
function(install_compressed source destination name)
  set(compressed "${CMAKE_CURRENT_BINARY_DIR}/package/${name}")
  add_custom_command(OUTPUT "${compressed}"
    COMMAND ${CMAKE_COMMAND} -E make_directory "${CMAKE_CURRENT_BINARY_DIR}/package"
    COMMAND ${GZIP} -9 -n -c "${source}" > "${compressed}"
    DEPENDS "${source}" VERBATIM)
  string(MAKE_C_IDENTIFIER "compress_${name}" target)
  add_custom_target(${target} ALL DEPENDS "${compressed}")
  add_dependencies(wickbook ${target})
  install(FILES "${compressed}" DESTINATION "${destination}")
endfunction()
install_compressed("${CMAKE_SOURCE_DIR}/packaging/man/wickbook.1" "${CMAKE_INSTALL_MANDIR}/man1" wickbook.1.gz)
install_compressed("${CMAKE_SOURCE_DIR}/packaging/debian/changelog" "${CMAKE_INSTALL_DOCDIR}" changelog.gz)
install(FILES "${CMAKE_SOURCE_DIR}/packaging/debian/copyright" DESTINATION "${CMAKE_INSTALL_DOCDIR}")

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME wickbook)
set(CPACK_PACKAGE_VENDOR "The Wickbook contributors")
set(CPACK_PACKAGE_CONTACT "The Wickbook contributors <contributors@wickbook.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "register for a weather station with a dry and a wet bulb")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
  "For whoever keeps a small weather station with two thermometers, one bare and
one in a wet wick: the pair is typed as read, relative humidity and dew point
follow with how sure they are, and what can't be right is said at once.

Corrections are appended with a reason and never erase what was first written;
months are reviewed, charted and handed on as pages, tables and CSV. Registers
kept on paper can be typed in or imported. A command line does the same
without a display.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
  OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_HOMEPAGE "https://wickbook.org/")
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# The picture plugin for drawings, and zones; what else a window looks and speaks better with is recommended.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6svg6, tzdata")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-translations-l10n, qt6-wayland, fonts-dejavu-core")
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
include(CPack)
