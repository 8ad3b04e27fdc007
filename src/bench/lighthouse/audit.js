// Starts the packaged server with its demo, signs in, and holds the main pages against Lighthouse's phone profile.
// Each page several times, RUNS or five; the run in the middle counts, as Lighthouse's own page on variability advises. Ends with 1 when
// one of its scores is below 95. PORT and CHROMIUM may be set; --all tells every audit that is not perfect.
import { spawn } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import lighthouse from "lighthouse";
import puppeteer from "puppeteer-core";

const WANTED = 95;
const CATEGORIES = ["performance", "accessibility", "best-practices"];
const PAGES = ["feed", "today", "week", "fish", "water", "more"];
const RUNS = Number(process.env.RUNS ?? 5);
const PORT = Number(process.env.PORT ?? 8466);
const root = join(dirname(fileURLToPath(import.meta.url)), "../../..");
const url = `http://localhost:${PORT}/`;
const all = process.argv.includes("--all");

const server = spawn("java", ["-Dquarkus.profile=demo", `-Dquarkus.http.port=${PORT}`, `-Dprovender.data=${mkdtempSync(join(root, "target/lighthouse-"))}`,
  "-jar", "target/quarkus-app/quarkus-run.jar"], { cwd: root, stdio: "ignore" });
const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox"] });
try {
  await answering();
  const short = [];
  short.push(...(await audited("sign-in", url, await browser.newPage())));
  const page = await browser.newPage();
  await signedIn(page);
  for (const place of PAGES) short.push(...(await audited(place, `${url}#/${place}`, page)));
  if (short.length) console.log(`below ${WANTED}: ${short.join(", ")}`);
  process.exitCode = short.length ? 1 : 0;
} finally {
  await browser.close();
  server.kill();
}

async function answering() {
  for (let tries = 0; tries < 300; tries++) {
    if (await fetch(`${url}q/health/ready`).then(({ ok }) => ok, () => false)) return;
    await new Promise((later) => setTimeout(later, 300));
  }
  throw new Error(`no server at ${url}: package it first`);
}

async function signedIn(page) {
  await page.goto(url);
  await page.waitForSelector("sign-in input[name=name]");
  await page.type("sign-in input[name=name]", "Teo");
  await page.type("sign-in input[name=password]", "demo-lantern-teo");
  await page.click("sign-in button.primary");
  await page.waitForSelector("feed-page .tile");
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
}

/** Prints the scores, and names those that fall short. */
async function audited(name, address, page) {
  const runs = [];
  for (let run = 0; run < RUNS; run++) {
    // Left first, or a change behind the # would load nothing.
    await page.goto("about:blank");
    runs.push((await lighthouse(address, { onlyCategories: CATEGORIES, disableStorageReset: true, logLevel: "error" }, undefined, page)).lhr);
  }
  const lhr = runs.sort((one, other) => one.categories.performance.score - other.categories.performance.score)[Math.floor(RUNS / 2)];
  const scores = CATEGORIES.map((category) => Math.round((lhr.categories[category].score ?? 0) * 100));
  console.log(`${name.padEnd(10)} ${CATEGORIES.map((category, place) => `${category} ${scores[place]}`).join("   ")}   ${["first-contentful-paint",
    "largest-contentful-paint", "total-blocking-time", "cumulative-layout-shift"].map((audit) => `${audit} ${lhr.audits[audit].displayValue}`).join("   ")}   speed of the machine ${lhr.environment.benchmarkIndex}`);
  for (const { id, score, title, displayValue, details } of Object.values(lhr.audits)) {
    if (all && score !== null && score < 1) console.log(`    ${score} ${id}: ${title} ${displayValue ?? ""} ${JSON.stringify(details?.items ?? "").slice(0, 300)}`);
  }
  return CATEGORIES.filter((_, place) => scores[place] < WANTED).map((category) => `${name} ${category}`);
}
