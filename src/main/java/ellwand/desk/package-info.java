/**
 * The local page on which a maker does the whole job. A folder holds her work ({@link
 * ellwand.desk.Workroom}): plain job files. Each job that somebody looks at is an {@link
 * ellwand.desk.OpenJob}: its text with a history, its tables, the tabs that show it. Everything
 * that is sent to a page is JSON; the page draws it. The only package that sees the web server.
 */
package ellwand.desk;
