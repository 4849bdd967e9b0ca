package fascicle.photo;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where a user's programs keep what can be made again. */
final class UsersFolder {

    private UsersFolder() {}

    /**
     * The folder for this program: {@code XDG_CACHE_HOME} (XDG Base Directory Specification 0.8), else what is usual on
     * the system.
     *
     * @param system name of the operating system
     * @param home the user's folder
     * @param environment the environment's variables
     */
    static Path of(String system, Path home, Map<String, String> environment) {
        return base(system.toLowerCase(Locale.ROOT), home, environment).resolve("fascicle");
    }

    private static Path base(String system, Path home, Map<String, String> environment) {
        String chosen = environment.getOrDefault("XDG_CACHE_HOME", "");
        if (!chosen.isEmpty() && Path.of(chosen).isAbsolute()) {
            return Path.of(chosen);
        }
        if (system.startsWith("windows")) {
            String local = environment.getOrDefault("LOCALAPPDATA", "");
            return local.isEmpty() ? home.resolve("AppData").resolve("Local") : Path.of(local);
        }
        return system.startsWith("mac") ? home.resolve("Library").resolve("Caches") : home.resolve(".cache");
    }
}
