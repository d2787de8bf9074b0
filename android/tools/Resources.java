import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Compiles and links the resources of the app and of the exploded AARs with aapt2, and writes R.java for each package:
 * Resources AAPT2 PLATFORM AARS RES MANIFEST OUT GEN TEST_MANIFEST MIN_SDK TARGET_SDK.
 *
 * Linked twice, with the same ids: once as shipped, and once under the tests' manifest, for Robolectric reads the manifest
 * out of the linked resources.
 */
class Resources {
    static final Pattern PACKAGE = Pattern.compile("package=\"([^\"]+)\"");

    public static void main(String[] args) throws Exception {
        Path aars = Path.of(args[2]), res = Path.of(args[3]), out = Path.of(args[5]), gen = Path.of(args[6]);
        String aapt2 = args[0];
        if (!new File(aapt2).setExecutable(true)) throw new IOException("cannot make " + aapt2 + " executable");
        Path flat = out.resolve("flat");
        Files.createDirectories(flat);
        Files.createDirectories(gen);
        List<String> inputs = new ArrayList<>();
        for (Path aar : sorted(aars)) {
            if (holdsFiles(aar.resolve("res"))) {
                inputs.addAll(List.of("-R", compile(aapt2, aar.resolve("res"), flat.resolve(aar.getFileName() + ".zip"))));
            }
        }
        inputs.addAll(List.of("-R", compile(aapt2, res, flat.resolve("app.zip"))));
        List<String> link = List.of(aapt2, "link", "-I", args[1], "--auto-add-overlay", "--no-version-vectors",
            "--min-sdk-version", args[8], "--target-sdk-version", args[9], "--non-final-ids");
        run(link, inputs, List.of("-o", out.resolve("resources.apk").toString(), "--manifest", args[4], "--java", gen.toString(),
            "--proguard", out.resolve("aapt-rules.txt").toString(), "--extra-packages", String.join(":", packages(aars))));
        run(link, inputs, List.of("-o", out.resolve("resources-test.apk").toString(), "--manifest", args[7]));
    }

    /** The packages that have an R of their own: those of the AARs with resources to name. */
    static List<String> packages(Path aars) throws IOException {
        List<String> found = new ArrayList<>();
        for (Path aar : sorted(aars)) {
            Path names = aar.resolve("R.txt");
            if (!Files.exists(names) || Files.size(names) == 0) continue;
            Matcher matcher = PACKAGE.matcher(Files.readString(aar.resolve("AndroidManifest.xml")));
            if (matcher.find()) found.add(matcher.group(1));
        }
        return found;
    }

    static List<Path> sorted(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().collect(Collectors.toList());
        }
    }

    static boolean holdsFiles(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) return false;
        try (Stream<Path> files = Files.walk(folder)) {
            return files.anyMatch(Files::isRegularFile);
        }
    }

    /** Compiles one folder, unless nothing in it is newer than the result. */
    static String compile(String aapt2, Path folder, Path zip) throws Exception {
        if (!Files.exists(zip) || newest(folder) > Files.getLastModifiedTime(zip).toMillis()) {
            run(List.of(aapt2, "compile", "--dir", folder.toString(), "-o", zip.toString()), List.of(), List.of());
        }
        return zip.toString();
    }

    static long newest(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.mapToLong(path -> path.toFile().lastModified()).max().orElse(0);
        }
    }

    static void run(List<String> command, List<String> inputs, List<String> options) throws Exception {
        List<String> whole = new ArrayList<>(command);
        whole.addAll(options);
        whole.addAll(inputs);
        int status = new ProcessBuilder(whole).inheritIO().start().waitFor();
        if (status != 0) throw new IOException("exit " + status + ": " + String.join(" ", whole));
    }
}
