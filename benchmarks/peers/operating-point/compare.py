#!/usr/bin/env python3
"""Builds all peers of the operating point, checks that they agree, and times them in turns.

usage: /usr/bin/python3 compare.py [--minutes 6] [--rows 10000000] [--folder FOLDER] [--write FILE] [--quick]

Each peer is a process that waits while another one works. A round asks every peer once; least times of all rounds count, and
are given as ratios. What was built or written before is used again, and times found so far survive a break: they lie beside
the columns and are taken up again by the next start. Missing peers are named and left out.
"""

import argparse
import json
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import time

import numpy as np

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[2]
NATIVE = "-std=c++20 -O3 -march=native -pthread -Wno-uninitialized -Wno-maybe-uninitialized".split()
CPP = {
    "scalar": [],
    "packed": "-DTM_PACKED -ffast-math -fopenmp-simd -mprefer-vector-width=512".split(),
    "hand": "-DTM_LANES -mprefer-vector-width=512".split(),
    "counting": "-DTM_LANES -DTM_COUNT -mprefer-vector-width=512".split(),
}
CHECKED_ROWS = 20000
AGREEMENT = 1e-12
# A slide is the length of what lies between two curves that nearly touch: it is compared with a millimetre where it is less.
SMALL = {"BeltSlide": 1e-3}
IN_CACHE = 2048


class Peer:
    def __init__(self, key, title, command, rows, cached=40, threads=False, environment=None):
        self.key, self.title, self.command = key, title, command
        self.rows, self.cached, self.threads = rows, cached, threads
        self.environment = environment or {}
        self.process, self.trouble, self.about = None, None, ""

    def start(self):
        try:
            self.process = subprocess.Popen(
                self.command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, bufsize=1,
                env=os.environ | self.environment,
            )  # fmt: skip
            self.about = self.ask("about")
        except (OSError, RuntimeError) as error:
            self.trouble = str(error)

    def ask(self, line):
        try:
            self.process.stdin.write(line + "\n")
            self.process.stdin.flush()
            answer = self.process.stdout.readline().strip()
        except BrokenPipeError:
            answer = ""
        if not answer:
            raise RuntimeError(self.process.stderr.read().strip()[-400:] or "ended without a word")
        return answer

    def time(self, line):
        return [float(word) for word in self.ask(line).split()]

    def stop(self):
        if self.process and self.process.poll() is None:
            try:
                self.process.stdin.write("quit\n")
                self.process.stdin.close()
                self.process.wait(20)
            except (BrokenPipeError, subprocess.TimeoutExpired):
                self.process.kill()


def say(*words):
    print(*words, file=sys.stderr, flush=True)


def build(folder):
    tools = {}
    sources = [HERE / "cpp" / name for name in os.listdir(HERE / "cpp")]
    newest = max(source.stat().st_mtime for source in sources)
    for name, flags in CPP.items():
        program = folder / f"cpp-{name}"
        if not program.exists() or program.stat().st_mtime < newest:
            say(f"building C++, {name}")
            command = ["g++", *NATIVE, *flags, str(HERE / "cpp/main.cpp"), "-o", str(program)]
            if not shutil.which("g++"):
                say("g++ is missing: no peers in C++")
                continue
            subprocess.run(command, check=True)
        tools[name] = str(program)
    say("building C#")
    subprocess.run(
        ["dotnet", "build", "-c", "Release", "--nologo", "-v", "q", str(HERE / "csharp")], check=True, stdout=sys.stderr
    )
    tools["csharp"] = str(HERE / "csharp/bin/Release/net10.0/TreadmillMech.Benchmarks.dll")
    return tools


