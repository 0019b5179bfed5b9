// The whole of the main story's visit on the page, as a phone shows it: every screen looked over on the way.

import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { AT_THE_TAILGATE, lookOver, ON_THE_LADDER } from './harness/look_over.js';
import { start } from './harness/ladderbook.js';
import { openBrowser, openPhone } from './harness/phone.js';

const ASKED = 'It is only the dormer again. Could you run one more bead along it?';

let browser, folder, ladderbook, page;
before(async () => {
  folder = await mkdtemp(join(tmpdir(), 'ladderbook-'));
  browser = await openBrowser();
  ladderbook = await start('demo', '--at-call', '--port', '0', '--out', folder);
  page = await openPhone(browser);
  page.setDefaultTimeout(8_000);
  await page.goto(ladderbook.url);
});
after(async () => {
  await browser?.close();
  await ladderbook?.stop();
  await rm(folder, { recursive: true, force: true });
});

const at = (path) => page.waitForURL((url) => url.pathname.startsWith(path));
const tap = (role, name) => page.getByRole(role, { name, exact: true }).first().tap();

test('the address is found in another spelling', async () => {
  await lookOver(page, 'arrive', AT_THE_TAILGATE);
  await page.locator('[name=find]').fill('318 lamplighter lane');
  await tap('button', 'Find');
  await page.locator('.rows a').first().tap();
  await at('/doorstep/');
  assert.equal(await page.locator('h1').innerText(), '318 Lamplighter Ln');
});

test('the doorstep sets the request against what was said', async () => {
  await page.locator('[name=words]').fill(ASKED);
  await page.locator('[name=kind]').selectOption('sidewall-flashing');
  await page.locator('[name=remedy]').selectOption('sealant');
  await page.locator('[name=leaking]').selectOption('yes');
  await page.locator('[name=scope]').selectOption('whole-roof');
  await tap('button', 'Start the visit');
  await at('/safety/');
  await lookOver(page, 'safety', ON_THE_LADDER);
  await page.goto(await page.locator('a[href^="/doorstep/"]').first().getAttribute('href').then((href) => new URL(href, page.url()).href));
  const plate = await page.locator('main').innerText();
  assert.match(plate, /one more bead/);
  assert.match(plate, /goes against what you said/);
  await lookOver(page, 'doorstep', AT_THE_TAILGATE);
  await page.locator('.hand .main').tap();
  await at('/safety/');
});

test('safety answered, he walks', async () => {
  const questions = page.locator('.check');
  for (let n = 0; n < (await questions.count()); n += 1) {
    await questions.nth(n).getByRole('button', { name: 'Yes', exact: true }).tap();
    await page.waitForLoadState();
  }
  await page.getByRole('button', { name: 'On the roof', exact: true }).first().tap();
  await page.waitForLoadState();
  await page.locator('.hand .main').tap();
  await at('/walk/');
  await lookOver(page, 'walk', ON_THE_LADDER);
});

test('sound is one tap, and undo takes it back', async () => {
  const open = await page.locator('.spot').count();
  await page.locator('.spot').first().getByRole('button', { name: 'Sound', exact: true }).tap();
  await page.getByRole('status').getByText('Sound, kept').waitFor();
  await tap('button', 'Undo');
  await page.getByRole('status').getByText('Taken back').waitFor();
  assert.equal(await page.locator('.spot').count(), open);
});

test('a picture goes to the tray and to its part', async () => {
  const walk = page.url();
  await page.locator('.shutter input[type=file]').setInputFiles({
    name: 'a.png',
    mimeType: 'image/png',
    buffer: await page.screenshot(),
  });
  await page.getByRole('status').getByText('Picture kept').waitFor();
  await page.goto(await page.locator('a[href^="/tray/"]').first().getAttribute('href').then((href) => new URL(href, page.url()).href));
  await lookOver(page, 'tray', AT_THE_TAILGATE);
  await page.locator('.loose details summary').last().tap();
  await page.getByRole('button', { name: /dormer, left cheek/ }).first().tap();
  await page.getByText('The tray is empty.').waitFor();
  await page.goto(walk);
});

test('a defect is named by what is likely, and what was typed wrong stays', async () => {
  await page.locator('.stop a', { hasText: 'Walls' }).tap();
  await page.getByRole('group', { name: 'Sidewall flashing, dormer, left cheek', exact: true }).getByText('Mark', { exact: true }).tap();
  await at('/mark/');
  await page.getByRole('button', { name: /^Sealant in place of flashing/ }).first().tap();
  await page.getByRole('status').getByText('Kept').waitFor();
  await lookOver(page, 'mark', ON_THE_LADDER);
  await page.locator('details summary', { hasText: 'Measure' }).tap();
  await page.locator('[name=length]').fill('twelve');
  await page.getByRole('button', { name: 'Keep the measure' }).tap();
  await page.getByRole('alert').waitFor();
  assert.equal(await page.locator('[name=length]').inputValue(), 'twelve');
  // The refusal is an answer of its own (422), which the browser notes on its console.
  page.trouble.splice(0);
});

test('closed, judged, written, answered', async () => {
  await page.getByRole('link', { name: 'Walk', exact: true }).tap();
  await at('/walk/');
  await page.locator('details summary', { hasText: 'Close the visit' }).tap();
  await page.getByRole('button', { name: 'Close: the rest was not reached' }).tap();
  await at('/then-and-now/');
  const changed = page.locator('.changed', { hasText: 'dormer, left cheek' });
  assert.match(await changed.innerText(), /Still open/);
  await lookOver(page, 'then-and-now', AT_THE_TAILGATE);
  await page.locator('.hand .main').tap();
  await at('/verdict/');
  assert.match(await page.locator('main').innerText(), /New step flashing/);
  assert.match(await page.locator('.refused').first().innerText(), /sealant/i);
  await lookOver(page, 'verdict', AT_THE_TAILGATE);
  await page.locator('.hand .main').tap();
  await at('/letter/');
  await page.getByRole('button', { name: 'Write it in English' }).tap();
  await page.getByRole('status').getByText('Letter written').waitFor();
  await lookOver(page, 'letter', AT_THE_TAILGATE);
  const paper = await page.request.get(await page.locator('a[href^="/paper/"]').first().getAttribute('href').then((href) => new URL(href, page.url()).href));
  assert.equal(paper.headers()['content-type'], 'application/pdf');
  assert.equal((await paper.body()).subarray(0, 5).toString(), '%PDF-');
  await page.locator('.hand .main').tap();
  await at('/outcome/');
  await lookOver(page, 'outcome', AT_THE_TAILGATE);
});

test('reminders and settings', async () => {
  const base = new URL(page.url()).origin;
  await page.goto(`${base}/reminders`);
  await lookOver(page, 'reminders', AT_THE_TAILGATE);
  const calendar = await page.request.get(`${base}/calendar.ics`);
  assert.match(await calendar.text(), /BEGIN:VEVENT/);
  await page.goto(`${base}/settings`);
  await lookOver(page, 'settings', AT_THE_TAILGATE);
});
