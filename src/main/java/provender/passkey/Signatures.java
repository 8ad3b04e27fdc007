package provender.passkey;

import com.webauthn4j.WebAuthnManager;
import com.webauthn4j.converter.AttestedCredentialDataConverter;
import com.webauthn4j.converter.util.ObjectConverter;
import com.webauthn4j.credential.CredentialRecordImpl;
import com.webauthn4j.data.AuthenticationData;
import com.webauthn4j.data.AuthenticationParameters;
import com.webauthn4j.data.PublicKeyCredentialParameters;
import com.webauthn4j.data.PublicKeyCredentialType;
import com.webauthn4j.data.RegistrationData;
import com.webauthn4j.data.RegistrationParameters;
import com.webauthn4j.data.attestation.authenticator.AttestedCredentialData;
import com.webauthn4j.data.attestation.authenticator.AuthenticatorData;
import com.webauthn4j.data.attestation.statement.COSEAlgorithmIdentifier;
import com.webauthn4j.data.attestation.statement.NoneAttestationStatement;
import com.webauthn4j.data.client.CollectedClientData;
import com.webauthn4j.data.client.Origin;
import com.webauthn4j.data.client.challenge.DefaultChallenge;
import com.webauthn4j.server.ServerProperty;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;
import provender.passkey.PasskeyStore.Kept;

/** Reads what browsers say and checks it as the standard demands; the steps themselves are a library's. */
final class Signatures {
  private static final Logger LOG = Logger.getLogger("provender.passkey");
  private static final boolean OWNER_MUST_BE_ASKED = true;

  /** Those that phones and keys make, the commonest first (IANA COSE algorithms ES256, EdDSA, RS256). */
  private static final List<PublicKeyCredentialParameters> ALGORITHMS =
      List.of(COSEAlgorithmIdentifier.ES256, COSEAlgorithmIdentifier.EdDSA, COSEAlgorithmIdentifier.RS256).stream()
          .map(one -> new PublicKeyCredentialParameters(PublicKeyCredentialType.PUBLIC_KEY, one))
          .toList();

  private final ObjectConverter converter = new ObjectConverter();
  private final WebAuthnManager library = WebAuthnManager.createNonStrictWebAuthnManager(converter);
  private final AttestedCredentialDataConverter keys = new AttestedCredentialDataConverter(converter);

  /** A passkey that was just made, and over which challenge. */
  record Made(byte[] challenge, byte[] credential, String publicKey, boolean mayBeCopied, long uses) {}

  /** A signature that fits, over which challenge, and the phone's counter after it. */
  record Used(byte[] challenge, long uses) {}

  /** By their numbers in the IANA registry. */
  List<Long> algorithms() {
    return ALGORITHMS.stream().map(one -> one.getAlg().getValue()).toList();
  }

  /** Something read out of an answer, if it is there. */
  private interface Reading<T> {
    @Nullable T read();
  }

  @Nullable Made made(String response, Place place) {
    return readOrNull(() -> {
      RegistrationData data = library.parseRegistrationResponseJSON(response);
      byte[] challenge = challenge(data.getCollectedClientData());
      library.verify(data, new RegistrationParameters(asked(place, challenge), ALGORITHMS, OWNER_MUST_BE_ASKED));
      AuthenticatorData<?> said = Objects.requireNonNull(data.getAttestationObject()).getAuthenticatorData();
      AttestedCredentialData key = Objects.requireNonNull(said.getAttestedCredentialData());
      String publicKey = Base64.getEncoder().encodeToString(keys.convert(key));
      return new Made(challenge, key.getCredentialId(), publicKey, said.isFlagBE(), said.getSignCount());
    });
  }

  /** What the phone calls the passkey it answers with. */
  @Nullable String credential(String response) {
    return readOrNull(() -> Base64.getUrlEncoder().withoutPadding()
        .encodeToString(library.parseAuthenticationResponseJSON(response).getCredentialId()));
  }

  @Nullable Used used(String response, Place place, Kept passkey) {
    return readOrNull(() -> {
      AuthenticationData data = library.parseAuthenticationResponseJSON(response);
      byte[] challenge = challenge(data.getCollectedClientData());
      library.verify(data, new AuthenticationParameters(asked(place, challenge), record(passkey), null, OWNER_MUST_BE_ASKED));
      byte[] owner = data.getUserHandle();
      if (owner != null && !Arrays.equals(owner, passkey.keeper().id().getBytes(StandardCharsets.UTF_8))) {
        return null;
      }
      return new Used(challenge, Objects.requireNonNull(data.getAuthenticatorData()).getSignCount());
    });
  }

  private CredentialRecordImpl record(Kept passkey) {
    AttestedCredentialData key = keys.convert(Base64.getDecoder().decode(passkey.publicKey()));
    return new CredentialRecordImpl(
        new NoneAttestationStatement(), true, passkey.mayBeCopied(), false, passkey.uses(), key, null, null, null, Set.of());
  }

  private static ServerProperty asked(Place place, byte[] challenge) {
    Set<Origin> origins = place.origins().stream().map(Origin::create).collect(Collectors.toSet());
    return ServerProperty.builder().origins(origins).rpId(place.name()).challenge(new DefaultChallenge(challenge)).build();
  }

  private static byte[] challenge(@Nullable CollectedClientData said) {
    return Objects.requireNonNull(said).getChallenge().getValue();
  }

  /** Whatever is wrong with what came in, a stranger learns only that it will not do. */
  private static <T> @Nullable T readOrNull(Reading<T> reading) {
    try {
      return reading.read();
    } catch (RuntimeException wrong) {
      LOG.debug("a passkey that will not do", wrong);
      return null;
    }
  }
}
