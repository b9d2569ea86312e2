package comparand.hostile;

import comparand.diag.Diagnostic;
import comparand.reference.Found;
import comparand.reference.Proposals;
import comparand.reference.Reference;
import comparand.reference.format.ReferenceFile;
import comparand.reference.format.ReferenceFormat;
import comparand.write.yaml.RecordYaml;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** A file of references: read, looked through for works that are the same, and written as records. */
record ReferenceInput(String name, List<byte[]> seeds, List<String> words) implements FuzzedReader {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    static ReferenceInput of(ReferenceFormat format) {
        var seeds = new ArrayList<byte[]>();
        for (var ending : List.of(".ris", ".nbib", ".bib")) {
            for (var file : Seeds.files(ending, "evidence/references")) {
                var named = new TreeMap<String, Reference>();
                ReferenceFile.read(FILE, file, new ArrayList<>()).orElseThrow().references().stream()
                        .limit(4)
                        .forEach(f -> named.put("s" + named.size(), f.reference()));
                seeds.add(format.write(named).getBytes(java.nio.charset.StandardCharsets.UTF_8));
            }
        }
        return new ReferenceInput("references-" + format.word(), List.copyOf(seeds), Seeds.words(seeds));
    }

    @Override
    public Read read(byte[] input) {
        var findings = new ArrayList<Diagnostic>();
        var file = ReferenceFile.read(FILE, input, findings);
        List<Found> references = file.map(ReferenceFile::references).orElse(List.of());
        var proposals = Proposals.of(references, List.of(), Set.of(), TODAY);
        proposals.references().forEach(p -> RecordYaml.text(p.record(TODAY), List.of()));
        boolean stopped = findings.stream().anyMatch(Diagnostic::stops);
        findings.addAll(proposals.findings());
        return new Read(file.isPresent() && !stopped, findings);
    }
}
