#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# Brings the texts of the sources into the catalogues of resources/translations: new ones come in unfinished, ones
# that are gone are dropped. Translate them with any editor of Qt Linguist files.
#   update-texts.sh --into FOLDER   writes the catalogues as they would be there instead, for a comparison
set -euo pipefail
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$top"
lupdate=$(command -v lupdate || echo /usr/lib/qt6/bin/lupdate)
into=resources/translations
if [ "${1:-}" = --into ]; then
    into=$2
    cp resources/translations/wickbook_*.ts "$into/"
fi
for language in de fr; do
    # A time limit: lupdate can hang on a text with a call among its arguments.
    timeout 120 "$lupdate" -silent -no-obsolete -locations none -I . ui app \
        -source-language en -target-language "$language" -ts "$into/wickbook_$language.ts"
done
