#!/usr/bin/env python3
"""Load and start of the service, against the least that the same server does, in one run.

    mvn package -DskipTests && python3 api/src/load/measure.py [seconds]

Needs wrk on the path. Prints requests a second, latencies, memory and times to the first answer.
"""
import json
import os
import re
import signal
import statistics
import subprocess
import sys
import tempfile
import time
import urllib.request

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(os.path.dirname(HERE)))
JAR = os.path.join(ROOT, "api", "target", "daybank-api-0.1.0-runnable.jar")
EXAMPLES = os.path.join(ROOT, "openapi", "examples")
MEMORY = ["-Xmx192m", "-Xmn32m", "-XX:+UseSerialGC"]
PORT = 18080
SERVICE = ["java", *MEMORY, "-jar", JAR, "--port", str(PORT)]
WARMING = 40  # seconds until all that matters is compiled, on two cores


def start(command, path="/health", log=subprocess.DEVNULL):
    """Starts a server; gives the process and the seconds to its first answer."""
    begun = time.perf_counter()
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=log)
    while True:
        try:
            with urllib.request.urlopen(f"http://127.0.0.1:{PORT}{path}", timeout=5) as answer:
                if answer.status == 200:
                    return process, time.perf_counter() - begun
        except urllib.error.HTTPError as reached:
            if reached.code == 404:
                return process, time.perf_counter() - begun
            raise
        except OSError:
            if process.poll() is not None:
                raise SystemExit(f"did not start: {command}")
            time.sleep(0.005)


def stop(process):
    process.send_signal(signal.SIGTERM)
    process.wait(60)


def resident(process):
    with open(f"/proc/{process.pid}/status") as status:
        return int(re.search(r"VmRSS:\s+(\d+)", status.read()).group(1)) / 1024


def wrk(path, body, seconds, connections, folder):
    script = os.path.join(folder, "post.lua")
    with open(script, "w") as lua:
        lua.write('wrk.method = "POST"\nwrk.headers["Content-Type"] = "application/json"\nwrk.body = [=[' + body + "]=]\n")
    told = subprocess.run(
        ["wrk", "-t1", f"-c{connections}", f"-d{seconds}s", "--latency", "-s", script, f"http://127.0.0.1:{PORT}{path}"],
        capture_output=True, text=True, check=True).stdout
    errors = re.findall(r"(Socket errors.*|Non-2xx.*)", told)
    return float(re.search(r"Requests/sec:\s+([\d.]+)", told).group(1)), re.search(r"99%\s+([\d.]+\w+)", told).group(1), errors


def main():
    seconds = int(sys.argv[1]) if len(sys.argv) > 1 else 10
    with open(os.path.join(EXAMPLES, "bank-capacity.request.json")) as file:
        body = file.read()
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["javac", "-proc:none", "-cp", JAR, "-d", folder, os.path.join(HERE, "Echo.java"), os.path.join(HERE, "Hello.java")], check=True)
        process, _ = start(SERVICE)
        request = urllib.request.Request(f"http://127.0.0.1:{PORT}/v1/bank-capacity", body.encode(), {"Content-Type": "application/json"})
        answer = urllib.request.urlopen(request).read()
        stop(process)
        with open(os.path.join(folder, "answer.json"), "wb") as file:
            file.write(answer)
        echo = ["java", *MEMORY, "-cp", f"{JAR}:{folder}", "Echo", str(PORT), os.path.join(folder, "answer.json")]
        print(f"bodies: {len(body)} bytes in, {len(answer)} bytes out")

        rates = {}
        for name, command, path in [("echo", echo, "/echo"), ("bank-capacity", SERVICE, "/v1/bank-capacity")]:
            process, _ = start(command)
            wrk(path, body, WARMING, 16, folder)
            runs = [wrk(path, body, seconds, 16, folder) for _ in range(3)]
            rates[name] = statistics.median(run[0] for run in runs)
            print(f"{name}: {rates[name]:.0f} requests/s on 16 connections, p99 {runs[-1][1]}, errors {[e for run in runs for e in run[2]]}")
            if name == "bank-capacity":
                before = resident(process)
                rate, p99, errors = wrk(path, body, 6 * seconds, 256, folder)
                print(f"256 connections for {6 * seconds} s: {rate:.0f} requests/s, p99 {p99}, errors {errors}, resident {before:.0f} then {resident(process):.0f} MB")
            stop(process)
        print(f"bank-capacity over echo: {rates['bank-capacity'] / rates['echo']:.2f}")

        archives = {}
        hello = ["java", *MEMORY, "-cp", f"{JAR}:{folder}", "Hello", str(PORT)]
        for name, command in [("hello", hello), ("service", SERVICE)]:
            archives[name] = os.path.join(folder, name + ".jsa")
            process, _ = start([command[0], f"-XX:ArchiveClassesAtExit={archives[name]}", *command[1:]])
            stop(process)
        times = {}
        for turn in range(7):
            for name, command in [("hello", hello), ("service", SERVICE)]:
                for kind, option in [("plain", []), ("archive", [f"-XX:SharedArchiveFile={archives[name]}"])]:
                    process, took = start([command[0], *option, *command[1:]])
                    stop(process)
                    times.setdefault((kind, name), []).append(took)
        for kind in ["plain", "archive"]:
            least, ours = (statistics.median(times[kind, name]) for name in ["hello", "service"])
            print(f"first 200, {kind}: hello {least:.2f} s, service {ours:.2f} s, ratio {ours / least:.2f}")


if __name__ == "__main__":
    main()
