#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# The Debian package in a fresh Debian root: installed, started as the desktop entry says, the whole main job by keys,
# removed, and what is left compared with what was there before. By hand and as root: it needs debootstrap, Xvfb and
# xdotool, and fetches a base system.
#   fresh_root.sh PACKAGE.deb [ROOT made by debootstrap before]
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
package=$(realpath "$1")
root=${2:-}
if [ -z "$root" ]; then
    root=$(mktemp -d)
    debootstrap --variant=minbase bookworm "$root"
fi
trap 'umount "$root/dev" "$root/proc" 2>/dev/null || true' EXIT
mountpoint -q "$root/proc" || mount -t proc proc "$root/proc"
mountpoint -q "$root/dev" || mount --bind /dev "$root/dev"
cp /etc/resolv.conf "$root/etc/resolv.conf"
in_root() { DEBIAN_FRONTEND=noninteractive chroot "$root" "$@"; }
# What the package brings along stays when it is removed, as always; so it is installed once beforehand.
cp "$package" "$root/root/wickbook.deb"
in_root apt-get update -q
in_root apt-get install -q -y /root/wickbook.deb
in_root apt-get purge -q -y wickbook
list() { (cd "$root" && find . -xdev -not -path './home/*' -not -path './proc/*' -not -path './dev/*' \
    -not -path './var/log/*' -not -path './var/cache/*' -not -path './var/lib/dpkg/*' \
    -not -path './var/lib/apt/*' -not -path './tmp/*' | sort); }
lists=$(mktemp -d)
list >"$lists/before" 2>/dev/null
in_root apt-get install -q -y /root/wickbook.deb
started=$(sed -n 's/^Exec=\([^ ]*\).*/\1/p' "$root/usr/share/applications/org.wickbook.Wickbook.desktop" | head -1)
echo "the desktop entry starts: $started"
mkdir -p "$root/home/observer"
python3 "$here/../live/whole_job.py" --root "$root" "$started"
in_root wickbook report --book /home/observer/books/hill.wickbook --month "$(date -u +%Y-%m)" --out /home/observer/club2
in_root apt-get purge -q -y wickbook
list >"$lists/after" 2>/dev/null
diff "$lists/before" "$lists/after"
echo "removed: nothing is left but the person's own files:"
(cd "$root/home/observer" && find . -type f | sort)
test -s "$root/home/observer/books/hill.wickbook"
