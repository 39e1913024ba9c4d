#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Rules of the W3C Recommendations for CSV on the Web, held against a table and its sidecar.

    csvw_rules.py TABLE.csv            tells every rule that is broken, with its section (exit 1)
    csvw_rules.py TABLE.csv --break    breaks the files in memory, once for each rule at least, and tells every
                                       breakage that its rule did not notice (exit 1)

"V" is Metadata Vocabulary for Tabular Data, "M" Model for Tabular Data and Metadata on the Web, both of 17 December
2015. Chosen are the rules that a file of one table with a schema, a dialect and common properties can break.
Standard library only.
"""
import copy
import csv
import datetime
import io
import json
import re
import sys

BUILT_IN = set("""anyAtomicType anyURI base64Binary boolean date dateTime dateTimeStamp decimal integer long int short
byte nonNegativeInteger positiveInteger unsignedLong unsignedInt unsignedShort unsignedByte nonPositiveInteger
negativeInteger double duration dayTimeDuration yearMonthDuration float gDay gMonth gMonthDay gYear gYearMonth
hexBinary QName string normalizedString token language Name NMTOKEN xml html json time
any binary datetime number""".split())  # V 5.11.1
PREFIXES = {"dc", "dcterms", "dcat", "schema", "foaf", "prov", "skos", "org", "qb", "void", "csvw", "rdf", "rdfs", "xsd",
            "owl", "vcard", "dc11", "cc", "gr", "ical", "og", "rr", "sd", "sioc", "v", "wdr", "wdrs", "xhv", "xml",
            "rev", "rif", "grddl", "ma", "skosxl", "ctag", "as", "duv", "dqv", "oa", "time", "ssn", "sosa", "ldp",
            "jsonld", "rdfa"}  # V 5.8.1: RDFa Core Initial Context, www.w3.org/2011/rdfa-context/rdfa-1.1
TABLE = {"@context", "@id", "@type", "url", "dialect", "notes", "suppressOutput", "tableDirection", "tableSchema",
         "transformations"}
INHERITED = {"aboutUrl", "datatype", "default", "lang", "null", "ordered", "propertyUrl", "required", "separator",
             "textDirection", "valueUrl"}
SCHEMA = {"@id", "@type", "columns", "foreignKeys", "primaryKey", "rowTitles"}
COLUMN = {"@id", "@type", "name", "suppressOutput", "titles", "virtual"}
DIALECT = {"commentPrefix": str, "delimiter": str, "doubleQuote": bool, "encoding": str, "header": bool,
           "headerRowCount": int, "lineTerminators": (str, list), "quoteChar": (str, type(None)), "skipBlankRows": bool,
           "skipColumns": int, "skipInitialSpace": bool, "skipRows": int, "trim": (bool, str), "@id": str, "@type": str}
DATATYPE = {"@id", "@type", "base", "format", "length", "minLength", "maxLength", "minimum", "maximum", "minInclusive",
            "maxInclusive", "minExclusive", "maxExclusive"}
DATES = ("yyyy-MM-dd", "yyyyMMdd", "dd-MM-yyyy", "d-M-yyyy", "MM-dd-yyyy", "M-d-yyyy", "dd/MM/yyyy", "d/M/yyyy",
         "MM/dd/yyyy", "M/d/yyyy", "dd.MM.yyyy", "d.M.yyyy", "MM.dd.yyyy", "M.d.yyyy")  # M 6.4.4
TIMES = ("HH:mm:ss", "HHmmss", "HH:mm", "HHmm")
LANGUAGE = re.compile(r"[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*\Z")
NAME = re.compile(r"(?:[A-Za-z0-9_]|%[0-9A-Fa-f]{2})(?:\.?(?:[A-Za-z0-9_]|%[0-9A-Fa-f]{2}))*\Z")  # RFC 6570, 2.3
RULES = {}


def rule(section):
    def note(check):
        RULES[check.__name__] = (section, check)
        return check
    return note


class Files:
    """The two files as bytes; parsed once."""
    def __init__(self, table, sidecar, table_name):
        self.bytes, self.name = table, table_name
        self.meta = sidecar
        try:
            self.text = table.decode("utf-8")
        except UnicodeDecodeError:
            self.text = None
        rows = list(csv.reader(io.StringIO(self.text or "", newline=""), strict=False))
        self.header, self.rows = (rows[0], rows[1:]) if rows else ([], [])
        schema = sidecar.get("tableSchema") if isinstance(sidecar, dict) else None
        self.schema = schema if isinstance(schema, dict) else {}
        columns = self.schema.get("columns")
        self.columns = [c for c in columns if isinstance(c, dict)] if isinstance(columns, list) else []

    def cells(self):
        for column_number, column in enumerate(self.columns):
            for row_number, row in enumerate(self.rows, 2):
                if column_number < len(row):
                    yield row_number, column, row[column_number]


def base_of(column):
    datatype = column.get("datatype", "string")
    return datatype.get("base", "string") if isinstance(datatype, dict) else datatype


def format_of(column):
    datatype = column.get("datatype")
    return datatype.get("format") if isinstance(datatype, dict) else None


def is_common(key):
    """V 5.8: a prefixed name of the initial context or an absolute URL."""
    if re.match(r"[a-z][a-z0-9+.-]*://", key):
        return True
    prefix, colon, rest = key.partition(":")
    return bool(colon) and prefix in PREFIXES and bool(rest)


@rule("V 5.2")
def context(f):
    """Top level: the context is http://www.w3.org/ns/csvw, alone or with one object of @base and @language."""
    value = f.meta.get("@context")
    if value == "http://www.w3.org/ns/csvw":
        return
    if isinstance(value, list) and len(value) == 2 and value[0] == "http://www.w3.org/ns/csvw" and isinstance(
            value[1], dict) and value[1] and set(value[1]) <= {"@base", "@language"}:
        return
    yield f"the context is {value!r}"


