"""The hash of a record, computed from the files of its packet as docs/record-hash.md says.

Usage: python3 recompute-record-hash.py PACKET
Nothing but the standard library, and nothing of the program that made the packet.
"""

import hashlib
import json
import sys
from decimal import Decimal
from pathlib import Path


def main(packet: Path) -> None:
    photos = {}
    for photo in read(packet / "manifest.json")["photos"]:
        file = photo["file"]
        photos[photo["name"]] = photo["sha256"] if file is None else sha256((packet / file).read_bytes())
    record = {
        "format": "lapwise-record/2",
        "photos": photos,
        "readings": read(packet / "readings.json"),
        "run": read(packet / "run.json"),
    }
    print(sha256(canonical(record).encode("utf-8")))


def read(file: Path):
    return json.loads(file.read_text("utf-8"), object_pairs_hook=each_name_once)


def each_name_once(pairs):
    if len({name for name, _ in pairs}) != len(pairs):
        raise ValueError("a name stands twice in one object")
    return dict(pairs)


def canonical(value) -> str:
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return text(value)
    if isinstance(value, (int, float)):
        return number(float(value))
    if isinstance(value, list):
        return "[" + ",".join(canonical(one) for one in value) + "]"
    names = sorted(value, key=lambda name: name.encode("utf-16-be", "surrogatepass"))
    return "{" + ",".join(text(name) + ":" + canonical(value[name]) for name in names) + "}"


SHORT = {'"': '\\"', "\\": "\\\\", "\b": "\\b", "\t": "\\t", "\n": "\\n", "\f": "\\f", "\r": "\\r"}


def text(value: str) -> str:
    def escaped(character: str) -> str:
        code = ord(character)
        if character in SHORT:
            return SHORT[character]
        return f"\\u{code:04x}" if code < 0x20 or 0xD800 <= code <= 0xDFFF else character

    return '"' + "".join(escaped(character) for character in value) + '"'


def number(value: float) -> str:
    if value == 0:
        return "0"
    # repr() has the fewest digits that read back as the same double.
    _, figures, exponent = Decimal(repr(abs(value))).as_tuple()
    digits = "".join(map(str, figures))
    n = len(digits) + exponent
    digits = digits.rstrip("0")
    k = len(digits)
    if k <= n <= 21:
        body = digits + "0" * (n - k)
    elif 0 < n <= 21:
        body = digits[:n] + "." + digits[n:]
    elif -6 < n <= 0:
        body = "0." + "0" * -n + digits
    else:
        body = digits[0] + ("." + digits[1:] if k > 1 else "") + f"e{n - 1:+d}"
    return ("-" if value < 0 else "") + body


def sha256(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()


if __name__ == "__main__":
    main(Path(sys.argv[1]))
