package benchtwin.web;

import benchtwin.bench.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.Collections;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** A certificate with its key, out of a PKCS #12 file. */
public final class Certificate {

    private final KeyStore store;
    private final String password;

    private Certificate(KeyStore store, String password) {
        this.store = store;
        this.password = password;
    }

    /**
     * Reads one.
     * @param file     the file, usually ending in .p12
     * @param password it is locked with
     * @param now      for whether it has run out
     * @return the certificate
     * @throws BadInput when it cannot be read, holds no key, or has run out
     */
    public static Certificate read(Path file, String password, Instant now) throws BadInput {
        if (!Files.isRegularFile(file)) {
            throw new BadInput("certificate %s is not there".formatted(file));
        }
        try (InputStream in = Files.newInputStream(file)) {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(in, password.toCharArray());
            for (String alias : Collections.list(store.aliases())) {
                if (store.isKeyEntry(alias) && store.getCertificate(alias) instanceof X509Certificate own) {
                    Instant end = own.getNotAfter().toInstant();
                    if (end.isBefore(now)) {
                        throw new BadInput("certificate %s ran out on %s".formatted(file, end));
                    }
                    return new Certificate(store, password);
                }
            }
            throw new BadInput("%s holds no certificate with its key; expected a PKCS #12 file with both".formatted(file));
        } catch (IOException | GeneralSecurityException unreadable) {
            throw new BadInput("%s cannot be opened: it is no PKCS #12 file, or its password is another one".formatted(file));
        }
    }

    SslContextFactory.Server contextFactory() {
        SslContextFactory.Server factory = new SslContextFactory.Server();
        factory.setKeyStore(store);
        factory.setKeyStorePassword(password);
        return factory;
    }
}
