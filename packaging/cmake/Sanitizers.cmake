# SPDX-License-Identifier: GPL-3.0-or-later
# WICKBOOK_SANITIZE=address,undefined (or thread): the whole build, tests included.
set(WICKBOOK_SANITIZE "" CACHE STRING "Comma-separated sanitizers, empty for none")
if(WICKBOOK_SANITIZE)
  add_compile_options(-fsanitize=${WICKBOOK_SANITIZE} -fno-omit-frame-pointer -fno-sanitize-recover=all)
  add_link_options(-fsanitize=${WICKBOOK_SANITIZE})
endif()