@rule("V 5.2")
def language_of_context(f):
    value = f.meta.get("@context")
    if isinstance(value, list) and len(value) > 1 and isinstance(value[1], dict) and "@language" in value[1]:
        if not LANGUAGE.match(str(value[1]["@language"])):
            yield "@language is no tag of BCP 47"


@rule("V 5.4")
def url(f):
    """url is there, a link, and leads from the sidecar to the table."""
    value = f.meta.get("url")
    if not isinstance(value, str) or not value:
        yield "no url"
    elif re.search(r"[\s<>\"{}|\\^`]", value):
        yield f"{value!r} is no URL"
    elif re.sub(r"%([0-9A-Fa-f]{2})", lambda m: chr(int(m[1], 16)), value).encode("latin-1", "replace") != \
            f.name.encode("utf-8") and value != f.name:
        yield f"{value!r} does not lead to {f.name!r}"


@rule("V 5.4, 5.5, 5.6, 5.9, 5.11.2")
def types(f):
    """@type, where given, is the one of its place."""
    places = [(f.meta, "Table"), (f.schema, "Schema"), (f.meta.get("dialect") or {}, "Dialect")]
    places += [(c, "Column") for c in f.columns]
    for place, wanted in places:
        if "@type" in place and place["@type"] != wanted:
            yield f"@type {place['@type']!r} where {wanted} belongs"


@rule("V 5.3, 5.4, 5.5, 5.6")
def properties(f):
    """Every property is one of its place, an inherited one or a common one."""
    for place, own in [(f.meta, TABLE | INHERITED), (f.schema, SCHEMA | INHERITED)] + \
            [(c, COLUMN | INHERITED) for c in f.columns]:
        for key in place:
            if key not in own and not is_common(key):
                yield f"unknown property {key!r}"


@rule("V 5.1.5, 5.5")
def table_schema(f):
    """tableSchema is an object with an array of column descriptions."""
    if not f.schema or not isinstance(f.schema.get("columns"), list) or len(f.columns) != len(f.schema["columns"]):
        yield "no schema with columns that are objects"


