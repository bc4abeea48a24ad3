"""Runs the same designs through the same year in Java, C and NumPy, turn by turn, and prints how they compare.

    python3 compare.py CLASSPATH [rounds]

The class path is that of the library and of the compiled benchmarks. Needs gcc and NumPy. Of every way the best of all
rounds counts; rates are design-years per second of processor time, so that other work on the machine disturbs less, and of
wall time. All must agree in every sum: energies to 1e-9, hours of loss exactly.
"""

import pathlib
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).parent
BUILDS = {"": ["-O3", "-march=native"], "-unfused": ["-O3", "-march=native", "-ffp-contract=off"]}
SHARES = [
    ("fast path over gcc's structure of arrays (target 0.5)", "java-fast", "c-structure-of-arrays"),
    ("  the same without fused operations, as in Java", "java-fast", "c-structure-of-arrays-unfused"),
    ("fast path over the obvious Java loop (target 8)", "java-fast", "java-obvious"),
    ("fast path over gcc, one design after the other", "java-fast", "c-one-by-one"),
    ("fast path over NumPy (target 6)", "java-fast", "numpy"),
]


def lines(command, suffix=""):
    for line in subprocess.run(command, check=True, capture_output=True, text=True).stdout.splitlines():
        name, *numbers = line.split()
        yield name + suffix, [float(number) for number in numbers]


def main():
    java = ["java", "-cp", sys.argv[1], "org.daybank.core.PeerYears"]
    rounds = int(sys.argv[2]) if len(sys.argv) > 2 else 3
    best, sums = {}, {}
    with tempfile.TemporaryDirectory() as folder:
        commands = [(java, ""), ([sys.executable, str(HERE / "kernel.py")], "")]
        for suffix, flags in BUILDS.items():
            kernel = f"{folder}/kernel{suffix}"
            subprocess.run(["gcc", *flags, "-o", kernel, str(HERE / "kernel.c"), "-lm"], check=True)
            commands.append(([kernel], suffix))
        for _ in range(rounds):
            for command, suffix in commands:
                for name, (processor, wall, *found) in lines(command, suffix):
                    before = best.get(name, (0, 0))
                    best[name] = (max(before[0], processor), max(before[1], wall))
                    sums[name] = found
    print("%-32s %14s %14s" % ("design-years per second", "processor", "wall"))
    for name, (processor, wall) in sorted(best.items(), key=lambda item: -item[1][1]):
        print("%-32s %14.0f %14.0f" % (name, processor, wall))
    for text, ours, theirs in SHARES:
        print("%-56s %6.2f" % (text, best[ours][0] / best[theirs][0]))
    print("%-56s %6.2f" % ("two threads over one, wall time (target 1.9)", best["java-two-threads"][1] / best["java-fast"][1]))
    print("%-56s %6.2f" % ("cost of one design among a million over among a hundred", best["java-fast-100"][0] / best["java-fast-1000000"][0]))
    expected = sums["java-fast"]
    for name, found in sums.items():
        close = all(abs(a - b) <= 1e-9 * abs(a) for a, b in zip(expected, found))
        if name not in ("java-fast-100", "java-fast-1000000") and not (close and expected[1] == found[1]):
            sys.exit(f"{name} disagrees: {found} against {expected}")
    print("all agree")


main()
