package benchtwin.web;

import io.javalin.config.JettyConfig;
import io.javalin.config.SizeUnit;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.UriCompliance;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/**
 * Where the pages listen: on the loopback address, or on all of the machine's where other machines are let in.
 * @param access who may reach them
 * @param port   the port; 0 for any that is free
 */
record Listening(Access access, int port) {

    /** Only programs on this machine can reach it. */
    static final String LOOPBACK = "127.0.0.1";

    void configure(JettyConfig jetty) {
        jetty.host = access.isNetwork() ? null : LOOPBACK;
        jetty.port = port;
        jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendDateHeader(false);
            // a name may hold a slash, a backslash or a per cent sign; routes are matched before it is decoded
            http.setUriCompliance(UriCompliance.DEFAULT.with("names", UriCompliance.Violation.AMBIGUOUS_PATH_SEPARATOR,
                UriCompliance.Violation.AMBIGUOUS_PATH_ENCODING, UriCompliance.Violation.SUSPICIOUS_PATH_CHARACTERS));
        });
        jetty.modifyServletContextHandler(context -> context.getServletHandler().setDecodeAmbiguousURIs(true));
        jetty.modifyServer(server -> server.setErrorHandler(new PlainErrors()));
        access.certificate().ifPresent(certificate -> jetty.addConnector((server, http) -> encrypted(server, http, certificate)));
        // a request that is longer was refused by its length before
        jetty.multipartConfig.maxFileSize(BodyLimit.FILE_MB + 1L, SizeUnit.MB);
        jetty.multipartConfig.maxTotalRequestSize(BodyLimit.FILE_MB + 1L, SizeUnit.MB);
        jetty.multipartConfig.maxInMemoryFileSize(BodyLimit.FILE_MB + 1, SizeUnit.MB);
    }

    private Connector encrypted(Server server, HttpConfiguration http, Certificate certificate) {
        HttpConfiguration secure = new HttpConfiguration(http);
        // any name a certificate is for, and the bare address: what a request may be called by is the guard's to say
        secure.addCustomizer(new SecureRequestCustomizer(false));
        HttpConnectionFactory pages = new HttpConnectionFactory(secure);
        ServerConnector connector = new ServerConnector(server, new SslConnectionFactory(certificate.contextFactory(), pages.getProtocol()), pages);
        connector.setHost(access.isNetwork() ? null : LOOPBACK);
        connector.setPort(port);
        return connector;
    }

    /** For what is no request at all, and so never reaches the pages' own words. */
    private static final class PlainErrors extends ErrorHandler {

        @Override
        public boolean handle(Request request, Response response, Callback callback) {
            SafeHeaders.all(response.getHeaders()::put);
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
            Content.Sink.write(response, true, "This request cannot be answered.\n", callback);
            return true;
        }
    }
}
