"""The same designs through the same year as PeerYears.java, in NumPy: whole arrays in blocks that stay in cache, every
operation in place, so that nothing is allocated in an hour."""

import time

import numpy as np

HOURS, LANES, DESIGNS = 8760, 4096, 4096
EFFICIENCY, CAPACITY, STORED, TAPER, MOST, LEAK, BASE, REACH = 0.97, 14336.0, 0.95, 0.99, 7000.0, 4e-5, 0.2, 0.9


def year():
    dice, day, watts, asked = 1, 0.0, [], []
    for hour in range(HOURS):
        if hour % 24 == 0:
            dice = (1103515245 * dice + 12345) % 2147483648
            day = 0.1 + 0.9 * dice / 2147483648.0
        noon = abs(hour % 24 - 12)
        season = 0.6 + 0.4 * (abs(hour - 4380) / 4380.0 * -2 + 1)
        watts.append(350 * day * season * (1 - noon * noon / 36) if noon < 6 else 0.0)
        asked.append(180.0 if hour % 24 >= 17 else 100.0)
    return watts, asked


def block(modules, banks, watts, asked):
    full = banks * CAPACITY
    bottom, limit, given = full * BASE, banks * MOST, modules * EFFICIENCY
    level, lowest = full.copy(), full.copy()
    unserved, loss, spilled, through = (np.zeros(len(banks)) for _ in range(4))
    out, into, left, lacking, room = (np.empty(len(banks)) for _ in range(5))
    short = np.empty(len(banks), bool)
    for sun, load in zip(watts, asked):
        np.multiply(level, 1 - LEAK, out=level)
        np.subtract(level, bottom, out=room)
        np.minimum(room, limit, out=room)
        if sun > 0:
            np.multiply(given, sun, out=left)
            left -= load
            np.negative(left, out=lacking)
            np.maximum(lacking, 0, out=lacking)
            np.maximum(left, 0, out=left)
            np.minimum(lacking, room, out=out)
        else:
            np.minimum(room, load, out=out)
        np.maximum(out, 0, out=out)
        if sun > 0:
            np.subtract(full, level, out=into)
            np.maximum(into, 0, out=into)
            into *= TAPER / STORED
            np.minimum(into, limit, out=into)
            np.minimum(into, left, out=into)
            left -= into
            spilled += left
            into *= STORED
            level += into
            lacking -= out
        else:
            np.subtract(load, out, out=lacking)
        level -= out
        np.greater(lacking, 1e-9 * load, out=short)
        loss += short
        unserved += lacking
        through += out
        np.minimum(lowest, level, out=lowest)
    return [unserved.sum() * REACH, loss.sum(), spilled.sum(), through.sum(), lowest.sum()]


def main():
    watts, asked = year()
    places = np.arange(DESIGNS)
    modules, banks = 1 + places % 64 * 0.3, 0.05 + places // 64 % 64 * 0.05
    processor = wall = float("inf")
    for _ in range(3):
        began, used = time.perf_counter(), time.thread_time()
        sums = np.zeros(5)
        for start in range(0, DESIGNS, LANES):
            sums += block(modules[start : start + LANES], banks[start : start + LANES], watts, asked)
        processor, wall = min(processor, time.thread_time() - used), min(wall, time.perf_counter() - began)
    print(
        "numpy %.0f %.0f %.10g %.0f %.10g %.10g %.10g"
        % (DESIGNS / processor, DESIGNS / wall, *(sums[0:1] / DESIGNS), sums[1] / DESIGNS * 64, *(sums[2:] / DESIGNS))
    )


main()
