package comparand.hostile;
import java.nio.file.*; import java.util.*;
public final class FuzzTrial {
  public static void main(String[] a) throws Exception {
    var f = Files.createTempDirectory(Path.of("/dev/shm"), "fz");
    long n = Long.parseLong(a[0]);
    for (var r : new FuzzedReaders(f).all()) {
      if (a.length > 1 && !r.name().matches(a[1])) continue;
      long t = System.nanoTime();
      var z = new Fuzzing(r, 1);
      var w = new Thread(() -> { byte[] last = null; int same = 0; try { while (true) { Thread.sleep(2000); if (z.current() == last && last.length > 0) { if (++same >= 5) { System.out.println("HANG " + z.name() + " " + last.length); Files.write(Path.of("/tmp/hz/hang-" + z.name()), last); same = -100; Thread.getAllStackTraces().forEach((th, st) -> { if (th.getName().equals("main")) for (int i = 0; i < Math.min(25, st.length); i++) System.out.println("   " + st[i]); }); } } else { same = 0; last = z.current(); } } } catch (Exception e) {} });
      w.setDaemon(true); w.start();
      z.run(n);
      w.interrupt();
      System.out.printf("%s: %d inputs, %d whole, kept %d, codes %d, %.0f us each%n", r.name(), z.inputs(), z.whole(), z.kept(), z.codes().size(), (System.nanoTime()-t)/1e3/n);
      z.failures().forEach((k, v) -> { System.out.println("   FAIL " + Oracle.judge(r, v).fault().orElse("?") + " (" + v.length + ")"); try { Files.write(Path.of("/tmp/hz/fail-" + z.name() + "-" + Math.abs(k.hashCode())), v);} catch (Exception e) {} });
    }
  }
}
