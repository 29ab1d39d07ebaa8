// Looks at a site in a browser, as it would stand on a server: node check.mjs MODULES SITE
//
// Every page is loaded, at three widths, light and dark: it may log nothing, ask nothing of any other server, be no wider
// than the screen, and give an independent reader of accessibility rules nothing to say. Then the index is used by keyboard
// alone, and without its script. With PICTURES set to a folder, pages are photographed into it.

import { createServer } from "node:http";
import { createRequire } from "node:module";
import { readFileSync, readdirSync, statSync } from "node:fs";
import { extname, join, relative } from "node:path";

const [modules, site] = process.argv.slice(2);
const require = createRequire(join(modules, "node_modules/"));
const { chromium } = require("playwright-core");
const axe = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const pictures = process.env.PICTURES;

const TYPES = { ".html": "text/html", ".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml", ".xml": "application/atom+xml", ".pdf": "application/pdf" };
const WIDTHS = [360, 768, 1400];
const SCHEMES = ["light", "dark"];

const faults = [];
const fault = (where, what) => faults.push(`${where}: ${what}`);
const hold = (where, is, what) => is || fault(where, what);

const server = createServer((request, response) => {
  const path = join(site, decodeURIComponent(new URL(request.url, "http://x").pathname));
  try {
    const bytes = readFileSync(path);
    response.writeHead(200, { "Content-Type": `${TYPES[extname(path)] ?? "application/octet-stream"}; charset=utf-8` });
    response.end(bytes);
  } catch {
    response.writeHead(404);
    response.end();
  }
});
await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
const root = `http://127.0.0.1:${server.address().port}/`;

const files = (folder) => readdirSync(folder).sort().map((name) => join(folder, name)).flatMap((path) => (statSync(path).isDirectory() ? files(path) : [path]));
const pages = files(site).map((path) => relative(site, path)).filter((path) => path.endsWith(".html"));
const states = ["over", "within", "none"];
const of_state = (state) => pages.find((page) => page.startsWith("products/") && readFileSync(join(site, page), "utf8").includes(`<p class="block ${state}">`));
const everywhere = new Set([...pages.filter((page) => !page.includes("/")), ...states.map(of_state)]);

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", args: ["--no-sandbox"] });

/** A page that reports what it logs and what it asks for. */
async function opened(context, where) {
  const page = await context.newPage();
  page.on("console", (message) => fault(where(), `logs “${message.text()}”`));
  page.on("pageerror", (error) => fault(where(), `fails: ${error}`));
  page.on("request", (request) => hold(where(), request.url().startsWith(root), `asks for ${request.url()}`));
  page.on("response", (response) => hold(where(), response.ok(), `gets ${response.status()} for ${response.url()}`));
  return page;
}

let looked = 0;
for (const [turn, [width, scheme]] of WIDTHS.flatMap((width) => SCHEMES.map((scheme) => [width, scheme])).entries()) {
  const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme: scheme });
  let where = "";
  const page = await opened(context, () => where);
  for (const [index, path] of pages.entries()) {
    // Pages alike take turns; those of their own kind are seen each way.
    if (!everywhere.has(path) && index % 6 !== turn) continue;
    where = `${path} at ${width}, ${scheme}`;
    await page.goto(root + path, { waitUntil: "load" });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    hold(where, wide <= width, `is ${wide} wide`);
    const cut = await page.evaluate(() => [...document.images].filter((image) => !image.naturalWidth).map((image) => image.src));
    hold(where, cut.length === 0, `does not show ${cut}`);
    await page.evaluate(axe);
    // What the page's policy forbids axe must not ask for either.
    const told = await page.evaluate(() => axe.run(document, { preload: false }));
    for (const rule of told.violations) fault(where, `${rule.id}: ${rule.help} (${rule.nodes.map((node) => node.target.join(" ")).slice(0, 3)})`);
    if (pictures && everywhere.has(path)) await page.screenshot({ path: join(pictures, `${path.replaceAll("/", "-")}-${width}-${scheme}.png`), fullPage: true });
    looked += 1;
  }
  await context.close();
}

