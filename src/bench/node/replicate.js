// 10,000 feedings from one database to another over HTTP and back, batches of 500, bytes counted on the wire.
import { randomUUID } from "node:crypto";
import { mkdtempSync } from "node:fs";
import net from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import express from "express";
import expressPouchDB from "express-pouchdb";
import PouchDB from "pouchdb";

const ENTRIES = 10_000;
const BATCH = 500;
const folder = mkdtempSync(join(tmpdir(), "replicate-")) + "/";

const Served = PouchDB.defaults({ prefix: folder + "served-" });
const app = express();
app.use("/", expressPouchDB(Served, { mode: "minimumForPouchDB", logPath: folder + "log.txt", configPath: folder + "config.json" }));
const server = app.listen(0);
await new Promise((listening) => server.once("listening", listening));

let bytes = 0;
const wire = net.createServer((near) => {
  const far = net.connect(server.address().port);
  near.on("data", (data) => { bytes += data.length; });
  far.on("data", (data) => { bytes += data.length; });
  near.pipe(far).pipe(near);
  for (const end of [near, far]) end.on("error", () => { near.destroy(); far.destroy(); });
}).listen(0);
await new Promise((listening) => wire.once("listening", listening));
const url = `http://127.0.0.1:${wire.address().port}/journal`;

const device = randomUUID();
const feedings = Array.from({ length: ENTRIES }, (_, i) => ({
  _id: randomUUID(), tank: "reef", device, deviceSeq: i + 1, kind: "feeding", v: 1, happenedAt: "2026-06-15T08:10:00+02:00",
  zone: "Europe/Berlin", recordedAt: "2026-06-15T06:10:02Z", by: "teo", body: { items: [{ food: "mysis_frozen", grams: 3.5 }] },
}));
const phone = new PouchDB(folder + "phone");
await phone.bulkDocs(feedings);

async function timed(what, replicate) {
  bytes = 0;
  const start = performance.now();
  const { docs_written } = await replicate();
  console.log(`${what}: ${docs_written} in ${Math.round(performance.now() - start)} ms, ${bytes} bytes on the wire`);
}

await timed("push", () => phone.replicate.to(url, { batch_size: BATCH }));
await timed("pull", () => new PouchDB(folder + "other-phone").replicate.from(url, { batch_size: BATCH }));
process.exit(0);
