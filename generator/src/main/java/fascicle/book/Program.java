package fascicle.book;

/** Which program this is. */
public final class Program {

    private Program() {}

    /**
     * The program's name and version.
     *
     * @return such as {@code Fascicle 0.1.0}; without a version where it runs from unpacked classes
     */
    public static String name() {
        String version = Program.class.getPackage().getImplementationVersion();
        return version == null ? "Fascicle" : "Fascicle " + version;
    }
}
