/**
 * How does the world reach all this? HTTP in, HTTP out: resources, problems, headers and who is asking.
 *
 * <p>Entry: the resources under {@code /api/v1}, described at {@code /api/v1/openapi}.
 *
 * <p>Decided: no rule lives here. Errors are RFC 9457 problems that name each bad field; a tank one may not see answers
 * like a tank that does not exist.
 */
@NullMarked
package provender.web;

import org.jspecify.annotations.NullMarked;