// By keyboard alone.
if (readFileSync(join(site, "index.html"), "utf8").includes('id="filter"')) {
  const context = await browser.newContext({ viewport: { width: 768, height: 900 } });
  const where = "index.html by keyboard";
  const page = await opened(context, () => where);
  await page.goto(root + "index.html");
  const focus = () => page.evaluate(() => {
    const at = document.activeElement;
    const box = at.getBoundingClientRect();
    const style = getComputedStyle(at);
    return { id: at.id, name: at.tagName, text: at.textContent, href: at.getAttribute("href"), seen: box.left >= 0 && box.top >= 0 && box.width > 0, ring: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2 };
  });
  const tab = async () => {
    await page.keyboard.press("Tab");
    const at = await focus();
    hold(where, at.seen && at.ring, `${at.name} ${at.id} has the focus and does not show it`);
    return at;
  };
  const until = async (is) => {
    for (let step = 0; step < 60; step += 1) {
      const at = await tab();
      if (is(at)) return at;
    }
    throw new Error(`${where}: the focus never came to ${is}`);
  };
  const shown = () => page.locator("#sheets tbody tr:not([hidden])").count();
  const count = () => page.locator("#count").textContent();
  const all = await shown();
  const first = await tab();
  hold(where, first.href === "#content", "the first stop is not the way to the content");
  await page.keyboard.press("Enter");
  hold(where, (await focus()).id === "content", "the skip link leads nowhere");
  await until((at) => at.id === "words");
  const number = (await page.locator("#sheets tbody tr td:nth-child(3)").last().textContent()).match(/[A-Z0-9]+-[\w.-]+/)[0];
  await page.keyboard.type(number);
  hold(where, (await shown()) === 1 && (await count()).includes("1"), `“${number}” shows ${await shown()} rows: ${await count()}`);
  await page.keyboard.type(" nowhere");
  hold(where, (await shown()) === 0 && (await count()).includes("0"), "words that no row has show a row");
  await until((at) => at.name === "BUTTON");
  await page.keyboard.press("Enter");
  await page.waitForFunction((all) => document.querySelectorAll("#sheets tbody tr:not([hidden])").length === all, all);
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Shift+Tab");
  hold(where, (await focus()).id === "verdict", "the choice of verdicts is not two stops before the button");
  await page.keyboard.press("ArrowDown");
  const chosen = await page.locator("#verdict").inputValue();
  const marked = await page.locator(`#sheets tbody tr[data-verdict="${chosen}"]`).count();
  hold(where, marked > 0 && marked < all && (await shown()) === marked, `“${chosen}” shows ${await shown()} of ${marked}`);
  const link = await until((at) => at.href?.startsWith("products/"));
  await page.keyboard.press("Enter");
  await page.waitForURL(root + link.href);
  hold(where, (await page.locator("h1").count()) === 1, "a product's page has not one head");
  // What is wider than the screen is moved by keyboard.
  await page.setViewportSize({ width: 360, height: 900 });
  const region = page.locator(".scroll").first();
  await region.focus();
  await page.keyboard.press("ArrowRight");
  await page.waitForFunction(() => document.querySelector(".scroll").scrollLeft > 0);
  await page.goBack();
  hold(where, (await shown()) === Number((await count()).match(/\d+/)[0]), "after going back the count is not what is shown");
  await context.close();

  const plain = await browser.newContext({ viewport: { width: 768, height: 900 }, javaScriptEnabled: false });
  const still = await plain.newPage();
  await still.goto(root + "index.html");
  hold("index.html without its script", await still.locator("#filter").isHidden(), "has a filter that does nothing");
  hold("index.html without its script", (await still.locator("#sheets tbody tr:visible").count()) === all, "does not show every sheet");
}

await browser.close();
server.close();
if (faults.length > 0) {
  console.error([...new Set(faults)].slice(0, 40).join("\n"));
  process.exit(1);
}
console.log(`${pages.length} pages, looked at ${looked} times: nothing to say`);
