# SPDX-License-Identifier: GPL-3.0-or-later
"""What a distribution would look at: desktop entry, metainfo, MIME type, manual, completion, and the Debian package
by its own checker. Every part that a tool is missing for says so; the test is skipped where all are missing.

    check_package.py SOURCES BUILD      BUILD: a build without sanitizers whose program is there
"""

import glob
import os
import re
import shutil
import subprocess
import sys
import tempfile

failures = []
left_out = []


def run(*words, **more):
    return subprocess.run(words, capture_output=True, text=True, timeout=300, **more)


def validated(what, *words):
    if shutil.which(words[0]) is None:
        left_out.append("%s (%s is not installed)" % (what, words[0]))
        return
    ran = run(*words)
    said = (ran.stdout + ran.stderr).strip()
    if ran.returncode != 0 or (words[0] == "mandoc" and said) or "hint:" in said:
        failures.append("%s: %s" % (what, said))
    else:
        print("ok: " + what)


def check_verbs(sources, program):
    told = run(program, "--help").stdout
    verbs = re.findall(r"^  ([a-z][a-z-]*) ", told.split("Subcommands:")[1].split("\n\n")[0], re.M)
    if len(verbs) < 30:
        failures.append("the program's help lists %d verbs" % len(verbs))
    with open(os.path.join(sources, "packaging/man/wickbook.1")) as manual:
        described = re.findall(r"^\.It Cm (\S+)$", manual.read(), re.M)
    for verb in set(verbs) ^ set(described):
        failures.append("the manual and the program differ in the verb " + verb)
    script = os.path.join(sources, "packaging/completion/wickbook.bash")

    def completed(*typed):
        words = ("source %s; COMP_WORDS=(%s); COMP_CWORD=%d; _wickbook; printf '%%s\\n' \"${COMPREPLY[@]}\""
                 % (script, " ".join("'%s'" % word for word in (program, *typed)), len(typed)))
        return run("bash", "-c", words).stdout.split("\n")

    offered = completed("")
    for verb in verbs:
        if verb not in offered:
            failures.append("completion does not offer the verb " + verb)
    offered = completed("derive", "--")
    for option in ("--dry", "--wet", "--elevation"):
        if option not in offered:
            failures.append("completion does not offer derive %s: %s" % (option, offered))
    print("ok: %d verbs in manual and completion" % len(verbs))


def check_mime(sources, program, folder):
    """A book is known by its bytes whatever its name, another SQLite file is not."""
    if shutil.which("update-mime-database") is None or shutil.which("gio") is None:
        left_out.append("the MIME type by magic (update-mime-database or gio is not installed)")
        return
    mime = os.path.join(folder, "share", "mime")
    os.makedirs(os.path.join(mime, "packages"))
    shutil.copy(os.path.join(sources, "packaging/desktop/org.wickbook.Wickbook.mime.xml"),
                os.path.join(mime, "packages", "wickbook.xml"))
    ran = run("update-mime-database", mime)
    if ran.returncode != 0 or "rror" in ran.stderr:
        failures.append("the MIME type is not taken: " + ran.stderr)
    environment = dict(os.environ, XDG_DATA_HOME=os.path.join(folder, "share"), HOME=folder)
    book = os.path.join(folder, "no-ending-that-tells")
    run(program, "sample", "--book", book + ".wickbook", "--years", "1")
    os.rename(book + ".wickbook", book)

    def kind(path):
        said = run("gio", "info", "-a", "standard::content-type", path, env=environment).stdout
        return said.split("standard::content-type:")[-1].strip()

    if kind(book) != "application/vnd.wickbook.book":
        failures.append("a book is taken for " + kind(book))
    other = os.path.join(folder, "other")
    with open(book, "rb") as one, open(other, "wb") as another:
        content = bytearray(one.read())
        content[68:72] = b"\0\0\0\0"
        another.write(content)
    if kind(other) == "application/vnd.wickbook.book":
        failures.append("any SQLite file is taken for a book")
    print("ok: the MIME type by magic")


def check_debian(build, folder):
    if shutil.which("cpack") is None or shutil.which("dpkg-shlibdeps") is None:
        left_out.append("the Debian package (cpack or dpkg-shlibdeps is missing)")
        return
    ran = run("cpack", "--config", os.path.join(build, "CPackConfig.cmake"), "-G", "DEB", "-B", folder)
    package = glob.glob(os.path.join(folder, "wickbook_*.deb"))
    if ran.returncode != 0 or not package:
        failures.append("no package: " + ran.stdout[-2000:] + ran.stderr[-2000:])
        return
    held = run("dpkg-deb", "-c", package[0]).stdout
    for name in ("bin/wickbook", "applications/org.wickbook.Wickbook.desktop",
                 "metainfo/org.wickbook.Wickbook.metainfo.xml", "mime/packages/org.wickbook.Wickbook.xml",
                 "scalable/apps/org.wickbook.Wickbook.svg", "symbolic/apps/org.wickbook.Wickbook-symbolic.svg",
                 "scalable/mimetypes/application-vnd.wickbook.book.svg", "man/man1/wickbook.1.gz",
                 "bash-completion/completions/wickbook", "doc/wickbook/copyright", "doc/wickbook/changelog.gz"):
        if "./usr/" not in held or name not in held:
            failures.append("the package lacks " + name)
    print("ok: the package's files")
    validated("the package by lintian", "lintian", "--allow-root", "--fail-on", "error,warning", package[0])


def main():
    sources, build = map(os.path.abspath, sys.argv[1:3])
    program = os.path.join(build, "app", "wickbook")
    desktop = os.path.join(sources, "packaging/desktop/org.wickbook.Wickbook")
    validated("the desktop entry", "desktop-file-validate", desktop + ".desktop")
    validated("the metainfo", "appstreamcli", "validate", "--no-net", desktop + ".metainfo.xml")
    validated("the manual", "mandoc", "-T", "lint", os.path.join(sources, "packaging/man/wickbook.1"))
    for icon in glob.glob(os.path.join(sources, "resources/icons/*.svg")):
        with tempfile.TemporaryDirectory() as folder:
            validated("the icon " + os.path.basename(icon), "rsvg-convert", "-o", os.path.join(folder, "i.png"), icon)
    check_verbs(sources, program)
    with tempfile.TemporaryDirectory() as folder:
        check_mime(sources, program, folder)
    with tempfile.TemporaryDirectory() as folder:
        check_debian(build, folder)
    for one in left_out:
        print("left out: " + one)
    for one in failures:
        print("failed: " + one)
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