@rule("V 5.6")
def names(f):
    """Names of columns: variable names of RFC 6570 that do not begin with '_', each once."""
    seen = set()
    for c in f.columns:
        name = c.get("name")
        if not isinstance(name, str) or not NAME.match(name) or name.startswith("_"):
            yield f"{name!r} is no name"
        if name in seen:
            yield f"{name!r} twice"
        seen.add(name)


@rule("V 5.6, 5.1.6")
def titles(f):
    """Titles are the header's cells, in order."""
    def of(c):
        t = c.get("titles")
        return [t] if isinstance(t, str) else t if isinstance(t, list) else []
    if len(f.columns) != len(f.header):
        yield f"{len(f.columns)} columns for {len(f.header)} header cells"
    for c, cell in zip(f.columns, f.header):
        if cell not in of(c):
            yield f"header {cell!r} under titles {c.get('titles')!r}"


@rule("V 5.7, 5.11.1")
def datatypes(f):
    for c in f.columns:
        datatype = c.get("datatype", "string")
        if isinstance(datatype, str) and datatype not in BUILT_IN:
            yield f"{datatype!r} is no built-in datatype"
        elif isinstance(datatype, dict):
            if datatype.get("base", "string") not in BUILT_IN:
                yield f"{datatype.get('base')!r} is no built-in datatype"
            for key in datatype:
                if key not in DATATYPE and not is_common(key):
                    yield f"unknown property of a datatype {key!r}"
        elif not isinstance(datatype, str):
            yield f"a datatype {datatype!r}"


@rule("M 6.4.4")
def date_formats(f):
    """A format of dates and times is one of the patterns that every implementation knows."""
    zone = r"(?: ?(?:XXX|XX|X|xxx|xx|x))?"
    dates, times = "|".join(map(re.escape, DATES)), "|".join(map(re.escape, TIMES))
    times = f"(?:{times})(?:\\.S+)?"
    known = {"date": f"(?:{dates}){zone}", "time": f"{times}{zone}",
             "dateTime": f"(?:yyyy-MM-ddTHH:mm(?::ss(?:\\.S+)?)?|(?:{dates}) {times}){zone}"}
    for c in f.columns:
        pattern = known.get({"datetime": "dateTime"}.get(base_of(c), base_of(c)))
        if pattern and format_of(c) is not None and not re.fullmatch(pattern, str(format_of(c))):
            yield f"{c.get('name')}: format {format_of(c)!r}"


@rule("M 6.4.3")
def boolean_formats(f):
    """The format of a truth value is two words with a bar between."""
    for c in f.columns:
        if base_of(c) == "boolean" and format_of(c) is not None:
            words = str(format_of(c)).split("|")
            if len(words) != 2 or not all(words) or words[0] == words[1]:
                yield f"{c.get('name')}: format {format_of(c)!r}"


def nulls(column):
    value = column.get("null", "")
    return value if isinstance(value, list) else [value]


@rule("M 6.4.4")
def dates(f):
    """Cells of dates and times are such, by their format or by XML Schema."""
    for number, c, cell in f.cells():
        base = base_of(c)
        if base not in ("date", "dateTime", "datetime") or cell in nulls(c):
            continue
        try:
            if base == "date":
                if not re.fullmatch(r"\d{4}-\d\d-\d\d", cell):
                    raise ValueError
                datetime.date.fromisoformat(cell)
            else:
                if not re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(Z|[+-]\d\d(\d\d)?)", cell):
                    raise ValueError
                datetime.datetime.fromisoformat(cell.replace("Z", "+00:00"))
        except ValueError:
            yield f"line {number}, {c['name']}: {cell!r}"


@rule("M 6.4.3")
def booleans(f):
    for number, c, cell in f.cells():
        if base_of(c) == "boolean" and cell not in nulls(c):
            if cell not in str(format_of(c) or "true|false").split("|") and not (
                    format_of(c) is None and cell in "01"):
                yield f"line {number}, {c['name']}: {cell!r}"


