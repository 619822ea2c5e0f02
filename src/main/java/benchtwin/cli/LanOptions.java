package benchtwin.cli;

import benchtwin.bench.BadInput;
import benchtwin.web.Access;
import benchtwin.web.Certificate;
import benchtwin.web.MadeUpPassphrase;
import benchtwin.web.PassphraseFile;
import benchtwin.web.PassphraseHash;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Who may reach the pages, as it was asked for. */
final class LanOptions {

    private static final String PASSWORD = "BENCHTWIN_CERTIFICATE_PASSWORD";
    private static final String NAME = "[A-Za-z0-9]([A-Za-z0-9.-]*[A-Za-z0-9])?";

    @Option(names = "--lan", order = 3,
        description = "let other machines of this network in, with a passphrase: asked for, or made up and shown once")
    private boolean lan;
    @Option(names = "--new-passphrase", order = 4, description = "another passphrase in place of the one that is kept")
    private boolean newPassphrase;
    @Option(names = "--host", paramLabel = "NAME", order = 5,
        description = "a name other machines call this one by; its addresses and its own name are known. May be given again")
    private List<String> hosts = new ArrayList<>();
    @Option(names = "--certificate", paramLabel = "FILE.p12", order = 6,
        description = "encrypt with this certificate and key (PKCS #12); its password is asked for, or taken from " + PASSWORD)
    private Path certificate;

    boolean isLan() {
        return lan;
    }

    boolean isEncrypted() {
        return certificate != null;
    }

    /** Names other machines may use, this machine's own last. */
    List<String> names() {
        List<String> names = new ArrayList<>(hosts);
        OwnAddresses.name().filter(name -> !names.contains(name)).ifPresent(names::add);
        return names;
    }

    void check() throws BadInput {
        if (!lan && (newPassphrase || !hosts.isEmpty())) {
            throw new BadInput("%s is for other machines: give --lan too".formatted(newPassphrase ? "--new-passphrase" : "--host"));
        }
        for (String host : hosts) {
            if (!host.matches(NAME)) {
                throw new BadInput("--host \"%s\" is not a name; expected one such as bench.local, without http:// and port".formatted(host));
            }
        }
    }

    /** Who may reach the pages of a book; says what has to be known about the passphrase. */
    Access access(Path book, Secrets secrets, PrintWriter out) throws BadInput {
        Access access = lan ? Access.network(passphrase(PassphraseFile.beside(book), secrets, out), names()) : Access.here();
        return certificate == null ? access : access.encrypted(Certificate.read(certificate, password(secrets), Instant.now()));
    }

    private PassphraseHash passphrase(PassphraseFile file, Secrets secrets, PrintWriter out) throws BadInput {
        Optional<PassphraseHash> kept = newPassphrase ? Optional.empty() : file.kept();
        if (kept.isPresent()) {
            out.println("The passphrase is the one of before; --new-passphrase makes another.");
            return kept.get();
        }
        String typed = secrets.ask("Passphrase for other machines, at least %d signs (Enter alone: one is made up): "
            .formatted(PassphraseHash.LEAST_SIGNS)).map(String::strip).orElse("");
        if (!typed.isEmpty() && typed.length() < PassphraseHash.LEAST_SIGNS) {
            throw new BadInput("the passphrase has %d signs; expected at least %d: a few words that do not belong together are best"
                .formatted(typed.length(), PassphraseHash.LEAST_SIGNS));
        }
        String passphrase = typed.isEmpty() ? MadeUpPassphrase.fresh() : typed;
        PassphraseHash hash = PassphraseHash.of(passphrase);
        file.keep(hash);
        if (typed.isEmpty()) {
            out.printf("The passphrase for other machines: %s%nWrite it down, it is not shown again. ", passphrase);
        }
        out.printf("What is kept of it, not itself, lies in %s.%n", file.file());
        return hash;
    }

    private String password(Secrets secrets) throws BadInput {
        Optional<String> password = Optional.ofNullable(System.getenv(PASSWORD));
        return (password.isPresent() ? password : secrets.ask("Password of %s: ".formatted(certificate)))
            .orElseThrow(() -> new BadInput("the certificate's password is missing: put it into " + PASSWORD));
    }
}