def peers(tools, data, rows):
    dotnet = ["dotnet", tools["csharp"], str(data)]
    python = ["/usr/bin/python3", str(HERE / "python/serve.py"), str(data)]
    narrow = {"DOTNET_EnableAVX512": "0", "DOTNET_EnableAVX512F": "0"}
    found = [
        Peer("batch", "the library's batch, C#", [*dotnet, "batch"], rows, threads=True),
        Peer("batch256", "the same, AVX-512 off", [*dotnet, "batch"], rows, environment=narrow),
        Peer("lanes", "the library's model on eight lanes, nothing around it", [*dotnet, "lanes"], rows),
        Peer("real", "the library's model on plain numbers", [*dotnet, "real"], min(rows, 2_000_000), 12),
        Peer("slope", "the same with an exact derivative", [*dotnet, "slope"], min(rows, 1_000_000), 8),
        Peer("view", "plain numbers with a typed view of the result", [*dotnet, "view"], min(rows, 2_000_000), 12),
        Peer("typed", "parts and demand built of quantities, results read as quantities", [*dotnet, "typed"],
             min(rows, 500_000), 6),
        Peer("quantities", "quantities throughout, C#", [*dotnet, "quantities"], min(rows, 50_000), 1),
        Peer("chunked", "numpy, in chunks", [*python, "numpy", "4096"], min(rows, 500_000), 2),
        Peer("whole", "numpy, whole arrays", [*python, "numpy", "0"], min(rows, 500_000), 2),
        Peer("pint", "quantities on numpy arrays", [*python, "pint", "65536"], min(rows, 65_536), 0),
    ]  # fmt: skip
    titles = {
        "scalar": "C++, one number",
        "packed": "C++, vectorised by the compiler, vector libm",
        "hand": "C++, 512-bit registers by hand",
    }
    for name in reversed(CPP):
        if name in tools and name in titles:
            few = min(rows, 2_000_000) if name == "scalar" else rows
            found.insert(0, Peer(name, titles[name], [tools[name], str(data)], few, threads=name == "hand"))
    return found


def agree(all_peers, data, folder):
    """Writes the same rows by every peer and compares with the scalar one (or the first there is)."""
    outputs = [line.split()[1] for line in (data / "manifest.txt").read_text().splitlines() if line[:6] == "output"]
    reference, lines, bad = None, [], False
    for peer in sorted(all_peers, key=lambda one: one.key != "scalar"):
        if peer.trouble:
            continue
        try:
            to = folder / "out" / peer.key
            to.mkdir(parents=True, exist_ok=True)
            peer.ask(f"write {CHECKED_ROWS} {to}")
            values = {name: np.fromfile(to / f"{name}.f64") for name in outputs}
        except (RuntimeError, OSError) as error:
            peer.trouble = str(error)
            continue
        if reference is None:
            reference = peer, values
            slips = np.minimum(values["BeltMargin"], values["DriveBeltMargin"]) < 1
            say(f"rows that slip: {slips.mean():.2%}; blocks of eight with one: {slips.reshape(-1, 8).any(1).mean():.2%}")
            continue
        worst, where = 0.0, ""
        for name in outputs:
            expected = reference[1][name]
            scale = np.maximum(np.abs(expected), SMALL.get(name, 1e-300))
            with np.errstate(invalid="ignore"):
                apart = np.nanmax(np.abs(values[name] - expected) / scale)
            if np.isnan(values[name]).any() != np.isnan(expected).any():
                apart = np.inf
            if apart > worst:
                worst, where = float(apart), name
        lines.append((peer.key, worst, where))
        if not worst <= AGREEMENT:
            bad = True
            say(f"DISAGREES: {peer.title}: {worst:.1e} in {where}")
    say("agreement with one number in C++, relative: " + ", ".join(f"{k} {w:.0e}" for k, w, _ in lines))
    return lines, bad


class Times:
    """Least times, kept in a file so that a break loses nothing."""

    def __init__(self, path, machine, built):
        self.path, self.machine, self.built = path, machine, built
        self.values, self.rounds = {}, 0
        if path.exists():
            kept = json.loads(path.read_text())
            if (kept.get("machine"), kept.get("built")) == (machine, built):
                self.values, self.rounds = kept["values"], kept["rounds"]

    def add(self, key, value):
        self.values[key] = min(value, self.values.get(key, value))

    def save(self):
        kept = {"machine": self.machine, "built": self.built, "rounds": self.rounds, "values": self.values}
        self.path.write_text(json.dumps(kept))

    def get(self, key):
        return self.values.get(key)


def one_round(all_peers, times):
    for peer in all_peers:
        if peer.trouble:
            continue
        try:
            if peer.cached:
                line = f"cache {IN_CACHE} {peer.cached}"
                times.add(f"{peer.key} cache", peer.time(line)[0])
                times.add(f"{peer.key} cache", peer.time(line)[0])
            found = peer.time(f"memory {peer.rows} 1")
            times.add(f"{peer.key} memory", found[0])
            if len(found) > 1:
                times.add(f"{peer.key} bytes", found[1])
            if peer.threads:
                times.add(f"{peer.key} two", peer.time(f"memory {peer.rows} 2")[0])
            if peer.key in ("batch", "chunked"):
                draws = 1_000_000 if peer.key == "batch" else 200_000
                found = peer.time(f"montecarlo {draws} 1")
                times.add(f"{peer.key} draw", found[0])
                times.values[f"{peer.key} percentiles"] = found[1:]
        except RuntimeError as error:
            peer.trouble = str(error)
            say(f"{peer.title}: {peer.trouble}")
    times.rounds += 1
    times.save()