@rule("M 6.4.2")
def numbers(f):
    shapes = {"integer": r"[+-]?\d+", "decimal": r"[+-]?(\d+(\.\d*)?|\.\d+)"}
    for number, c, cell in f.cells():
        shape = shapes.get(base_of(c))
        if shape and cell not in nulls(c) and not re.fullmatch(shape, cell):
            yield f"line {number}, {c['name']}: {cell!r}"


@rule("M 6.4, V 5.7")
def required(f):
    """A required column has a value in every row."""
    for number, c, cell in f.cells():
        if c.get("required") and cell in nulls(c):
            yield f"line {number}, {c['name']}: nothing"


@rule("V 5.7")
def inherited(f):
    """Inherited properties have values of their kind."""
    kinds = {"required": bool, "ordered": bool, "null": (str, list), "lang": str, "default": str,
             "separator": (str, type(None)), "propertyUrl": str, "aboutUrl": str, "valueUrl": str}
    for place in [f.meta, f.schema] + f.columns:
        for key, kind in kinds.items():
            if key in place and not isinstance(place[key], kind):
                yield f"{key} {place[key]!r}"
        if isinstance(place.get("lang"), str) and not LANGUAGE.match(place["lang"]):
            yield f"lang {place['lang']!r}"
        if place.get("textDirection", "inherit") not in ("ltr", "rtl", "auto", "inherit"):
            yield "textDirection"


@rule("V 5.1.3")
def property_urls(f):
    """propertyUrl is a URI template with an absolute URL, so that a column means the same in every file."""
    for c in f.columns:
        value = c.get("propertyUrl")
        if isinstance(value, str) and not re.fullmatch(r"https?://[^\s<>\"\\^`]+", value):
            yield f"{c.get('name')}: {value!r}"


def key_of(f):
    key = f.schema.get("primaryKey", [])
    return [key] if isinstance(key, str) else key


@rule("V 5.1.4, 5.5")
def primary_key_columns(f):
    """The primary key names columns that are there."""
    key = key_of(f)
    named = [c.get("name") for c in f.columns]
    if "primaryKey" in f.schema and (not isinstance(key, list) or not key or any(k not in named for k in key)):
        yield f"primaryKey {key!r}"


@rule("V 5.5")
def primary_key_unique(f):
    """No two rows have the same values in its columns; a null is a value like others."""
    named = [c.get("name") for c in f.columns]
    places = [named.index(k) for k in key_of(f) if k in named]
    seen = {}
    for number, row in enumerate(f.rows, 2):
        if places and max(places) < len(row):
            value = tuple(row[p] for p in places)
            if value in seen:
                yield f"lines {seen[value]} and {number}: {value!r}"
            seen[value] = number


@rule("V 5.9")
def dialect(f):
    """Properties of the dialect are known ones with values of their kind."""
    value = f.meta.get("dialect", {})
    if not isinstance(value, dict):
        yield "the dialect is no object"
        return
    for key, setting in value.items():
        if key not in DIALECT:
            yield f"unknown {key!r}"
        elif not isinstance(setting, DIALECT[key]) or (DIALECT[key] is int and
                                                       (isinstance(setting, bool) or setting < 0)):
            yield f"{key}: {setting!r}"
    if value.get("header") is True and value.get("headerRowCount", 1) != 1:
        yield "header, and not one row of it"


@rule("M 8")
def dialect_fits(f):
    """The file is written as the dialect says: encoding, separator, quotes."""
    value = f.meta.get("dialect", {})
    if not isinstance(value, dict):
        return
    if str(value.get("encoding", "utf-8")).lower() != "utf-8" or f.text is None:
        yield "not UTF-8"
        return
    if value.get("delimiter", ",") != "," or value.get("quoteChar", '"') != '"' or not value.get("doubleQuote", True):
        yield "another separator or quote"
    if f.text.startswith("\ufeff"):
        yield "a byte order mark in the first title"
    try:
        list(csv.reader(io.StringIO(f.text, newline=""), strict=True))
    except csv.Error as error:
        yield str(error)


