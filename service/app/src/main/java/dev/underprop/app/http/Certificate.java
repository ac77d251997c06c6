package dev.underprop.app.http;

import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.ssl.KeyStoreScanner;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** The certificate that the service shows: TLS 1.2 and 1.3 alone, read again when its file is replaced. */
final class Certificate {
    private static final int SECONDS_BETWEEN_LOOKS = 10;

    private Certificate() {}

    static SslContextFactory.Server of(Entrance.Tls tls, Server server) {
        SslContextFactory.Server factory = new SslContextFactory.Server();
        factory.setKeyStorePath(tls.keystore().toUri().toString());
        factory.setKeyStoreType("PKCS12");
        factory.setKeyStorePassword(tls.password());
        factory.setIncludeProtocols("TLSv1.3", "TLSv1.2");
        factory.setRenegotiationAllowed(false);
        factory.setSniRequired(false);
        KeyStoreScanner scanner = new KeyStoreScanner(factory);
        scanner.setScanInterval(SECONDS_BETWEEN_LOOKS);
        server.addBean(scanner);
        return factory;
    }
}
