/* The same designs through the same year as PeerYears.java, in C: one design after the other, and as a structure of arrays that
   the compiler vectorises. Built with gcc -O3 -march=native -ffp-contract=off: without fused operations, as in Java. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define HOURS 8760
#define LANES 256

static double watts[HOURS], asked[HOURS];
static const double efficiency = 0.97, capacity = 14336, stored = 0.95, taper = 0.99, most = 7000, leak = 4e-5, base = 0.2,
                    reach = 0.9;

static inline double least(double a, double b) { return a < b ? a : b; }
static inline double greatest(double a, double b) { return a > b ? a : b; }

static void year(void) {
    long dice = 1;
    double day = 0;
    for (int hour = 0; hour < HOURS; hour++) {
        if (hour % 24 == 0) {
            dice = (1103515245L * dice + 12345) % 2147483648L;
            day = 0.1 + 0.9 * dice / 2147483648.0;
        }
        double noon = abs(hour % 24 - 12);
        double season = 0.6 + 0.4 * (fabs(hour - 4380) / 4380.0 * -2 + 1);
        watts[hour] = noon < 6 ? 350 * day * season * (1 - noon * noon / 36) : 0;
        asked[hour] = hour % 24 >= 17 ? 180 : 100;
    }
}

/* One design after the other. */
static void alone(int designs, const double *modules, const double *banks, double *sums) {
    for (int i = 0; i < designs; i++) {
        double full = banks[i] * capacity, level = full, lowest = full, limit = banks[i] * most, bottom = full * base;
        for (int hour = 0; hour < HOURS; hour++) {
            double array = modules[i] * watts[hour] * efficiency, direct = least(array, asked[hour]);
            double lacking = asked[hour] - direct, left = array - direct;
            level -= level * leak;
            double out = greatest(0, least(lacking, least(limit, level - bottom)));
            double in = least(left, least(limit, taper * greatest(0, full - level) * (1 / stored)));
            level -= out - in * stored;
            double lacks = lacking - out;
            sums[0] += lacks * reach;
            sums[1] += lacks > 1e-9 * asked[hour] ? 1 : 0;
            sums[2] += left - in;
            sums[3] += out;
            lowest = least(lowest, level);
        }
        sums[4] += lowest;
    }
}

static void byDay(const double *restrict modules, const double *restrict banks, double *restrict level, double *restrict unserved,
                  double *restrict loss, double *restrict spilled, double *restrict through, double *restrict lowest, double sun,
                  double load) {
    for (int i = 0; i < LANES; i++) {
        double array = modules[i] * sun * efficiency, direct = least(array, load);
        double lacking = load - direct, left = array - direct, full = banks[i] * capacity, limit = banks[i] * most;
        double held = level[i] - level[i] * leak;
        double out = greatest(0, least(lacking, least(limit, held - full * base)));
        double in = least(left, least(limit, taper * greatest(0, full - held) * (1 / stored)));
        held -= out - in * stored;
        level[i] = held;
        double lacks = lacking - out;
        unserved[i] += lacks * reach;
        loss[i] += lacks > 1e-9 * load ? 1.0 : 0.0;
        spilled[i] += left - in;
        through[i] += out;
        lowest[i] = least(lowest[i], held);
    }
}

static void byNight(const double *restrict banks, double *restrict level, double *restrict unserved, double *restrict loss,
                    double *restrict through, double *restrict lowest, double load) {
    for (int i = 0; i < LANES; i++) {
        double full = banks[i] * capacity, held = level[i] - level[i] * leak;
        double out = greatest(0, least(load, least(banks[i] * most, held - full * base)));
        held -= out;
        level[i] = held;
        double lacks = load - out;
        unserved[i] += lacks * reach;
        loss[i] += lacks > 1e-9 * load ? 1.0 : 0.0;
        through[i] += out;
        lowest[i] = least(lowest[i], held);
    }
}

/* A structure of arrays in blocks that stay in the nearest cache. */
static void together(int designs, const double *modules, const double *banks, double *sums) {
    static _Alignas(64) double level[LANES], unserved[LANES], loss[LANES], spilled[LANES], through[LANES], lowest[LANES];
    for (int from = 0; from < designs; from += LANES) {
        for (int i = 0; i < LANES; i++) {
            level[i] = lowest[i] = banks[from + i] * capacity;
            unserved[i] = loss[i] = spilled[i] = through[i] = 0;
        }
        for (int hour = 0; hour < HOURS; hour++) {
            if (watts[hour] > 0)
                byDay(modules + from, banks + from, level, unserved, loss, spilled, through, lowest, watts[hour], asked[hour]);
            else
                byNight(banks + from, level, unserved, loss, through, lowest, asked[hour]);
        }
        for (int i = 0; i < LANES; i++) {
            sums[0] += unserved[i];
            sums[1] += loss[i];
            sums[2] += spilled[i];
            sums[3] += through[i];
            sums[4] += lowest[i];
        }
    }
}

static double now(clockid_t clock) {
    struct timespec time;
    clock_gettime(clock, &time);
    return time.tv_sec + time.tv_nsec / 1e9;
}

static void run(const char *name, void (*way)(int, const double *, const double *, double *), int designs) {
    double *modules = aligned_alloc(64, designs * sizeof(double)), *banks = aligned_alloc(64, designs * sizeof(double));
    double bestOfProcessor = 0, bestOfWall = 0, sums[5];
    for (int i = 0; i < designs; i++) {
        modules[i] = 1 + i % 64 * 0.3;
        banks[i] = 0.05 + i / 64 % 64 * 0.05;
    }
    for (int repeat = 0; repeat < 6; repeat++) {
        double processor = now(CLOCK_THREAD_CPUTIME_ID), wall = now(CLOCK_MONOTONIC);
        for (int k = 0; k < 5; k++) sums[k] = 0;
        way(designs, modules, banks, sums);
        bestOfProcessor = greatest(bestOfProcessor, designs / (now(CLOCK_THREAD_CPUTIME_ID) - processor));
        bestOfWall = greatest(bestOfWall, designs / (now(CLOCK_MONOTONIC) - wall));
    }
    printf("%s %.0f %.0f %.10g %.0f %.10g %.10g %.10g\n", name, bestOfProcessor, bestOfWall, sums[0] / designs,
           sums[1] / designs * 64, sums[2] / designs, sums[3] / designs, sums[4] / designs);
}

int main(void) {
    year();
    run("c-one-by-one", alone, 4096);
    run("c-structure-of-arrays", together, 8192);
    return 0;
}
