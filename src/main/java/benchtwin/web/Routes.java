package benchtwin.web;

import io.javalin.config.RoutesConfig;

/** Some of the pages, and what they answer to. */
interface Routes {

    /** Adds them. */
    void add(RoutesConfig routes);
}
