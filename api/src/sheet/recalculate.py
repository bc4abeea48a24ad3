"""Fills a sheet from the service and stores it as CSV: recalculate.py SHEET.fods ADDRESS FOLDER

Starts LibreOffice without a window, with a profile of its own in FOLDER that trusts the sheet, puts ADDRESS into the
cell B1, calculates, and writes FOLDER/sheet.csv. Runs with Debian's python3 and python3-uno."""

import pathlib
import subprocess
import sys
import time

import uno
from com.sun.star.beans import PropertyValue

PROFILE = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Common/Security/Scripting"><prop oor:name="SecureURL" oor:op="fuse">
<value><it>{}</it></value></prop></item></oor:items>"""


def option(name, value):
    return PropertyValue(Name=name, Value=value)


def connected(pipe):
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
    for _ in range(120):
        try:
            return resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
        except Exception:  # not listening yet
            time.sleep(0.5)
    sys.exit("LibreOffice does not answer")


def main(sheet, address, folder):
    sheet, folder = pathlib.Path(sheet).resolve(), pathlib.Path(folder).resolve()
    profile = folder / "profile"
    (profile / "user").mkdir(parents=True, exist_ok=True)
    (profile / "user" / "registrymodifications.xcu").write_text(PROFILE.format(sheet.parent.as_uri()))
    pipe = f"sheet{time.time_ns()}"
    office = subprocess.Popen(
        ["soffice", f"-env:UserInstallation={profile.as_uri()}", "--headless", "--norestore", "--nologo",
         f"--accept=pipe,name={pipe};urp;"])
    try:
        context = connected(pipe)
        desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
        document = desktop.loadComponentFromURL(
            sheet.as_uri(), "_blank", 0, (option("Hidden", True), option("UpdateDocMode", 3)))
        document.Sheets.getByIndex(0).getCellRangeByName("B1").String = address
        document.calculateAll()
        # as shown is rounded: store what the cells hold; separated by commas, in UTF-8
        document.storeToURL(
            (folder / "sheet.csv").as_uri(),
            (option("FilterName", "Text - txt - csv (StarCalc)"), option("FilterOptions", "44,34,76,1,,1033,false,false")))
        document.close(True)
        desktop.terminate()
        office.wait(60)
    finally:
        office.kill()


main(*sys.argv[1:])
