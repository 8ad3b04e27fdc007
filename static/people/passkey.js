import { postJson } from "../sync/http.js";

/** The keeper put the phone's question away, or let it wait too long. */
export class PutAway extends Error {}

/** What stands in the way of passkeys here: nothing, an address that is not safe or has no name, or an old browser. */
export function whyNoPasskeys() {
  if (!isSecureContext) return "insecure";
  if (/^[\d.]+$|^\[/.test(location.hostname)) return "number";
  return "PublicKeyCredential" in window ? null : "browser";
}

/** Has the phone make a passkey, and the server keep it. @param {string} password @param {string} name */
export async function makePasskey(password, name) {
  const options = await postJson("/api/v1/passkeys/options", { password });
  const made = await asked(() => navigator.credentials.create({ publicKey: {
    ...options,
    challenge: bytes(options.challenge),
    user: { ...options.user, id: bytes(options.user.id) },
    excludeCredentials: options.excludeCredentials.map(known),
  } }));
  const response = /** @type {AuthenticatorAttestationResponse} */ (made.response);
  return postJson("/api/v1/passkeys", { name, credential: shown(made, {
    clientDataJSON: text(response.clientDataJSON), attestationObject: text(response.attestationObject), transports: response.getTransports?.() ?? [],
  }) });
}

/** Has the phone sign; what comes back goes to the server as the proof of who is here. */
export async function passkeyProof() {
  const options = await postJson("/api/v1/session/passkey/options", {});
  const used = await asked(() => navigator.credentials.get({ publicKey: {
    ...options, challenge: bytes(options.challenge), allowCredentials: options.allowCredentials.map(known),
  } }));
  const response = /** @type {AuthenticatorAssertionResponse} */ (used.response);
  return { credential: shown(used, {
    clientDataJSON: text(response.clientDataJSON), authenticatorData: text(response.authenticatorData),
    signature: text(response.signature), userHandle: response.userHandle ? text(response.userHandle) : null,
  }) };
}

/** @param {() => Promise<Credential | null>} question @returns {Promise<PublicKeyCredential>} */
async function asked(question) {
  try {
    return /** @type {PublicKeyCredential} */ (await question());
  } catch (fault) {
    throw new PutAway(fault instanceof Error ? fault.name : "", { cause: fault });
  }
}

/** @param {{ type: PublicKeyCredentialType, id: string }} one */
const known = ({ type, id }) => ({ type, id: bytes(id) });

/** As the standard writes an answer in JSON; not every browser does it by itself yet. @param {PublicKeyCredential} one @param {object} response */
const shown = (one, response) => ({
  id: one.id, rawId: text(one.rawId), type: one.type, authenticatorAttachment: one.authenticatorAttachment,
  clientExtensionResults: {}, response,
});

/** From base64url. @param {string} written */
const bytes = (written) => Uint8Array.from(atob(written.replaceAll("-", "+").replaceAll("_", "/")), (sign) => sign.charCodeAt(0));

/** To base64url. @param {ArrayBuffer} buffer */
const text = (buffer) =>
  btoa(String.fromCharCode(...new Uint8Array(buffer))).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