def machine_of():
    model = next(
        (l.split(":", 1)[1].strip() for l in open("/proc/cpuinfo") if l.startswith("model name")), "unknown processor"
    )
    flags = next((l for l in open("/proc/cpuinfo") if l.startswith("flags")), "")
    wide = "with AVX-512" if "avx512f" in flags else "without AVX-512"
    return f"{model}, {os.cpu_count()} cores seen, {wide}"


def number(value, digits=3):
    return "" if value is None else f"{value:.{digits}g}" if value < 1000 else f"{value:.0f}"


def roofline(tools, data, rows, times):
    """Instructions a row in blocks of eight, what they take at least, and the bytes that pass."""
    if "hand" not in tools or "counting" not in tools:
        return []

    def ask(name, count):
        peer = Peer(name, name, [tools[name], str(data)], rows)
        peer.start()
        answer = peer.time(f"limits {count} 1")
        peer.stop()
        return answer

    sums, products, fused, divisions, roots, choices, others = ask("counting", min(rows, 40_000))
    one, division, root, passing = ask("hand", rows)
    manifest = (data / "manifest.txt").read_text().splitlines()
    columns = sum(line.endswith(" column") for line in manifest), sum(line[:6] == "output" for line in manifest)
    arithmetic = (sums + products + fused) * one
    divided = divisions * division + roots * root
    hand = times.get("hand cache")
    share = f" The 512-bit C++ takes {hand / max(arithmetic, divided):.1f} times the larger of both." if hand else ""
    return [
        "",
        f"Roofline of the algorithm, a row in a block of eight: {sums:.1f} sums, {products:.1f} products, {fused:.1f} fused, "
        f"{choices:.1f} comparisons and choices, {others:.1f} others, {divisions:.2f} divisions and {roots:.2f} roots: "
        f"512-bit instructions over eight, as the text is written (the compiler drops some). {8 * columns[0]} bytes in and {8 * columns[1]} out.",
        f"At {one:.2f} ns for sums, products and fused ones, {division:.2f} ns a division and {root:.2f} ns a root, measured "
        f"here with nothing to wait for: {arithmetic:.1f} ns of arithmetic and {divided:.1f} ns of the divider a row, side by "
        f"side.{share} The columns alone, in and out past the caches: {passing:.1f} ns a row.",
    ]


def goals(times):
    t = times.get

    def over(a, b):
        return t(a) / t(b) if t(a) and t(b) else None

    return [
        ("batch over 512-bit C++ by hand, in cache", over("batch cache", "hand cache"), "at most", 1.2),
        ("batch over 512-bit C++ by hand, from memory", over("batch memory", "hand memory"), "at most", 1.15),
        ("batch over C++ with a vector libm, in cache", over("batch cache", "packed cache"), "at most", 0.8),
        ("numpy in chunks over batch, from memory", over("chunked memory", "batch memory"), "at least", 5),
        ("typed view of the result over plain numbers", over("view cache", "real cache"), "at most", 1.15),
        ("all typed over plain numbers", over("typed cache", "real cache"), "at most", 2.5),
        ("a derivative over a value, plain numbers", over("slope cache", "real cache"), "at most", 1.8),
        ("batch: one thread over two", over("batch memory", "batch two"), "at least", 1.8),
        ("batch with AVX-512 off over with it, in cache", over("batch256 cache", "batch cache"), "at most", 1.8),
        ("batch: bytes allocated a row", t("batch bytes"), "at most", 0.01),
        ("Monte Carlo: numpy in chunks over the library", over("chunked draw", "batch draw"), "at least", 5),
    ]


