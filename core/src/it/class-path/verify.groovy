def printed = new File(basedir, 'target/printed.txt').text
assert printed.contains('part=battery')
assert printed.contains('in a module with a name: false')
