/**
 * How does a phone call the engine? The module that the engine is compiled to, and the only place with JavaScript interop.
 *
 * <p>Entry: {@link provender.browser.Face}, whose static methods are the module's exports.
 */
@NullMarked
package provender.browser;

import org.jspecify.annotations.NullMarked;
