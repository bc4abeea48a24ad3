#!/usr/bin/env python3
"""A crowd of connections that say nothing, or not all they began to say: the service goes on beside them.

    mvn package -DskipTests && python3 api/src/load/crowd.py [connections]

Needs as many open files as there are connections, in the service as well (ulimit -n).
"""
import os
import socket
import sys
import time
import urllib.request

from measure import EXAMPLES, PORT, SERVICE, resident, start, stop

POST = b"POST /v1/bank-capacity HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\n"
CROWDS = [
    ("idle", b""),
    ("half a header", POST + b"X-Slow: "),
    ("half a body", POST + b'Content-Length: 500\r\n\r\n{"dailyEnergy": '),
]


def status(process):
    return f"resident {resident(process):.0f} MB, {len(os.listdir(f'/proc/{process.pid}/task'))} threads"


def answered(body):
    begun = time.perf_counter()
    request = urllib.request.Request(f"http://127.0.0.1:{PORT}/v1/bank-capacity", body, {"Content-Type": "application/json"})
    with urllib.request.urlopen(request, timeout=30) as answer:
        assert answer.status == 200
    return f"a calculation answered in {1000 * (time.perf_counter() - begun):.0f} ms"


def main():
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    with open(os.path.join(EXAMPLES, "bank-capacity.request.json"), "rb") as file:
        body = file.read()
    process, _ = start(SERVICE)
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
    stop(process)
    print(f"told to stop with the last crowd there: ended in {time.perf_counter() - started:.1f} s")


main()
