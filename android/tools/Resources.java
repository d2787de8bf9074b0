import java.io.*;
import java.nio.file.*;
import java.util.*;
import java.util.regex.*;
import java.util.stream.*;

/** aapt2 compile and link over the app's res/ and those of the AARs; writes R.java for the app and each AAR with an R.txt. */
class Resources {
    public static void main(String[] a) throws Exception {
        String aapt2 = a[0], platform = a[1];
        Path aars = Path.of(a[2]), res = Path.of(a[3]), manifest = Path.of(a[4]), out = Path.of(a[5]), gen = Path.of(a[6]), testManifest = Path.of(a[7]);
        new File(aapt2).setExecutable(true);
        Path flat = out.resolve("flat");
        Files.createDirectories(flat);
        Files.createDirectories(gen);
        List<String> link = new ArrayList<>(List.of(aapt2, "link", "-o", out.resolve("resources.apk").toString(), "-I", platform,
            "--manifest", manifest.toString(), "--java", gen.toString(), "--non-final-ids", "--auto-add-overlay", "--no-version-vectors",
            "--min-sdk-version", a[8], "--target-sdk-version", a[9], "--proguard", out.resolve("aapt-rules.txt").toString()));
        List<String> packages = new ArrayList<>();
        List<Path> dirs;
        try (Stream<Path> s = Files.list(aars)) { dirs = s.sorted().collect(Collectors.toList()); }
        for (Path d : dirs) {
            if (has(d.resolve("res"))) { link.add("-R"); link.add(compile(aapt2, d.resolve("res"), flat.resolve(d.getFileName() + ".zip"))); }
            Path r = d.resolve("R.txt");
            if (Files.exists(r) && Files.size(r) > 0) {
                Matcher m = Pattern.compile("package=\"([^\"]+)\"").matcher(Files.readString(d.resolve("AndroidManifest.xml")));
                if (m.find()) packages.add(m.group(1));
            }
        }
        link.add("--extra-packages"); link.add(String.join(":", packages));
        link.add("-R"); link.add(compile(aapt2, res, flat.resolve("app.zip")));
        run(link);
        // The same resources (same ids) under the tests' manifest: Robolectric reads the manifest out of the APK.
        List<String> test = new ArrayList<>(link);
        test.set(test.indexOf("-o") + 1, out.resolve("resources-test.apk").toString());
        test.set(test.indexOf("--manifest") + 1, testManifest.toString());
        for (String o : List.of("--java", "--proguard", "--extra-packages")) { int i = test.indexOf(o); test.remove(i); test.remove(i); }
        run(test);
        System.out.println(packages.size() + " R packages");
    }
    static boolean has(Path p) throws IOException {
        if (!Files.isDirectory(p)) return false;
        try (Stream<Path> s = Files.walk(p)) { return s.anyMatch(Files::isRegularFile); }
    }
    static String compile(String aapt2, Path dir, Path zip) throws Exception {
        if (!Files.exists(zip) || newest(dir) > Files.getLastModifiedTime(zip).toMillis()) run(List.of(aapt2, "compile", "--dir", dir.toString(), "-o", zip.toString()));
        return zip.toString();
    }
    static long newest(Path dir) throws IOException {
        try (Stream<Path> s = Files.walk(dir)) { return s.mapToLong(p -> p.toFile().lastModified()).max().orElse(0); }
    }
    static void run(List<String> c) throws Exception {
        int rc = new ProcessBuilder(c).inheritIO().start().waitFor();
        if (rc != 0) throw new IOException("exit " + rc + ": " + String.join(" ", c));
    }
}
