import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Validates a PDF against one flavour ("2a", "ua1"): prints a line for each rule that it breaks, and "compliant" when there is none. */
public class Validate {
    public static void main(String[] words) throws Exception {
        Logger.getLogger("").setLevel(Level.OFF);
        VeraGreenfieldFoundryProvider.initialise();
        var foundry = Foundries.defaultInstance();
        var flavour = PDFAFlavour.byFlavourId(words[0]);
        try (var file = Files.newInputStream(Path.of(words[1])); var parser = foundry.createParser(file, flavour)) {
            var result = foundry.createValidator(flavour, false).validate(parser);
            for (TestAssertion broken : result.getTestAssertions()) {
                System.out.printf("%s %s: %s (%s)%n", broken.getRuleId().getClause(), broken.getRuleId().getTestNumber(),
                        broken.getMessage(), broken.getLocation().getContext());
            }
            if (result.isCompliant()) {
                System.out.println("compliant");
            }
        }
    }
}
