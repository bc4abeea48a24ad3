#!/usr/bin/env python3
"""A crowd of connections that say nothing, or not all they began to say: the service goes on beside them.

    mvn package -DskipTests && python3 api/src/load/crowd.py [connections]

Needs as many open files as there are connections, in the service as well (ulimit -n).
"""
import os
import signal
import socket
import subprocess
import sys
import time
import urllib.request

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__)))))
JAR = os.path.join(ROOT, "api", "target", "daybank-api-0.1.0-runnable.jar")
PORT = 18080
POST = b"POST /v1/bank-capacity HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\n"
CROWDS = [
    ("idle", b""),
    ("half a header", POST + b"X-Slow: "),
    ("half a body", POST + b'Content-Length: 500\r\n\r\n{"dailyEnergy": '),
]


def status(process):
    with open(f"/proc/{process.pid}/status") as text:
        told = dict(line.split(":", 1) for line in text)
    return f"resident {int(told['VmRSS'].split()[0]) // 1024} MB, {told['Threads'].strip()} threads"


def answered(body):
    begun = time.perf_counter()
    request = urllib.request.Request(f"http://127.0.0.1:{PORT}/v1/bank-capacity", body, {"Content-Type": "application/json"})
    with urllib.request.urlopen(request, timeout=30) as answer:
        assert answer.status == 200
    return f"a calculation answered in {1000 * (time.perf_counter() - begun):.0f} ms"


def main():
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    with open(os.path.join(ROOT, "openapi", "examples", "bank-capacity.request.json"), "rb") as file:
        body = file.read()
    command = ["java", "-Xmx192m", "-Xmn32m", "-XX:+UseSerialGC", "-jar", JAR, "--port", str(PORT)]
    process = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    time.sleep(5)
    print("alone:", answered(body) + ",", status(process))
    for name, begun in CROWDS:
        started = time.perf_counter()
        crowd = [socket.create_connection(("127.0.0.1", PORT), timeout=60) for _ in range(count)]
        for connection in crowd:
            connection.sendall(begun)
        print(f"{count} {name}: there in {time.perf_counter() - started:.1f} s,", answered(body) + ",", status(process))
        if name != CROWDS[-1][0]:
            for connection in crowd:
                connection.close()
            time.sleep(2)
    started = time.perf_counter()
    process.send_signal(signal.SIGTERM)
    process.wait(60)
    print(f"told to stop with the last crowd there: ended in {time.perf_counter() - started:.1f} s")


main()