@rule("M 8; RFC 4180, 2.4")
def cells_per_row(f):
    for number, row in enumerate(f.rows, 2):
        if len(row) != len(f.header):
            yield f"row {number}: {len(row)} cells under {len(f.header)}"


def common_values(place, own, path):
    for key, value in place.items():
        if is_common(key):
            yield path + key, value


def looked_through(path, value, depth=0):
    """V 5.8.2: what a value of a common property may be."""
    if isinstance(value, list):
        for each in value:
            if isinstance(each, list):
                yield f"{path}: an array in an array"  # JSON-LD 1.0 knows no list of lists
            else:
                yield from looked_through(path, each, depth)
    elif isinstance(value, dict):
        if "@value" in value:
            extra = set(value) - {"@value", "@type", "@language"}
            if extra or {"@type", "@language"} <= set(value) or isinstance(value["@value"], (dict, list)):
                yield f"{path}: @value with {sorted(extra)}"
            if "@language" in value and not LANGUAGE.match(str(value["@language"])):
                yield f"{path}: @language {value['@language']!r}"
            return
        for key, each in value.items():
            if key in ("@context", "@list", "@set", "@graph", "@language"):
                yield f"{path}: {key}"
            elif key == "@type":
                for name in each if isinstance(each, list) else [each]:
                    if not isinstance(name, str) or not (is_common(name) or name in (
                            "TableGroup", "Table", "Schema", "Column", "Dialect", "Template", "Datatype")):
                        yield f"{path}: @type {name!r}"
            elif key == "@id":
                if not isinstance(each, str) or each.startswith("_:"):
                    yield f"{path}: @id {each!r}"
            elif key.startswith("@") or not is_common(key):
                yield f"{path}: {key!r} is no prefixed name"
            else:
                yield from looked_through(f"{path}/{key}", each, depth + 1)


@rule("V 5.8.1, 5.8.2")
def common_properties(f):
    """Common properties: prefixed names all the way down, types that are names, no lists of lists."""
    for place, own in [(f.meta, TABLE), (f.schema, SCHEMA)] + [(c, COLUMN) for c in f.columns]:
        for path, value in common_values(place, own, ""):
            yield from looked_through(path, value)


@rule("M 5.3; V 5.1.2")
def sidecar_name(f):
    """Found by whoever has the table only: {table}-metadata.json beside it. (The caller opens it by that name.)"""
    if "/" in f.name or not f.name:
        yield "no name"


def broken(f):
    found = {}
    for name, (section, check) in RULES.items():
        try:
            troubles = list(check(f))
        except Exception as error:  # a rule must not fall over a broken file
            troubles = [f"could not be looked at: {error!r}"]
        if troubles:
            found[name] = (section, troubles)
    return found


# --- breakages: for each the rules that must notice -------------------------------------------------------------

