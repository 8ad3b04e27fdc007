/**
 * How does a phone at home get an encrypted address, where no public authority vouches for one? With a certificate authority of
 * one's own, made on request, that can vouch for the named addresses and for nothing else.
 *
 * <p>Entry: {@link provender.lan.LanAddress}, read by {@link provender.lan.LanCertificateSource} before the server opens its doors.
 *
 * <p>Decided: the authority's certificate carries name constraints (RFC 5280, 4.2.1.10), so that a stolen key can deceive nobody
 * about any other site. Its key stays on the server, readable by its owner alone, because the server's own certificate is renewed
 * with it each year without anybody having to visit the phones again. Another list of names needs another authority.
 */
@NullMarked
package provender.lan;

import org.jspecify.annotations.NullMarked;
