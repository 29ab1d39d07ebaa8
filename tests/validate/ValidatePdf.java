// Holds every PDF below a folder against PDF/A-3a and PDF/UA-1 with the veraPDF engine on the class path.
//
//   java ValidatePdf FOLDER...
//
// Prints a line for each file that does not conform, with the rules that it breaks, and a closing count.
// Ends with 0 where all conform, 1 where some do not, 2 where there was nothing to look at.

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.logging.LogManager;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

public final class ValidatePdf {
    private static final List<PDFAFlavour> STANDARDS = List.of(PDFAFlavour.PDFA_3_A, PDFAFlavour.PDFUA_1);

    public static void main(String[] folders) throws Exception {
        LogManager.getLogManager().reset();
        VeraGreenfieldFoundryProvider.initialise();
        int seen = 0;
        int refused = 0;
        for (String folder : folders) {
            for (Path file : pdfs(Path.of(folder))) {
                seen++;
                boolean conforms = true;
                for (PDFAFlavour standard : STANDARDS) {
                    conforms &= conforms(file, standard);
                }
                refused += conforms ? 0 : 1;
            }
        }
        System.out.printf("%d documents held against PDF/A-3a and PDF/UA-1, %d do not conform%n", seen, refused);
        System.exit(seen == 0 ? 2 : refused == 0 ? 0 : 1);
    }

    private static List<Path> pdfs(Path folder) throws Exception {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.toString().endsWith(".pdf")).sorted().collect(Collectors.toList());
        }
    }

    private static boolean conforms(Path file, PDFAFlavour standard) throws Exception {
        try (InputStream bytes = Files.newInputStream(file);
             PDFAParser parser = Foundries.defaultInstance().createParser(bytes, standard)) {
            ValidationResult result =
                Foundries.defaultInstance().createValidator(standard, false).validate(parser);
            if (result.isCompliant()) {
                return true;
            }
            report(System.out, file, standard, result);
            return false;
        }
    }

    private static void report(PrintStream out, Path file, PDFAFlavour standard, ValidationResult result) {
        SortedSet<String> rules = new TreeSet<>();
        for (TestAssertion assertion : result.getTestAssertions()) {
            if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                rules.add(assertion.getRuleId().getClause() + " test " + assertion.getRuleId().getTestNumber()
                    + ": " + assertion.getMessage());
            }
        }
        out.println(file + " does not conform to " + standard.getId());
        rules.forEach(rule -> out.println("    " + rule));
    }
}