def breakages(f):
    def meta(rule_name, change, what):
        other = copy.deepcopy(f.meta)
        change(other)
        return rule_name, what, Files(f.bytes, other, f.name)

    def table(rule_name, change, what):
        rows = [list(f.header)] + [list(r) for r in f.rows]
        change(rows)
        out = io.StringIO(newline="")
        csv.writer(out, lineterminator="\r\n").writerows(rows)
        return rule_name, what, Files(out.getvalue().encode("utf-8"), f.meta, f.name)

    def column(name, change):
        return lambda m: change(next(c for c in m["tableSchema"]["columns"] if c["name"] == name))

    at = {name: i for i, name in enumerate(f.header)}
    set_to = lambda row, name, value: (lambda rows: rows[row].__setitem__(at[name], value))
    yield meta("context", lambda m: m.update({"@context": "http://www.w3.org/ns/csv"}), "another context")
    yield meta("context", lambda m: m.pop("@context"), "no context")
    yield meta("language_of_context", lambda m: m.update(
        {"@context": ["http://www.w3.org/ns/csvw", {"@language": "not a tag"}]}), "a language that is no tag")
    yield meta("url", lambda m: m.pop("url"), "no url")
    yield meta("url", lambda m: m.update(url="another.csv"), "another table's url")
    yield meta("url", lambda m: m.update(url="a b.csv"), "a url with a blank")
    yield meta("types", lambda m: m.update({"@type": "Tables"}), "a wrong @type")
    yield meta("types", column("unit", lambda c: c.update({"@type": "Row"})), "a column of type Row")
    yield meta("properties", lambda m: m.update(author="M"), "a property of nobody")
    yield meta("properties", column("unit", lambda c: c.update(unit="c")), "a column's property of nobody")
    yield meta("properties", lambda m: m["tableSchema"].update({"nobody:knows": 1}), "a prefix of nobody")
    yield meta("table_schema", lambda m: m["tableSchema"].update(columns="all"), "columns that are no list")
    yield meta("table_schema", lambda m: m.pop("tableSchema"), "no schema")
    yield meta("names", column("unit", lambda c: c.update(name="_unit")), "a name with '_' in front")
    yield meta("names", column("unit", lambda c: c.update(name="the unit")), "a name with a blank")
    yield meta("names", column("unit", lambda c: c.update(name="wick")), "a name twice")
    yield meta("names", column("unit", lambda c: c.pop("name")), "no name")
    yield meta("titles", column("unit", lambda c: c.update(titles="Unit")), "a title that is not the header's")
    yield meta("titles", lambda m: m["tableSchema"]["columns"].reverse(), "columns in another order")
    yield meta("titles", lambda m: m["tableSchema"]["columns"].pop(), "a column less")
    yield table("titles", lambda rows: rows[0].reverse(), "a header in another order")
    yield meta("datatypes", column("unit", lambda c: c.update(datatype="text")), "a datatype of nobody")
    yield meta("datatypes", column("time_utc", lambda c: c["datatype"].update(base="moment")), "a base of nobody")
    yield meta("datatypes", column("time_utc", lambda c: c["datatype"].update(pattern="x")), "a datatype's own word")
    yield meta("date_formats", column("time_utc", lambda c: c["datatype"].update(format="yyyy-mm-dd hh:mm")),
               "a date format of nobody")
    yield meta("boolean_formats", column("set_aside", lambda c: c["datatype"].update(format="yes")), "one word")
    yield meta("boolean_formats", column("set_aside", lambda c: c["datatype"].update(format="yes|yes")), "one twice")
    yield table("dates", set_to(1, "time_utc", "2025-02-30T09:00:00Z"), "the 30th of February")
    yield table("dates", set_to(1, "time_utc", "2025-02-03 09:00"), "a time in another form")
    yield table("dates", set_to(1, "local_date", "3.2.2025"), "a date in another form")
    yield table("booleans", set_to(1, "set_aside", "perhaps"), "neither yes nor no")
    yield table("numbers", set_to(1, "dry_used_c", "4,5"), "a decimal comma")
    yield table("numbers", set_to(1, "relative_humidity_pct", "1e2x"), "no number")
    yield table("numbers", set_to(1, "revision", "1.5"), "half a revision")
    yield table("required", set_to(1, "time_utc", ""), "no time")
    yield meta("required", column("relative_humidity_pct", lambda c: c.update(required=True)), "a humidity everywhere")
    yield meta("inherited", column("time_utc", lambda c: c.update(required="yes")), "required as a word")
    yield meta("inherited", column("note", lambda c: c.update(lang="not a tag")), "a language that is no tag")
    yield meta("inherited", column("note", lambda c: c.update(textDirection="up")), "text upwards")
    yield meta("inherited", column("note", lambda c: c.update(null=0)), "null as a number")
    yield meta("property_urls", column("dry_used_c", lambda c: c.update(propertyUrl="air_temperature")),
               "a property that is relative")
    yield meta("primary_key_columns", lambda m: m["tableSchema"].update(primaryKey=["moment"]), "a key of no column")
    yield meta("primary_key_columns", lambda m: m["tableSchema"].update(primaryKey=[]), "an empty key")
    yield table("primary_key_unique", lambda rows: rows.append(list(rows[1])), "a row twice")
    yield meta("primary_key_unique", lambda m: m["tableSchema"].update(primaryKey="unit"), "a key that is none")
    yield meta("dialect", lambda m: m["dialect"].update(separator=";"), "a dialect's own word")
    yield meta("dialect", lambda m: m["dialect"].update(headerRowCount="one"), "a count in words")
    yield meta("dialect", lambda m: m["dialect"].update(skipRows=-1), "less than no rows")
    yield meta("dialect", lambda m: m["dialect"].update(headerRowCount=2), "two rows of header")
    yield meta("dialect", lambda m: m.update(dialect="excel"), "a dialect by name")
    yield meta("dialect_fits", lambda m: m["dialect"].update(delimiter=";"), "another separator")
    yield meta("dialect_fits", lambda m: m["dialect"].update(encoding="utf-16"), "another encoding")
    yield "dialect_fits", "bytes that are no UTF-8", Files(f.bytes + b"\xff\r\n", f.meta, f.name)
    yield "dialect_fits", "a byte order mark", Files(b"\xef\xbb\xbf" + f.bytes, f.meta, f.name)
    yield "dialect_fits", "an open quote", Files(f.bytes + b'"x\r\n', f.meta, f.name)
    yield table("cells_per_row", lambda rows: rows[1].append("x"), "a cell more")
    yield table("cells_per_row", lambda rows: rows[-1].pop(), "a cell less")
    deep = lambda change: (lambda m: change(m["schema:spatialCoverage"]))
    yield meta("common_properties", deep(lambda s: s.update(name="x")), "a bare word in a common property")
    yield meta("common_properties", deep(lambda s: s.update({"@type": "Place"})), "a type that is no name")
    yield meta("common_properties", deep(lambda s: s.update({"@context": {}})), "a context within")
    yield meta("common_properties", deep(lambda s: s.update({"schema:x": {"@list": []}})), "a list of JSON-LD")
    yield meta("common_properties", deep(lambda s: s.update({"schema:x": [[1], [2]]})), "arrays in an array")
    yield meta("common_properties", lambda m: m.update({"dc:title": {"@value": "x", "dc:y": 1}}), "@value and more")
    yield meta("common_properties", lambda m: m.update({"dc:title": {"@value": "x", "@language": "?"}}),
               "a title in no language")
    yield "sidecar_name", "a table without a name", Files(f.bytes, f.meta, "")


