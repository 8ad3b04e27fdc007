/**
 * What does a phone need in its cupboard to work with the server gone?
 *
 * <p>Entry: {@link provender.shell.PackShell}, run once at the end of every build, after the engine was compiled for the
 * phone. It joins the pages' scripts and styles, writes the reference tables as one JSON file, writes the list of files to keep
 * into the service worker, packs what is text as small as it goes, and stops the build when the engine has outgrown its budget.
 *
 * <p>Decided: the two lines of {@code sw.js} are found by their beginning and replaced whole, so that packing twice
 * without a clean in between gives the same file.
 */
@NullMarked
package provender.shell;

import org.jspecify.annotations.NullMarked;