def page(all_peers, times, agreement, minutes, bounds):
    agreed = {key: worst for key, worst, _ in agreement}
    best = times.get("hand cache") or times.get("batch cache")
    lines = [
        f"Machine: {times.machine}. {times.rounds} rounds in {minutes:.0f} minutes; least times.",
        "",
        "| | ns a row in cache | from memory | two threads | over 512-bit C++, in cache | agrees to |",
        "|---|---|---|---|---|---|",
    ]
    for peer in all_peers:
        if peer.trouble:
            lines.append(f"| {peer.title} | not run: {peer.trouble.splitlines()[-1][:80]} | | | | |")
            continue
        cache, memory = times.get(f"{peer.key} cache"), times.get(f"{peer.key} memory")
        ratio = f"{(cache or memory) / best:.2f}" if best and (cache or memory) else ""
        worst = f"{agreed[peer.key]:.0e}" if peer.key in agreed else ""
        lines.append(
            f"| {peer.title} | {number(cache)} | {number(memory)} | {number(times.get(peer.key + ' two'))} | {ratio} | {worst} |"
        )
    lines += ["", "| goal | measured | wanted | |", "|---|---|---|---|"]
    for title, value, kind, limit in goals(times):
        met = "" if value is None else "met" if (value <= limit if kind == "at most" else value >= limit) else "missed"
        lines.append(f"| {title} | {number(value)} | {kind} {limit:g} | {met} |")
    draw = times.get("batch draw"), times.get("chunked draw")
    if all(draw):
        shown = ["; ".join(f"{p:.3f}" for p in times.get(f"{k} percentiles")) for k in ("batch", "chunked")]
        lines += [
            "",
            f"Monte Carlo, twelve inputs, one thread: {number(draw[0])} ns a draw by the library, {number(draw[1])} by numpy; "
            f"2.5th, 50th and 97.5th percentile of the belt's margin {shown[0]} and {shown[1]}.",
        ]
    lines += bounds
    lines += ["", "Versions: " + "; ".join(sorted({peer.about for peer in all_peers if peer.about})) + "."]
    flags = " ".join(NATIVE[:-2])
    lines += [
        f"Flags: `{flags}`; by the compiler also `{' '.join(CPP['packed'])}`; by hand `{' '.join(CPP['hand'])}`.",
        "",
    ]
    return "\n".join(lines)


def put(text, path):
    """Between the marks of a page, or the whole of a new file."""
    begin, end = "<!-- begin: measured -->", "<!-- end: measured -->"
    old = path.read_text() if path.exists() else f"{begin}\n{end}\n"
    head, rest = old.split(begin, 1)
    path.write_text(f"{head}{begin}\n\n{text}\n{end}{rest.split(end, 1)[1]}")


def main():
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("--minutes", type=float, default=6)
    words.add_argument("--rows", type=int, default=10_000_000)
    words.add_argument("--folder", type=pathlib.Path, default=pathlib.Path(tempfile.gettempdir()) / "operating-point-peers")
    words.add_argument("--write", type=pathlib.Path, help="page whose measured part is renewed")
    words.add_argument("--quick", action="store_true", help="one round on few rows: does it run at all?")
    words.add_argument("--afresh", action="store_true", help="forget the times of earlier starts")
    asked = words.parse_args()
    begin = time.monotonic()
    rows = 40_000 if asked.quick else asked.rows
    folder = asked.folder
    folder.mkdir(parents=True, exist_ok=True)
    tools = build(folder)
    data = folder / f"columns-{rows}"
    say("columns")
    subprocess.run(["/usr/bin/python3", str(HERE / "make-data.py"), str(data), str(rows)], check=True)
    kept = folder / f"times-{rows}.json"
    if asked.afresh or asked.quick:
        kept.unlink(missing_ok=True)
    # What was built anew is timed anew.
    library = pathlib.Path(tools["csharp"]).with_name("TreadmillMech.dll")
    built = max(pathlib.Path(one).stat().st_mtime for one in [*tools.values(), library])
    times = Times(kept, machine_of(), built)
    found = peers(tools, data, rows)
    try:
        for peer in found:
            peer.start()
        agreement, bad = agree(found, data, folder)
        # The first round warms up: the runtime compiles, pages are given.
        one_round(found, Times(folder / "warming.json", "", time.time())) if not asked.quick else None
        ends = begin + 60 * asked.minutes
        longest = 0.0
        while True:
            start = time.monotonic()
            one_round(found, times)
            longest = max(longest, time.monotonic() - start)
            say(f"round {times.rounds}: {time.monotonic() - start:.0f} s")
            if asked.quick or time.monotonic() + longest > ends:
                break
    finally:
        for peer in found:
            peer.stop()
    bounds = roofline(tools, data, rows, times)
    text = page(found, times, agreement, (time.monotonic() - begin) / 60, bounds)
    print(text)
    if asked.write:
        put(text, asked.write)
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