def main():
    path = sys.argv[1]
    with open(path, "rb") as file:
        table = file.read()
    with open(path + "-metadata.json", encoding="utf-8") as file:
        sidecar = json.load(file)
    f = Files(table, sidecar, path.rsplit("/", 1)[-1])
    found = broken(f)
    for name, (section, troubles) in found.items():
        print(f"{name} ({section}): {len(troubles)}: {'; '.join(troubles[:5])}")
    if "--break" not in sys.argv:
        print(f"{len(RULES)} rules, {len(f.columns)} columns, {len(f.rows)} rows: {len(found)} broken")
        return 1 if found else 0
    tried, unnoticed, alone = set(), 0, 0
    count = 0
    for name, what, files in breakages(f):
        noticed = broken(files)
        count += 1
        tried.add(name)
        alone += set(noticed) == {name}
        if name not in noticed or any("could not be looked at" in t for _, ts in noticed.values() for t in ts):
            unnoticed += 1
            print(f"{name}: {what} was not noticed ({', '.join(noticed) or 'nothing'})")
    untried = set(RULES) - tried
    print(f"{count} breakages of {len(tried)} rules, {alone} noticed by one rule alone; not noticed {unnoticed}; "
          f"rules never broken: {', '.join(sorted(untried)) or 'none'}")
    return 1 if found or unnoticed or untried else 0


if __name__ == "__main__":
    sys.exit(main())
