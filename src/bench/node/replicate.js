// 10,000 feedings over HTTP and back in batches of 500, bytes counted on the wire: once from one database to another through a
// general-purpose offline-first engine, once to and from the packaged server as the app does it. What comes back is put on disk.
import { spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { closeSync, fsyncSync, mkdtempSync, openSync, writeSync } from "node:fs";
import net from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import express from "express";
import expressPouchDB from "express-pouchdb";
import PouchDB from "pouchdb";
import { packed } from "../../../static/sync/packed.js";
import { pagesOf } from "../../../static/sync/pages.js";

const ENTRIES = 10_000;
const BATCH = 500;
// A server runs for months: what it takes once its code is compiled. Node's code is compiled by as many rounds.
const ROUNDS = 20;
const PORT = Number(process.env.PORT ?? 8467);
const root = join(dirname(fileURLToPath(import.meta.url)), "../../..");
const folder = mkdtempSync(join(tmpdir(), "replicate-")) + "/";
let bytes = 0;

const engine = await throughEngine();
const app = await throughServer();
for (const way of ["push", "pull"]) {
  const [theirs, ours] = [engine[way], app[way]];
  console.log(`${way} of ${ENTRIES}: engine ${theirs.millis} ms, ${theirs.bytes} bytes; app ${ours.millis} ms, ${ours.bytes} bytes;`
    + ` ${(theirs.millis / ours.millis).toFixed(1)} times as fast, bytes ${(ours.bytes / theirs.bytes).toFixed(2)}`);
}
console.log(`bytes there and back: ${((app.push.bytes + app.pull.bytes) / (engine.push.bytes + engine.pull.bytes)).toFixed(2)}`);
process.exit(0);

/** Node on both sides. */
async function throughEngine() {
  const Served = PouchDB.defaults({ prefix: folder + "served-" });
  const served = express();
  served.use("/", expressPouchDB(Served, { mode: "minimumForPouchDB", logPath: folder + "log.txt", configPath: folder + "config.json" }));
  const server = served.listen(0);
  await new Promise((listening) => server.once("listening", listening));
  const wire = await wiredTo(server.address().port);
  const best = {};
  for (let round = 0; round < ROUNDS; round++) {
    const url = round === 0 ? wire : `http://127.0.0.1:${server.address().port}`;
    const phone = new PouchDB(`${folder}phone-${round}`);
    await phone.bulkDocs(feedings("reef", "teo").map(({ id, ...feeding }) => ({ _id: id, ...feeding })));
    await keepBest(best, "push", async () => (await phone.replicate.to(`${url}/journal-${round}`, { batch_size: BATCH })).docs_written);
    const other = new PouchDB(`${folder}other-phone-${round}`);
    await keepBest(best, "pull", async () => (await other.replicate.from(`${url}/journal-${round}`, { batch_size: BATCH })).docs_written);
  }
  server.close();
  return best;
}

/** With what the app itself packs batches and asks for pages by. */
async function throughServer() {
  const server = spawn("java", ["-Dquarkus.profile=demo", `-Dquarkus.http.port=${PORT}`, `-Dprovender.data=${mkdtempSync(join(root, "target/replicate-"))}`,
    "-Dprovender.rates.person=1000000", "-jar", "target/quarkus-app/quarkus-run.jar"], { cwd: root, stdio: "ignore" });
  try {
    const ready = () => fetch(`http://127.0.0.1:${PORT}/q/health/ready`, { signal: AbortSignal.timeout(1_000) }).then(({ ok }) => ok, () => false);
    while (server.exitCode === null && !(await ready())) await new Promise((later) => setTimeout(later, 300));
    const wire = await wiredTo(PORT);
    const signIn = await ask(wire, "/api/v1/session", null, { name: "Maren", password: "demo-lantern-maren" });
    const best = {};
    for (let round = 0; round < ROUNDS; round++) {
      const url = round === 0 ? wire : `http://127.0.0.1:${PORT}`;
      const tank = (await ask(url, "/api/v1/households/quernhaven/tanks", signIn.cookie, { name: "Reef", zone: "Europe/Berlin" })).said.id;
      const entries = feedings(tank, signIn.said.keeper.id);
      await keepBest(best, "push", () => push(url, signIn.cookie, tank, entries));
      await keepBest(best, "pull", () => pull(url, signIn.cookie, tank, `${folder}pulled-${round}`));
    }
    return best;
  } finally {
    server.kill();
  }
}

async function push(url, cookie, tank, entries) {
  let kept = 0;
  for (let from = 0; from < entries.length; from += BATCH) {
    const { said } = await ask(url, `/api/v1/tanks/${tank}/entries`, cookie, { entries: entries.slice(from, from + BATCH) });
    kept += said.answers.filter(({ outcome }) => outcome === "accepted").length;
  }
  return kept;
}

async function pull(url, cookie, tank, path) {
  const file = openSync(path, "w");
  let pulled = 0;
  for await (const { entries } of pagesOf(async (after) => (await ask(url, `/api/v1/tanks/${tank}/entries?after=${after}&limit=${BATCH}`, cookie)).said, 0, ENTRIES)) {
    writeSync(file, entries.map((entry) => JSON.stringify(entry) + "\n").join(""));
    pulled += entries.length;
  }
  fsyncSync(file);
  closeSync(file);
  return pulled;
}

async function ask(url, path, cookie, said) {
  const { body, headers } = said ? await packed(JSON.stringify(said)) : { body: undefined, headers: {} };
  const answer = await fetch(url + path, {
    method: body ? "POST" : "GET", body, signal: AbortSignal.timeout(20_000),
    headers: { "Content-Type": "application/json", Origin: url, ...headers, ...(cookie && { Cookie: cookie }) },
  });
  if (!answer.ok) throw new Error(`${path} answers ${answer.status}: ${await answer.text()}`);
  return { said: await answer.json(), cookie: answer.headers.getSetCookie().map((one) => one.split(";")[0]).join("; ") };
}

/** A wire to a port of this machine that counts what goes through it, both ways, headers and all. */
async function wiredTo(port) {
  const wire = net.createServer((near) => {
    const far = net.connect(port, "127.0.0.1");
    for (const end of [near, far]) {
      end.on("data", (data) => { bytes += data.length; });
      end.on("error", () => { near.destroy(); far.destroy(); });
    }
    near.pipe(far).pipe(near);
  }).listen(0);
  await new Promise((listening) => wire.once("listening", listening));
  return `http://127.0.0.1:${wire.address().port}`;
}

function feedings(tank, by) {
  const device = randomUUID();
  return Array.from({ length: ENTRIES }, (_, i) => ({
    id: newId(), tank, device, deviceSeq: i + 1, kind: "feeding", v: 1, happenedAt: "2026-06-15T08:10:00+02:00",
    zone: "Europe/Berlin", recordedAt: "2026-06-15T06:10:02Z", by, body: { items: [{ food: "mysis_frozen", grams: 3.5 }] },
  }));
}

/** As phones mint them: of version 7 (RFC 9562), the time before everything else. */
function newId() {
  const time = Date.now().toString(16).padStart(12, "0");
  return `${time.slice(0, 8)}-${time.slice(8)}-7${randomUUID().slice(15)}`;
}

/** The bytes of the first round, which goes through the wire, and the quickest of those that do not. */
async function keepBest(best, way, replicate) {
  bytes = 0;
  const start = performance.now();
  const count = await replicate();
  const millis = Math.round(performance.now() - start);
  if (count !== ENTRIES) throw new Error(`${way}: ${count} of ${ENTRIES}`);
  best[way] ??= { millis: Infinity, bytes };
  if (bytes === 0) best[way].millis = Math.min(best[way].millis, millis);
}
