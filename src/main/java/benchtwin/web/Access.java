package benchtwin.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Who may reach the pages.
 * @param passphrase  what strangers have to know; empty when the pages answer to this machine alone
 * @param names       names other machines may call this one by, beside its addresses
 * @param certificate what connections are encrypted with; empty for none
 */
public record Access(Optional<PassphraseHash> passphrase, Set<String> names, Optional<Certificate> certificate) {

    /** Names are kept as they are compared. */
    public Access {
        names = names.stream().map(name -> name.toLowerCase(Locale.ROOT)).collect(Collectors.toUnmodifiableSet());
    }

    /**
     * Programs on this machine alone, in the clear.
     * @return the access there is unless something else is asked for
     */
    public static Access here() {
        return new Access(Optional.empty(), Set.of(), Optional.empty());
    }

    /**
     * Everybody on the network who knows a passphrase, in the clear.
     * @param passphrase as it is kept
     * @param names      names of this machine on the network, such as {@code bench.local}
     * @return the access
     */
    public static Access network(PassphraseHash passphrase, List<String> names) {
        return new Access(Optional.of(passphrase), Set.copyOf(names), Optional.empty());
    }

    /**
     * The same, encrypted.
     * @param by the certificate
     * @return the access
     */
    public Access encrypted(Certificate by) {
        return new Access(passphrase, names, Optional.of(by));
    }

    /** Whether other machines are let in. */
    boolean isNetwork() {
        return passphrase.isPresent();
    }
}
