/** A stranger's module: it names the library's module and no other. */
module example.relay {
    requires org.daybank.core;
}
