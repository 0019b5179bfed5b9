// Draws docs/pictures anew: every screen of the demo's main story, as a phone shows it.

import { mkdir, mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { start } from './harness/ladderbook.js';
import { LYING, openBrowser, openPhone, UPRIGHT } from './harness/phone.js';

const PICTURES = fileURLToPath(new URL('../../docs/pictures/', import.meta.url));
/** So that the README opens fast. */
const MOST_BYTES = 200_000;
const ASKED = 'Water came down the bedroom wall in Saturday’s blow. It is only the dormer again. Could you run one more bead along it?';

const folder = await mkdtemp(join(tmpdir(), 'ladderbook-pictures-'));
const browser = await openBrowser();
const programs = [];
try {
  await mkdir(PICTURES, { recursive: true });
  const seen = await after(await demo('told'));
  await during(await demo('call', '--at-call'), seen);
} finally {
  await browser.close();
  for (const program of programs) await program.stop();
  await rm(folder, { recursive: true, force: true });
}

async function demo(name, ...words) {
  const program = await start('demo', ...words, '--port', '0', '--out', join(folder, name));
  programs.push(program);
  const page = await openPhone(browser, { deviceScaleFactor: 1.5 });
  await page.goto(program.url);
  return page;
}

async function take(page, name) {
  const path = `${PICTURES}${name}.png`;
  await page.evaluate(() => document.fonts.ready);
  await page.waitForLoadState('networkidle');
  await page.screenshot({ path, animations: 'disabled' });
  const { size } = await stat(path);
  if (size > MOST_BYTES) throw new Error(`${name}.png has ${size} bytes, more than ${MOST_BYTES}`);
  console.log(`${name}.png`);
}

async function find(page) {
  await page.locator('[name=find]').fill('318 lamplighter');
  await page.locator('.search .main').tap();
  await page.locator('.rows a').first().tap();
  await page.waitForURL('**/doorstep/**');
}

/** What is there once the visit is closed. Answers with the picture of the left cheek, for the visit that is still to be made. */
async function after(page) {
  await find(page);
  const property = page.url();
  await page.locator('a[href^="/letter/"]').tap();
  await page.waitForURL('**/letter/**');
  await take(page, 'letter');
  await page.goto(page.url().replace('/letter/', '/then-and-now/'));
  const cheek = page.locator('.changed', { hasText: 'left cheek' });
  await cheek.evaluate((section) => scrollTo(0, section.offsetTop - 90));
  await take(page, 'then-and-now');
  const now = await cheek.locator('.picture').last().getAttribute('href');
  const seen = await (await page.request.get(new URL(now, page.url()).href)).body();
  await page.locator('.hand .main').tap();
  await page.waitForURL('**/verdict/**');
  await take(page, 'verdict');
  await page.locator('a[href^="/offer/"]').tap();
  await page.waitForURL('**/offer/**');
  await take(page, 'offer');
  await page.goto(property);
  await page.locator('a[href^="/roof/"]').tap();
  await page.waitForURL('**/roof/**');
  await take(page, 'roof');
  await page.goto(`${page.url().replace('/roof/', '/leak/')}?x=4876800000&y=1524000000&within=609600000&when=wet-when-driven-rain&wind=180`);
  await take(page, 'leak');
  await page.goto(property.replace('/doorstep/', '/outcome/'));
  await take(page, 'outcome');
  await page.goto(property.replace('/doorstep/', '/property/'));
  await take(page, 'property');
  for (const name of ['reminders', 'settings']) {
    await page.goto(new URL(`/${name}`, page.url()).href);
    await take(page, name);
  }
  return seen;
}

/** What is there from the call to the part that it is about. */
async function during(page, seen) {
  await take(page, 'arrive');
  await find(page);
  const doorstep = page.url();
  await page.locator('[name=words]').fill(ASKED);
  await page.locator('[name=kind]').selectOption('sidewall-flashing');
  await page.locator('[name=remedy]').selectOption('sealant');
  await page.locator('[name=leaking]').selectOption('yes');
  await page.locator('[name=scope]').selectOption('whole-roof');
  await page.locator('main form .main').tap();
  await page.waitForURL('**/safety/**');
  const safety = page.url();
  await page.goto(doorstep);
  await take(page, 'doorstep');
  await page.setViewportSize(LYING);
  await take(page, 'doorstep-lying');
  await page.setViewportSize(UPRIGHT);
  await page.goto(safety);
  for (const check of [0, 1, 2, 3]) await answer(page.locator('.check').nth(check).locator('button').first());
  for (const reached of await page.getByRole('button', { name: 'On the roof', exact: true }).all()) await answer(reached);
  await page.evaluate(() => scrollTo(0, 0));
  await take(page, 'safety');
  await page.locator('.hand .main').tap();
  await page.waitForURL('**/walk/**');
  await climbTo(page, 'walls');
  const walk = page.url();
  await take(page, 'walk');
  await page.emulateMedia({ colorScheme: 'dark' });
  await take(page, 'walk-dark');
  await page.emulateMedia({ colorScheme: 'light' });
  await page.locator('.shutter input[type=file]').setInputFiles({ name: 'cheek.jpg', mimeType: 'image/jpeg', buffer: seen });
  await page.locator('.notice').waitFor();
  await page.goto(await page.locator('a[href^="/tray/"]').evaluate((link) => link.href));
  await page.locator('.loose img').evaluate((picture) => picture.decode());
  await take(page, 'tray');
  await page.goto(walk);
  await page.locator('.spot', { hasText: 'left cheek' }).locator('a').tap();
  await page.waitForURL('**/mark/**');
  await answer(page.locator('.rungs button').nth(2));
  await take(page, 'mark');
}

async function answer(tapped) {
  await Promise.all([tapped.page().waitForNavigation(), tapped.tap()]);
}

/** Answers the stops below with “sound”, up to one. */
async function climbTo(page, stop) {
  while (!page.url().includes(`/${stop}`)) {
    const open = page.locator('.spot button:not(.on)');
    while (await open.count()) await answer(open.first());
    await answer(page.locator('.next a'));
  }
}
